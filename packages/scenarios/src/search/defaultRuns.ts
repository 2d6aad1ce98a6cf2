/** Runs of a whole search, about: it ends with the block of draws that goes past it. */
export const DEFAULT_RUNS = 220;
