/** Makes geometries and materials of three from plain arrays. */

import { RIBBON_FRAGMENT, RIBBON_VERTEX, type Ribbon, SOLID_FRAGMENT, SOLID_VERTEX } from "@secondline/figures/scene";
import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DoubleSide,
  DynamicDrawUsage,
  ShaderMaterial,
  Sphere,
  Vector3,
} from "three";
import type { SceneLook } from "./look.ts";

export function geometryOf(
  attributes: Readonly<Record<string, readonly [array: Float32Array, size: number]>>,
  index: Uint16Array | Uint32Array,
): BufferGeometry {
  const geometry = new BufferGeometry();
  for (const [name, [array, size]] of Object.entries(attributes))
    geometry.setAttribute(name, new BufferAttribute(array, size));
  geometry.setIndex(new BufferAttribute(index, 1));
  return geometry;
}

/** The ribbon's arrays are the attributes' arrays: filling the ribbon and calling `touchRibbon` is all a frame does. */
export function ribbonGeometry(ribbon: Ribbon): BufferGeometry {
  const geometry = geometryOf(
    {
      position: [ribbon.position, 3],
      aTangent: [ribbon.tangent, 3],
      aTension: [ribbon.tension, 1],
      aPlace: [ribbon.place, 2],
    },
    ribbon.index,
  );
  for (const name of MOVING) (geometry.getAttribute(name) as BufferAttribute).setUsage(DynamicDrawUsage);
  // It moves every frame and is nearly always in the picture: not worth a bound.
  geometry.boundingSphere = new Sphere(new Vector3(), Number.POSITIVE_INFINITY);
  return geometry;
}
const MOVING = ["position", "aTangent", "aTension"] as const;

export function touchRibbon(geometry: BufferGeometry): void {
  for (let i = 0; i < MOVING.length; i++) geometry.getAttribute(MOVING[i]!).needsUpdate = true;
}

export const RIBBON_MODES = { main: 0, backup: 1, rope: 2, flat: 3 } as const;

export function ribbonMaterial(
  look: SceneLook,
  options: {
    readonly mode: keyof typeof RIBBON_MODES;
    readonly width: number;
    readonly minPx: number;
    readonly flat?: string;
  },
): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: RIBBON_VERTEX,
    fragmentShader: RIBBON_FRAGMENT,
    side: DoubleSide,
    uniforms: {
      uViewport: look.viewport,
      uWidth: { value: options.width },
      uMinPx: { value: options.minPx },
      uTable: look.table,
      uScale: look.scale,
      uInk: { value: new Color(look.theme === "light" ? look.palette.ink : look.palette.paper) },
      uFlat: { value: new Color(options.flat ?? look.palette.ink) },
      uMode: { value: RIBBON_MODES[options.mode] },
      uChosen: { value: 0 },
      uAccent: { value: new Color(look.palette.accent) },
    },
  });
}

/** A plain thing in one colour, in the scene's light and haze. */
export function solidMaterial(look: SceneLook, colour: string, dark: string): ShaderMaterial {
  return new ShaderMaterial({
    vertexShader: SOLID_VERTEX,
    fragmentShader: SOLID_FRAGMENT,
    uniforms: {
      uPaper: look.paper,
      uHaze: look.haze,
      uColour: { value: new Color(colour) },
      uDark: { value: new Color(dark) },
    },
  });
}
