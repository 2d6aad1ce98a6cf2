import { useFrame } from "@react-three/fiber";
import { ringNode } from "@secondline/figures/scene";
import { useRef } from "react";
import { type Group, TorusGeometry } from "three";
import { solidMaterial } from "./geometry.ts";
import type { ChosenPartProps } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
import { useOwned } from "./useOwned.ts";

const OFFSETS = [0, 0.014, -0.014];

/** The leash ring, or rings, around the line. */
export function Ring({ stage, look, chosen }: ChosenPartProps) {
  const { live, recording, rig } = stage;
  const radius = Math.max(recording.problem.ring.clearance + 0.012, 0.03);
  const geometry = useOwned(() => new TorusGeometry(radius, 0.0075, 10, 28), [radius]);
  const material = useOwned(() => {
    const { accent, ink, softInk, paper } = look.palette;
    return solidMaterial(
      look,
      chosen ? accent : look.theme === "light" ? softInk : ink,
      look.theme === "light" ? ink : paper,
    );
  }, [look, chosen]);
  const group = useRef<Group>(null);
  useFrame(({ camera, size }) => {
    const thing = group.current!;
    const node = ringNode(live);
    if (node > 0) alignTo(thing, live.positions, node - 1, node);
    thing.position.set(live.positions[live.ring]!, live.positions[live.ring + 1]!, live.positions[live.ring + 2]!);
    atLeastPx(thing, 2 * radius, 9, camera, size.height);
  }, -1);
  const count = Math.min(Math.max(rig.rings.length, 1), OFFSETS.length);
  return (
    <group ref={group}>
      {OFFSETS.slice(0, count).map((offset) => (
        <mesh key={offset} geometry={geometry} material={material} position={[0, 0, offset]} frustumCulled={false} />
      ))}
    </group>
  );
}
