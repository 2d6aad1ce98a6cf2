/** Colours and uniforms that several materials read. */

import {
  type Gap,
  hazeOf,
  STONE,
  type Stage,
  type StoneColours,
  scaleEnd,
  TABLE_SIZE,
  tensionTexels,
} from "@secondline/figures/scene";
import { Color, DataTexture, LinearFilter, Vector2, Vector4 } from "three";
import { PALETTES, type Palette, type Theme } from "../../design/palette.ts";

/** What every part of the rig in space is made of. */
export interface PartProps {
  readonly stage: Stage;
  readonly look: SceneLook;
}

/** The same of a part that can be pointed out. */
export interface ChosenPartProps extends PartProps {
  readonly chosen: boolean;
}

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
  return {
    theme,
    palette,
    stone: STONE[theme],
    paper: { value: new Color(palette.paper) },
    haze: { value: new Vector4(...hazeOf(gap)) },
    viewport: { value: new Vector2(1, 1) },
    table: { value: tableTexture(theme) },
    scale: { value: scaleEnd(largest) },
  };
}

function tableTexture(theme: Theme): DataTexture {
  const texture = new DataTexture(tensionTexels(theme), TABLE_SIZE, 1);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearFilter;
  texture.needsUpdate = true;
  return texture;
}
