import { useFrame } from "@react-three/fiber";
import type { MasterPoint } from "@secondline/figures/scene";
import type { LineEnd } from "@secondline/rig";
import { useRef } from "react";
import { CylinderGeometry, type Group, type Mesh, TorusGeometry } from "three";
import { solidMaterial } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
import { useOwned } from "./useOwned.ts";

/** Bolts, or the trunk of a tree, at the rock points. */
export function Bolts({
  look,
  rock,
  trees,
}: {
  readonly look: SceneLook;
  readonly rock: Float32Array;
  readonly trees: readonly boolean[];
}) {
  const bolt = useOwned(() => new CylinderGeometry(0.026, 0.034, 0.035, 12).rotateX(Math.PI / 2), []);
  const trunk = useOwned(() => new CylinderGeometry(0.16, 0.2, 1.6, 10).rotateX(Math.PI / 2).translate(0, 0, 0.5), []);
  const steel = useOwned(() => solidMaterial(look, look.palette.edge, look.palette.ink), [look]);
  const wood = useOwned(() => solidMaterial(look, look.stone.tree, look.stone.shade), [look]);
  const group = useRef<Group>(null);
  useFrame(({ camera, size }) => {
    const children = group.current!.children;
    for (let i = 0; i < children.length; i++) if (!trees[i]) atLeastPx(children[i]!, 0.068, 5, camera, size.height);
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
export function Ending({
  look,
  master,
  end,
}: {
  readonly look: SceneLook;
  readonly master: MasterPoint;
  readonly end: LineEnd;
}) {
  const shackle = useOwned(() => new TorusGeometry(0.035, 0.009, 8, 20), []);
  const body = useOwned(() => endGeometry(end.kind), [end.kind]);
  const steel = useOwned(() => solidMaterial(look, look.palette.edge, look.palette.ink), [look]);
  const shackleMesh = useRef<Mesh>(null);
  const bodyMesh = useRef<Mesh>(null);
  useFrame(({ camera, size }) => {
    master.update();
    alignTo(bodyMesh.current!, master.points, 0, 1);
    alignTo(shackleMesh.current!, master.points, 0, 1);
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
