import { useFrame } from "@react-three/fiber";
import { cuffsOf } from "@secondline/figures/scene";
import { useMemo, useRef } from "react";
import { CylinderGeometry, type Group } from "three";
import { solidMaterial } from "./geometry.ts";
import type { PartProps } from "./look.ts";
import { alignTo, atLeastPx } from "./placing.ts";
import { useOwned } from "./useOwned.ts";

/** Cuffs that hold main line and backup together: wide for connections, narrow for tapes; gone once parted. */
export function Connections({ stage, look }: PartProps) {
  const { live, recording } = stage;
  const cuffs = useMemo(() => cuffsOf(recording), [recording]);
  const wide = useOwned(() => new CylinderGeometry(0.035, 0.035, 0.14, 12).rotateX(Math.PI / 2), []);
  const narrow = useOwned(() => new CylinderGeometry(0.025, 0.025, 0.05, 10).rotateX(Math.PI / 2), []);
  const strong = useOwned(() => solidMaterial(look, look.palette.ink, look.palette.ink), [look]);
  const weak = useOwned(() => solidMaterial(look, look.palette.softInk, look.palette.softInk), [look]);
  const group = useRef<Group>(null);
  useFrame(({ camera, size }) => {
    const { children } = group.current!;
    for (let i = 0; i < cuffs.length; i++) {
      const cuff = cuffs[i]!;
      const mesh = children[i]!;
      mesh.visible = live.time < cuff.until;
      alignTo(mesh, live.positions, cuff.node, cuff.node > 0 ? cuff.node - 1 : 1);
      atLeastPx(mesh, cuff.tape ? 0.05 : 0.07, cuff.tape ? 3.5 : 6, camera, size.height);
    }
  }, -1);
  return (
    <group ref={group}>
      {cuffs.map((cuff) => (
        <mesh
          key={`${cuff.tape}${cuff.node}`}
          geometry={cuff.tape ? narrow : wide}
          material={cuff.tape ? weak : strong}
          frustumCulled={false}
        />
      ))}
    </group>
  );
}
