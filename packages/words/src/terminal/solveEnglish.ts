/** Sentences of the terminal on one problem that the engine solves. No page loads it. */
export const SOLVE_ENGLISH = {
  mesh: "{problem}: {elements} elements, {steps} steps of {step} µs",
  "table.quantity": "quantity",
  "table.value": "value",
  "table.unit": "unit",
  none: "none",
} as const;
