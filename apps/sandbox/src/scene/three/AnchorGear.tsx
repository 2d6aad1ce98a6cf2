import { useFrame } from "@react-three/fiber";
import { anchorShape, createLegs, createMaster, type Stage } from "@secondline/figures/scene";
import { useMemo } from "react";
import { Bolts, Ending } from "./AnchorFittings.tsx";
import { ribbonGeometry, ribbonMaterial, touchRibbon } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { useOwned } from "./useOwned.ts";

/** An anchor: its rock points, the legs from them to the master point, and how the main line ends there. */
export function AnchorGear({
  stage,
  look,
  side,
}: {
  readonly stage: Stage;
  readonly look: SceneLook;
  readonly side: "A" | "B";
}) {
  const { live, rig, recording, gap } = stage;
  const shape = useMemo(
    () => anchorShape(side, side === "A" ? rig.anchorA : rig.anchorB, recording.problem.anchors?.[side], gap),
    [side, rig, recording, gap],
  );
  const legs = useMemo(() => createLegs(shape.rock, side, recording.events), [shape, side, recording]);
  const geometry = useOwned(() => ribbonGeometry(legs.ribbon), [legs]);
  const legMaterial = useOwned(
    () => ribbonMaterial(look, { mode: "flat", width: 0.028, minPx: 2.4, flat: look.palette.softInk }),
    [look],
  );
  const master = useMemo(() => createMaster(live, shape), [live, shape]);
  useFrame(() => {
    master.update();
    legs.update(master.points, live.time);
    touchRibbon(geometry);
  }, -1);
  return (
    <>
      <mesh geometry={geometry} material={legMaterial} frustumCulled={false} renderOrder={1} />
      <Bolts look={look} rock={shape.rock} trees={shape.kinds.map((kind) => kind === "tree")} />
      <Ending look={look} master={master} end={side === "A" ? rig.main.endA : rig.main.endB} />
    </>
  );
}
