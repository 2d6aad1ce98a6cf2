/** Lengths as a hand or a tape gives them. */

/** To the centimetre, and never −0 [m]. */
export const centimetre = (metres: number): number => Math.round(metres * 100) / 100 + 0;

/** As one would type it: "12.35 m". */
export const metreText = (metres: number): string => `${centimetre(metres)} m`;
