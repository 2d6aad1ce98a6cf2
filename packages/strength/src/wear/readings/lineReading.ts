/** A reading of how tight a line is. */
export type LineReading = {
  /** Calendar date, YYYY-MM-DD, where it is known. */
  readonly on?: string;
} & (
  | {
      readonly kind: "tension";
      /** The tension that was read [N]. */
      readonly tension: number;
      /** How far off the reading may be [N]; absent: the share `reading.tension` of the reading. */
      readonly within?: number;
      /** Mass of the walker on the line, and the walker's place [kg, fraction of the span]; absent: nobody stood there. */
      readonly walker?: number;
      readonly at?: number;
    }
  | {
      readonly kind: "sag";
      /** Height of the straight line between the anchors above the line, where the walker stood [m]. */
      readonly sag: number;
      /** How far off the reading may be [m]; absent: the share `reading.sag` of the reading. */
      readonly within?: number;
      readonly walker: number;
      /** Place as a fraction of the span; absent: the middle [-]. */
      readonly at?: number;
    }
);
