import { rigSketch, SKETCH_SIZE } from "@secondline/figures/sketch";
import type { Rig } from "@secondline/rig";
import { sayPage } from "@secondline/words/page/page";
import { LookedAt } from "../picture/LookedAt.tsx";
import { quantity } from "../words.ts";
import styles from "./RigSketch.module.css";

/** A drawing of the rig from the side that marks the part being edited, by the path of its field. */
export function RigSketch({ rig, editing }: { rig: Rig; editing: string | undefined }) {
  const label = sayPage("rigSketch.rigSpan", { name: rig.name, length: quantity.length(rig.span) });
  return (
    <LookedAt of={rigSketch(rig, editing)} {...SKETCH_SIZE} className={styles.sketch} styles={styles} label={label} />
  );
}
