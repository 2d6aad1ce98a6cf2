/** Sentences of the terminal on break tests. No page loads it. */
export const STRENGTH_ENGLISH = {
  "caution.invented":
    "Invented tests: nothing in this log was ever pulled, and nothing it says holds for any real part.",
  anyNumber: "any number",

  // The tests of one group
  "group.head": "{label}: {count|1 test|{count} tests}",
  "dots.broke": "broke",
  "dots.held": "held  →",
  "dots.brokeBelow": "broke ←",
  "dots.brokeBetween": "broke ↔",
  "holds.nineOfTen": "What nine of ten such parts hold",
  "holds.nineteenOfTwenty": "What nineteen of twenty such parts hold",
  "holds.how": "how",
  "holds.confidence75": "with 75 % confidence",
  "holds.confidence95": "with 95 % confidence",
  "holds.en1990": "by EN 1990, Annex D, 19 of 20",
  "holds.en1990How": "mean − {factor} × deviation",
  "spread.mean": "Mean {mean}.",
  "spread.scatter": "Mean {mean}, deviation {deviation} ({share}).",
  "spread.fit":
    "Mean {mean}; best fit {family}: 5 % value {value} kN ({low} to {high} kN), a point of the curve and no bound.",
  "spread.scatterFit":
    "Mean {mean}, deviation {deviation} ({share}); best fit {family}: 5 % value {value} kN ({low} to {high} kN), a point of the curve and no bound.",

  // Own tests against the built-in model
  "states.head": "{stock}, rated {rated}: own tests against the built-in model",
  "states.finding": "{state}: {finding}",
  "states.bestTest":
    "{state}: the best test held more than the next one by so much that it is taken for scatter. Had it held {next} too, the 5 % value would be {costs} higher. It counts as it is; ask why it held so much.",
  "states.bestTestOnLine":
    "{state}: the best test on line {line} held more than the next one by so much that it is taken for scatter. Had it held {next} too, the 5 % value would be {costs} higher. It counts as it is; ask why it held so much.",
  "states.state": "State",
  "states.tests": "Tests",
  "states.held": "held, kN",
  "states.atLeast": "{load} or more",
  "states.atMost": "below {load}",
  "states.bounded": "about {load}",
  "states.builtIn": "built in (19 of 20 means)",
  "states.builtInBand": "{value} ({low} to {high})",
  "states.counts": "counts as",

  "figures.foot": "Secondline {version}, break log, {day}. Input {hash}",
} as const;
