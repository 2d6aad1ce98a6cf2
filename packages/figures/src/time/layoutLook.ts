/** The look of a layout's trace: colour and pattern, the same wherever the layout is named. */
import type { Palette } from "../palette.ts";

export interface LayoutLook {
  readonly colour: keyof Palette;
  /** The same as a CSS colour. */
  readonly css: string;
  readonly dash: readonly number[];
}

export const LAYOUT_LOOKS: readonly LayoutLook[] = [
  { colour: "ink", css: "var(--ink)", dash: [] },
  { colour: "lineMain", css: "var(--line-main)", dash: [10, 4] },
  { colour: "lineBackup", css: "var(--line-backup)", dash: [2, 3] },
  { colour: "lineConnection", css: "var(--line-connection)", dash: [10, 3, 2, 3] },
];
