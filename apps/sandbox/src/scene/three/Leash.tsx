import { useFrame } from "@react-three/fiber";
import { KNOT_PROFILE, LEASH_POINTS, leashRibbon } from "@secondline/figures/scene";
import { useMemo, useRef } from "react";
import { LatheGeometry, type Mesh, Vector2 } from "three";
import { ribbonGeometry, ribbonMaterial, solidMaterial, touchRibbon } from "./geometry.ts";
import type { ChosenPartProps } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
import { useOwned } from "./useOwned.ts";

/** The leash: a rope of its true length from ring to harness, slack in a bow or taut, with its knots at both ends. */
export function Leash({ stage: { live }, look, chosen }: ChosenPartProps) {
  const { ribbon, nodes, update } = useMemo(() => leashRibbon(live), [live]);
  const geometry = useOwned(() => ribbonGeometry(ribbon), [ribbon]);
  const material = useOwned(() => ribbonMaterial(look, { mode: "rope", width: 0.014, minPx: 2.6 }), [look]);
  const knotGeometry = useOwned(
    () =>
      new LatheGeometry(
        KNOT_PROFILE.map(([r, z]) => new Vector2(r, z)),
        10,
      ).rotateX(Math.PI / 2),
    [],
  );
  const knotMaterial = useOwned(() => solidMaterial(look, look.palette.softInk, look.palette.ink), [look]);
  const ringKnot = useRef<Mesh>(null);
  const harnessKnot = useRef<Mesh>(null);
  material.uniforms.uChosen!.value = chosen ? 1 : 0;
  useFrame(({ camera, size }) => {
    update();
    touchRibbon(geometry);
    alignTo(ringKnot.current!, nodes, 2, 3);
    alignTo(harnessKnot.current!, nodes, LEASH_POINTS - 3, LEASH_POINTS - 4);
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
