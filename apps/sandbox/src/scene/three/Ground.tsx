import {
  CONIFER_PROFILE,
  contourInterval,
  type Gap,
  RIDGE_FRAGMENT,
  ROCK_FRAGMENT,
  ROCK_VERTEX,
  ridgeMesh,
  SOLID_VERTEX,
  terrainMesh,
  treePlaces,
} from "@secondline/figures/scene";
import { useMemo } from "react";
import { Color, DoubleSide, InstancedMesh, LatheGeometry, Matrix4, ShaderMaterial, Vector2, Vector3 } from "three";
import { geometryOf, solidMaterial } from "./geometry.ts";
import type { SceneLook } from "./look.ts";
import { useOwned } from "./useOwned.ts";

/** The gap: rock with contour lines, trees for scale, far ridges in the haze. */
export function Ground({ gap, look }: { readonly gap: Gap; readonly look: SceneLook }) {
  const terrain = useMemo(() => terrainMesh(gap), [gap]);
  const geometry = useOwned(
    () =>
      geometryOf(
        { position: [terrain.position, 3], normal: [terrain.normal, 3], presence: [terrain.presence, 1] },
        terrain.index,
      ),
    [terrain],
  );
  const material = useOwned(() => rockMaterial(look, gap), [look, gap]);
  const treeMaterial = useOwned(() => solidMaterial(look, look.stone.tree, look.stone.shade), [look]);
  const trees = useOwned(() => forest(treePlaces(gap, terrain), treeMaterial), [gap, terrain, treeMaterial]);
  const ridges = useOwned(() => {
    const mesh = ridgeMesh(gap);
    return geometryOf({ position: [mesh.position, 3], normal: [mesh.normal, 3] }, mesh.index);
  }, [gap]);
  const ridgeMaterial = useOwned(() => farMaterial(look), [look]);
  return (
    <>
      <mesh geometry={ridges} material={ridgeMaterial} renderOrder={-2} frustumCulled={false} />
      <primitive object={trees} dispose={null} />
      <mesh geometry={geometry} material={material} renderOrder={1} frustumCulled={false} />
    </>
  );
}

function rockMaterial(look: SceneLook, gap: Gap): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: ROCK_VERTEX,
    fragmentShader: ROCK_FRAGMENT,
    side: DoubleSide,
    transparent: true,
    uniforms: {
      uPaper: look.paper,
      uHaze: look.haze,
      uLit: { value: new Color(look.stone.lit) },
      uShade: { value: new Color(look.stone.shade) },
      uContour: { value: new Color(look.stone.contour) },
      uInk: { value: new Color(look.palette.ink) },
      uInterval: { value: contourInterval(gap) },
    },
  });
}

function farMaterial(look: SceneLook): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: SOLID_VERTEX,
    fragmentShader: RIDGE_FRAGMENT,
    side: DoubleSide,
    depthWrite: false,
    uniforms: { uPaper: look.paper, uColour: { value: new Color(look.stone.far) } },
  });
}

function forest(places: Float32Array, material: ShaderMaterial): InstancedMesh {
  const cone = new LatheGeometry(
    CONIFER_PROFILE.map(([radius, z]) => new Vector2(radius, z)),
    7,
  ).rotateX(Math.PI / 2);
  const count = places.length / 4;
  const mesh = new InstancedMesh(cone, material, count);
  const matrix = new Matrix4();
  const scale = new Vector3();
  for (let i = 0; i < count; i++) {
    const size = places[4 * i + 3]!;
    matrix
      .makeRotationZ(2.4 * i)
      .scale(scale.setScalar(size))
      .setPosition(places[4 * i]!, places[4 * i + 1]!, places[4 * i + 2]!);
    mesh.setMatrixAt(i, matrix);
  }
  mesh.frustumCulled = false;
  const disposeInstances = mesh.dispose.bind(mesh);
  mesh.dispose = () => {
    cone.dispose();
    return disposeInstances();
  };
  return mesh;
}
