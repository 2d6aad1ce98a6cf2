/** Kept equal to package.json by a test; a constant, so that `--version` loads nothing. */
export const VERSION = "0.1.0";
