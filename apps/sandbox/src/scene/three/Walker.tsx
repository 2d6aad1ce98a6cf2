import { useFrame } from "@react-three/fiber";
import {
  BODY_FRAGMENT,
  BODY_VERTEX,
  BONES,
  bodyMesh,
  CLOTHES_COLOURS,
  type LiveFrame,
  poseBones,
  WALKER_TONES,
} from "@secondline/figures/scene";
import { useMemo } from "react";
import { BackSide, Color, FrontSide, Matrix4, ShaderMaterial } from "three";
import { geometryOf } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { useOwned } from "./useOwned.ts";

const INKS = { outline: 1, ghost: 2, previous: 3 } as const;
/** The walker, or a hatched ghost of one. */
export function Walker({
  live,
  look,
  as = "body",
}: {
  readonly live: LiveFrame;
  readonly look: SceneLook;
  readonly as?: "body" | "ghost" | "previous";
}) {
  const geometry = useOwned(() => {
    const body = bodyMesh();
    return geometryOf(
      { position: [body.position, 3], normal: [body.normal, 3], binding: [body.binding, 2] },
      body.index,
    );
  }, []);
  const bones = useMemo(
    () => ({ flat: new Float32Array(BONES.length * 16), matrices: BONES.map(() => new Matrix4()) }),
    [],
  );
  const body = useOwned(() => bodyMaterial(look, bones.matrices, as === "body" ? 0 : INKS[as]), [look, bones, as]);
  const outline = useOwned(() => bodyMaterial(look, bones.matrices, INKS.outline), [look, bones]);
  useFrame(() => {
    poseBones(bones.flat, live.pose);
    for (let i = 0; i < BONES.length; i++) bones.matrices[i]!.fromArray(bones.flat, 16 * i);
  }, -1);
  return (
    <>
      <mesh geometry={geometry} material={body} frustumCulled={false} />
      {as === "body" && <mesh geometry={geometry} material={outline} frustumCulled={false} />}
    </>
  );
}

function bodyMaterial(look: SceneLook, matrices: Matrix4[], ink: number): ShaderMaterial {
  const colour = ink >= 2 ? look.palette.ghost : look.theme === "light" ? look.palette.ink : look.palette.paper;
  return new ShaderMaterial({
    vertexShader: BODY_VERTEX,
    fragmentShader: BODY_FRAGMENT,
    side: ink === INKS.outline ? BackSide : FrontSide,
    uniforms: {
      uBones: { value: matrices },
      uViewport: look.viewport,
      uGrow: { value: ink === INKS.outline ? 1.3 : 0 },
      uPaper: look.paper,
      uHaze: look.haze,
      uTones: { value: WALKER_TONES.map((tone) => new Color(CLOTHES_COLOURS[look.theme][tone])) },
      uInk: { value: new Color(colour) },
      uFlatInk: { value: ink },
    },
  });
}
