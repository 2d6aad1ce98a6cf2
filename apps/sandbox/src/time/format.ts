/** Numbers as the time strip writes them: two or three digits that carry something, always with their unit. */

/** Between a number and its unit: they never part at a line's end. */
const NBSP = "\u00a0";

/** `force` in newtons, written in kN. */
export function inKilonewtons(force: number): string {
  return `${kilonewtonDigits(force)}${NBSP}kN`;
}

/** Digits of `force` [N] in kN, for columns whose head has the unit. */
export function kilonewtonDigits(force: number): string {
  const kN = force / 1000;
  const size = Math.abs(kN);
  return signed(kN, size < 9.995 ? 2 : size < 99.95 ? 1 : 0);
}

/** `time` in seconds, to the millisecond or finer where the view shows finer [s]. */
export function inSeconds(time: number, digits = 2): string {
  return `${signed(time, digits)}${NBSP}s`;
}

/** Decimals that tell apart times which are a few pixels apart when `span` seconds fill the plot. */
export function secondsDigits(span: number): number {
  if (span > 1) return 2;
  return span > 0.1 ? 3 : 4;
}

/** `energy` in joules, written in J or kJ. */
export function inJoules(energy: number): string {
  const size = Math.abs(energy);
  if (size < 99.5) return `${signed(energy, 0)}${NBSP}J`;
  return `${signed(energy / 1000, size < 9995 ? 2 : 1)}${NBSP}kJ`;
}

/** `share` of one as a percentage; a share that is there is never written as none. */
export function inPercent(share: number): string {
  if (share > 0 && share < 0.005) return `under 1${NBSP}%`;
  return `${signed(share * 100, 0)}${NBSP}%`;
}

/** A true minus sign, and no minus before a zero. */
function signed(value: number, digits: number): string {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

/** "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
