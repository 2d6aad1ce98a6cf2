/**
 * Limits of fields whose worst value is counted where nobody wrote one down: least and most that the rig document accepts. They
 * stand apart from the table of fields, so that who works strengths out need not carry its words along.
 */
export const CAUTIOUS_LIMITS = {
  "leash.falls": [0, 100_000],
  "leash.sheathSlip": [0, 0.5],
  "leash.glazed": [0, 0.99],
  /** Of any end of a line: diameter that the webbing bends over, over its thickness [-]. */
  bend: [0.1, 1000],
} as const;
