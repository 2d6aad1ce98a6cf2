import { plainSide } from "@secondline/figures/sketch";
import type { Projection, SideView } from "@secondline/workbench";
import { Shapes } from "../picture/Shapes.tsx";
import styles from "./side.module.css";

/** A rig from the side as its document has it. */
export function PlainSide({ side: { site, points }, projection }: { side: SideView; projection: Projection }) {
  return (
    <svg width={projection.width} height={projection.height} aria-hidden="true">
      <Shapes of={plainSide({ ...site, points }, projection)} styles={styles} />
    </svg>
  );
}
