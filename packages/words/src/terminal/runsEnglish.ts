/** Sentences of the terminal while runs are made. No page loads it. */
export const RUNS_ENGLISH = {
  cancelled: "Cancelled.",
  "step.chances": "chances",
} as const;
