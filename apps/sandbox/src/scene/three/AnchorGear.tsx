import { useFrame } from "@react-three/fiber";
import { anchorShape, createMaster, createRibbon, fillRibbon, type Stage } from "@secondline/figures/scene";
import { useMemo } from "react";
import { Bolts, Ending } from "./AnchorFittings.tsx";
import { ribbonGeometry, ribbonMaterial, touchRibbon } from "./geometry.ts";
import type { Look } from "./look.ts";
import { useOwned } from "./useOwned.ts";

/** An anchor: its rock points, the legs from them to the master point, and how the main line ends there. */
export function AnchorGear({
  stage,
  look,
  side,
}: {
  readonly stage: Stage;
  readonly look: Look;
  readonly side: "A" | "B";
}) {
  const { live, rig, recording, gap } = stage;
  const shape = useMemo(
    () => anchorShape(side, side === "A" ? rig.anchorA : rig.anchorB, recording.problem.anchors?.[side], gap),
    [side, rig, recording, gap],
  );
  const legs = useMemo(() => legRibbons(shape.kinds.length), [shape]);
  const failures = useMemo(
    () => recording.events.filter((e) => e.part === `anchor${side}` && e.kind === "break"),
    [recording, side],
  );
  const geometry = useOwned(() => ribbonGeometry(legs.ribbon), [legs]);
  const legMaterial = useOwned(
    () => ribbonMaterial(look, { mode: "flat", width: 0.028, minPx: 2.4, flat: look.palette.softInk }),
    [look],
  );
  const master = useMemo(() => createMaster(live, shape), [live, shape]);
  useFrame(() => {
    master.update();
    for (let e = 0; e < legs.tensions.length; e++) legs.tensions[e] = e % 2 === 0 ? 0 : Number.NaN;
    for (let i = 0; i < failures.length; i++) {
      if (live.time >= failures[i]!.time) legs.tensions[2 * (failures[i]!.at ?? 0)] = Number.NaN;
    }
    for (let i = 0; i < shape.kinds.length; i++) {
      for (let c = 0; c < 3; c++) {
        legs.nodes[6 * i + c] = shape.rock[3 * i + c]!;
        legs.nodes[6 * i + 3 + c] = master.points[c]!;
      }
    }
    fillRibbon(legs.ribbon, legs.nodes, 0, legs.tensions, 0);
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

/** Legs as one ribbon: element 2i is leg i, the elements between two legs count as parted. */
function legRibbons(count: number) {
  const fractions = Float32Array.from({ length: 2 * count }, (_, i) => i % 2);
  const ribbon = createRibbon(2 * count, fractions, 0, 1);
  const nodes = new Float32Array(6 * count);
  const tensions = new Float32Array(2 * count - 1);
  return { ribbon, nodes, tensions };
}
