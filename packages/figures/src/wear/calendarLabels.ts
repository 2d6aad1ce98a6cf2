/** Labels of a calendar where there is room for them. */
import type { Scale } from "../scale.ts";

/** Widths of a letter of a bar's and of a mark's label [px]. */
const LETTER_WIDTH = 6.3;
const WIDE_LETTER_WIDTH = 6.5;
/** A bar with room for no more letters than this has no label [letters]. */
const LEAST_LETTERS = 5;

export interface StayBar {
  readonly left: number;
  readonly width: number;
  readonly middle: number;
  /** Cut short where it does not fit; undefined where there is no room. */
  readonly label: string | undefined;
}

/** A time during which a webbing or part hung, from day to day; a time that goes on ends `today` [px]. */
export function stayBar(
  stay: { readonly from: number; readonly to: number | undefined; readonly label: string },
  x: Scale,
  today: number,
): StayBar {
  const end = Math.max(stay.from, Math.min(stay.to ?? today, x.to));
  const [left, right] = [x.px(stay.from), x.px(end)];
  const letters = Math.floor((right - left - 10) / LETTER_WIDTH);
  const shown = stay.label.length <= letters ? stay.label : `${stay.label.slice(0, Math.max(0, letters - 1))}…`;
  return {
    left,
    width: Math.max(2, right - left),
    middle: (left + right) / 2,
    label: letters > LEAST_LETTERS ? shown : undefined,
  };
}

export interface BandLabel {
  /** Start of the band [px]. */
  readonly at: number;
  /** The words stand before the band, because there is no room behind it. */
  readonly before: boolean;
  /** Not over the bars of the past. */
  readonly fits: boolean;
}

/** A band from a day on; `today` in the drawing, `width`: of the drawing [px]. */
export function bandLabel(day: number, words: string, x: Scale, today: number, width: number): BandLabel {
  const at = x.px(Math.min(day, x.to));
  const room = words.length * WIDE_LETTER_WIDTH + 12;
  const before = at + room > width;
  return { at, before, fits: !before || at - room > today };
}
