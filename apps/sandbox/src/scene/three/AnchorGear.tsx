import { useFrame } from "@react-three/fiber";
import type { LineEnd } from "@secondline/rig";
import { useMemo, useRef } from "react";
import { CylinderGeometry, type Group, type Mesh, TorusGeometry } from "three";
import { anchorShape } from "../shape/anchorShape.ts";
import { createRibbon, fillRibbon } from "../shape/ribbon.ts";
import type { Stage } from "../stage.ts";
import { ribbonGeometry, ribbonMaterial, solidMaterial, touchRibbon } from "./geometry.ts";
import type { Look } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
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
  const node = side === "A" ? 0 : live.mainNodes - 1;
  useFrame(() => {
    legs.tensions.fill(0);
    for (let i = 0; i < failures.length; i++) {
      if (live.time >= failures[i]!.time) legs.tensions[2 * (failures[i]!.at ?? 0)] = Number.NaN;
    }
    for (let i = 0; i < shape.kinds.length; i++) {
      for (let c = 0; c < 3; c++) {
        legs.nodes[6 * i + c] = shape.rock[3 * i + c]!;
        legs.nodes[6 * i + 3 + c] = live.positions[3 * node + c]!;
      }
    }
    fillRibbon(legs.ribbon, legs.nodes, 0, legs.tensions, 0);
    touchRibbon(geometry);
  }, -1);
  return (
    <>
      <mesh geometry={geometry} material={legMaterial} frustumCulled={false} renderOrder={1} />
      <Bolts look={look} rock={shape.rock} trees={shape.kinds.map((kind) => kind === "tree")} />
      <Ending
        stage={stage}
        look={look}
        node={node}
        inward={side === "A" ? 1 : -1}
        end={side === "A" ? rig.main.endA : rig.main.endB}
      />
    </>
  );
}

/** Legs as one ribbon: element 2i is leg i, the elements between two legs are never shown. */
function legRibbons(count: number) {
  const fractions = Float32Array.from({ length: 2 * count }, (_, i) => i % 2);
  const ribbon = createRibbon(2 * count, fractions, 0, 1);
  const nodes = new Float32Array(6 * count);
  const tensions = new Float32Array(2 * count - 1);
  // A gap between legs is a gap in the index, so that failed legs can use the ribbon's own way of vanishing.
  for (let e = 1; e < ribbon.elements; e += 2) ribbon.index.fill(4 * e, 6 * e, 6 * e + 6);
  return { ribbon, nodes, tensions };
}

function Bolts({
  look,
  rock,
  trees,
}: {
  readonly look: Look;
  readonly rock: Float32Array;
  readonly trees: readonly boolean[];
}) {
  const bolt = useOwned(() => new CylinderGeometry(0.035, 0.045, 0.05, 12).rotateX(Math.PI / 2), []);
  const trunk = useOwned(() => new CylinderGeometry(0.16, 0.2, 1.6, 10).rotateX(Math.PI / 2).translate(0, 0, 0.5), []);
  const steel = useOwned(() => solidMaterial(look, look.palette.edge, look.palette.ink), [look]);
  const wood = useOwned(() => solidMaterial(look, look.stone.tree, look.stone.shade), [look]);
  const group = useRef<Group>(null);
  useFrame(({ camera, size }) => {
    const children = group.current!.children;
    for (let i = 0; i < children.length; i++) if (!trees[i]) atLeastPx(children[i]!, 0.09, 6, camera, size.height);
  }, -1);
  return (
    <group ref={group}>
      {trees.map((tree, i) => (
        <mesh
          key={`${rock[3 * i]},${rock[3 * i + 1]}`}
          geometry={tree ? trunk : bolt}
          material={tree ? wood : steel}
          position={[rock[3 * i]!, rock[3 * i + 1]!, rock[3 * i + 2]!]}
        />
      ))}
    </group>
  );
}

/** Weblock, sewn loop or knot at the end of the main line, on a shackle at the master point. */
function Ending({
  stage,
  look,
  node,
  inward,
  end,
}: {
  readonly stage: Stage;
  readonly look: Look;
  readonly node: number;
  readonly inward: number;
  readonly end: LineEnd;
}) {
  const { live } = stage;
  const shackle = useOwned(() => new TorusGeometry(0.035, 0.009, 8, 20), []);
  const body = useOwned(() => endGeometry(end.kind), [end.kind]);
  const steel = useOwned(() => solidMaterial(look, look.palette.edge, look.palette.ink), [look]);
  const shackleMesh = useRef<Mesh>(null);
  const bodyMesh = useRef<Mesh>(null);
  useFrame(({ camera, size }) => {
    alignTo(bodyMesh.current!, live.positions, node, node + inward);
    alignTo(shackleMesh.current!, live.positions, node, node + inward);
    shackleMesh.current!.rotateY(Math.PI / 2);
    atLeastPx(shackleMesh.current!, 0.08, 6, camera, size.height);
    atLeastPx(bodyMesh.current!, 0.16, 9, camera, size.height);
  }, -1);
  return (
    <>
      <mesh ref={shackleMesh} geometry={shackle} material={steel} frustumCulled={false} />
      <mesh ref={bodyMesh} geometry={body} material={steel} frustumCulled={false} />
    </>
  );
}

/** z runs along the line, away from the anchor. */
function endGeometry(kind: LineEnd["kind"]) {
  if (kind === "weblock") return new CylinderGeometry(0.055, 0.055, 0.05, 18).scale(1, 1, 1.35).translate(0, 0, 0.1);
  if (kind === "sewnLoop")
    return new TorusGeometry(0.04, 0.012, 8, 20)
      .scale(0.6, 1, 1)
      .rotateY(Math.PI / 2)
      .scale(1, 1, 1.7)
      .translate(0, 0, 0.09);
  return new TorusGeometry(0.03, 0.022, 10, 18).translate(0, 0, 0.09);
}
