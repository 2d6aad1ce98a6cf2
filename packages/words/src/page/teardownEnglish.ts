/** Sentences of the teardown on the page. Not part of the first load. */
export const TEARDOWN_ENGLISH = {
  "pieceResult.breakLog": "✓ In the break log: {outcome}, {load} {unit}",
  "pieceResult.result": "Result of {id}",
  "pieceResult.fromKn": "From, kN",
  "pieceResult.toKn": "To, kN",
  "pieceResult.keepResult": "Keep result",

  "teardownPage.pulls": "Pulls that you have",
  "teardownPage.computing": "Simulating what each pull would teach …",
  "teardownPage.noPlan": "✕ There is no plan: {message}.",
  "teardownPage.printSheet": "Print the sheet",

  "printSheet.sheetPrint": "Sheet to print",

  "results.noNumber": '"{text}" is not a number; write the load in kN, without the unit.',
  "results.loadMissing": "Write the load at which the test ended.",
  "results.upperLoadMissing": "Write the upper load.",
  "results.decimalComma": '"{text}" has a decimal comma; write a point.',
  "results.order": "the upper load must be larger than the lower one.",
} as const;
