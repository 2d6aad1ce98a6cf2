import { useFrame } from "@react-three/fiber";
import { createAnchorGear } from "@secondline/figures/scene";
import { useMemo } from "react";
import { Bolts, Ending } from "./AnchorFittings.tsx";
import { ribbonGeometry, ribbonMaterial, touchRibbon } from "./geometry.ts";
import type { PartProps } from "./look.ts";
import { useOwned } from "./useOwned.ts";

/** An anchor: its rock points, the legs from them to the master point, and how the main line ends there. */
export function AnchorGear({ stage, look, side }: PartProps & { readonly side: "A" | "B" }) {
  const { shape, ribbon, master, update } = useMemo(() => createAnchorGear(stage, side), [stage, side]);
  const geometry = useOwned(() => ribbonGeometry(ribbon), [ribbon]);
  const legMaterial = useOwned(
    () => ribbonMaterial(look, { mode: "flat", width: 0.028, minPx: 2.4, flat: look.palette.softInk }),
    [look],
  );
  useFrame(() => {
    update();
    touchRibbon(geometry);
  }, -1);
  return (
    <>
      <mesh geometry={geometry} material={legMaterial} frustumCulled={false} renderOrder={1} />
      <Bolts look={look} rock={shape.rock} trees={shape.kinds.map((kind) => kind === "tree")} />
      <Ending look={look} master={master} end={stage.rig.main[`end${side}`]} />
    </>
  );
}
