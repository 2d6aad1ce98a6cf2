/** Widths of letters for code that has neither canvas nor fonts to measure with. */

/** Width of a letter over the size of its font: about that of common sans typefaces, and rather too wide [-]. */
const LETTER_WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijlI.,:;'|!()[\]]/, 0.32],
  [/[ftr\-/"* ]/, 0.38],
  [/[mwMW@%—+−=<>≥≤]/, 0.88],
  [/[A-Z]/, 0.7],
];
/** Width of every letter that the list does not name, over the size of its font [-]. */
const OTHER_LETTER_WIDTH = 0.58;

/** Width of a text in a CSS font whose size is in px [px]. */
export function textWidth(text: string, font: string): number {
  const size = Number(/([\d.]+)px/.exec(font)?.[1] ?? 10);
  return [...text].reduce(
    (sum, letter) => sum + size * (LETTER_WIDTHS.find(([of]) => of.test(letter))?.[1] ?? OTHER_LETTER_WIDTH),
    0,
  );
}
