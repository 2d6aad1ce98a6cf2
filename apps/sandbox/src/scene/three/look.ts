/** Colours and uniforms that several materials read. */

import { type Gap, STONE, type StoneColours, scaleEnd, TABLE_SIZE, tensionTable } from "@secondline/figures/scene";
import { Color, DataTexture, LinearFilter, Vector2, Vector4 } from "three";
import { PALETTES, type Palette, type Theme } from "../../design/palette.ts";

export interface SceneLook {
  readonly theme: Theme;
  readonly palette: Palette;
  readonly stone: StoneColours;
  readonly paper: { value: Color };
  readonly haze: { value: Vector4 };
  /** Size of the picture, shared by all materials that work in pixels [px]. */
  readonly viewport: { value: Vector2 };
  readonly table: { value: DataTexture };
  readonly scale: { value: number };
}

export function createLook(theme: Theme, gap: Gap, largest: number): SceneLook {
  const palette = PALETTES[theme];
  const top = Math.min(gap.edgeA, gap.edgeB) - 2;
  const bottom = Math.min(gap.floor, top - 10);
  return {
    theme,
    palette,
    stone: STONE[theme],
    paper: { value: new Color(palette.paper) },
    haze: { value: new Vector4(0.9 * gap.span + 30, 4.5 * gap.span + 160, top, bottom - 0.15 * (top - bottom)) },
    viewport: { value: new Vector2(1, 1) },
    table: { value: tableTexture(theme) },
    scale: { value: scaleEnd(largest) },
  };
}

function tableTexture(theme: Theme): DataTexture {
  const rgb = tensionTable(theme);
  const data = new Uint8Array(TABLE_SIZE * 4);
  for (let i = 0; i < TABLE_SIZE; i++) data.set([rgb[3 * i]!, rgb[3 * i + 1]!, rgb[3 * i + 2]!, 255], 4 * i);
  const texture = new DataTexture(data, TABLE_SIZE, 1);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}
