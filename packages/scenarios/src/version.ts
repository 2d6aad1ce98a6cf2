/** Version of the program, printed in every report. Kept equal to package.json by a test. */
export const VERSION = "0.1.0";

/**
 * Which generation of numbers: one more whenever a run, a search or a strength may come out otherwise for the same input. What was kept
 * by another generation is not asked. A test holds a few runs against it.
 */
export const GENERATION = 12;
