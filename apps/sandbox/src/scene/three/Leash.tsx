import { useFrame } from "@react-three/fiber";
import { createRibbon, fillRibbon, hangRope, type Stage } from "@secondline/figures/scene";
import { useMemo, useRef } from "react";
import { LatheGeometry, type Mesh, Vector2 } from "three";
import { ribbonGeometry, ribbonMaterial, solidMaterial, touchRibbon } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
import { useOwned } from "./useOwned.ts";

const LEASH_POINTS = 33;

/** The leash: a rope of its true length from ring to harness, slack in a bow or taut, with its knots at both ends. */
export function Leash({
  stage,
  look,
  chosen,
}: {
  readonly stage: Stage;
  readonly look: SceneLook;
  readonly chosen: boolean;
}) {
  const { live, recording } = stage;
  const rope = useMemo(() => {
    const fractions = Float32Array.from({ length: LEASH_POINTS }, (_, i) => i / (LEASH_POINTS - 1));
    return {
      nodes: new Float32Array(LEASH_POINTS * 3),
      tensions: new Float32Array(LEASH_POINTS - 1),
      ribbon: createRibbon(LEASH_POINTS, fractions, 0, recording.problem.leash.length),
    };
  }, [recording]);
  const geometry = useOwned(() => ribbonGeometry(rope.ribbon), [rope]);
  const material = useOwned(() => ribbonMaterial(look, { mode: "rope", width: 0.014, minPx: 2.6 }), [look]);
  const knotGeometry = useOwned(
    () =>
      new LatheGeometry(
        KNOT.map(([r, z]) => new Vector2(r, z)),
        10,
      ).rotateX(Math.PI / 2),
    [],
  );
  const knotMaterial = useOwned(() => solidMaterial(look, look.palette.softInk, look.palette.ink), [look]);
  const ringKnot = useRef<Mesh>(null);
  const harnessKnot = useRef<Mesh>(null);
  material.uniforms.uChosen!.value = chosen ? 1 : 0;
  useFrame(({ camera, size }) => {
    hangRope(
      rope.nodes,
      LEASH_POINTS,
      live.positions,
      live.ring,
      live.positions,
      live.walker,
      recording.problem.leash.length,
    );
    rope.tensions.fill(live.forces.leash);
    fillRibbon(rope.ribbon, rope.nodes, 0, rope.tensions, 0);
    touchRibbon(geometry);
    alignTo(ringKnot.current!, rope.nodes, 2, 3);
    alignTo(harnessKnot.current!, rope.nodes, LEASH_POINTS - 3, LEASH_POINTS - 4);
    atLeastPx(ringKnot.current!, 0.1, 6, camera, size.height);
    atLeastPx(harnessKnot.current!, 0.1, 6, camera, size.height);
  }, -1);
  return (
    <>
      <mesh geometry={geometry} material={material} frustumCulled={false} renderOrder={3} />
      <mesh ref={ringKnot} geometry={knotGeometry} material={knotMaterial} frustumCulled={false} />
      <mesh ref={harnessKnot} geometry={knotGeometry} material={knotMaterial} frustumCulled={false} />
    </>
  );
}

/** Half profile of a tied knot: three turns of rope side by side, [radius, place along the rope] [m]. */
const KNOT: readonly (readonly [number, number])[] = [
  [0, -0.052],
  [0.012, -0.05],
  [0.024, -0.04],
  [0.026, -0.028],
  [0.018, -0.018],
  [0.029, -0.008],
  [0.03, 0.006],
  [0.019, 0.016],
  [0.026, 0.026],
  [0.023, 0.04],
  [0.01, 0.05],
  [0, 0.052],
];
