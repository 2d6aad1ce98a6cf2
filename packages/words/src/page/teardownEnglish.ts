/** What is said by the teardown on the page. Not part of the first load. */
export const TEARDOWN_ENGLISH = {
  "pieceResult.breakLog": "✓ In the break log: {outcome}, {load} {unit}",
  "pieceResult.result": "Result of {id}",
  "pieceResult.fromKn": "From, kN",
  "pieceResult.toKn": "To, kN",
  "pieceResult.keepResult": "Keep result",

  "teardownPage.pullsYou": "Pulls that you have",
  "teardownPage.simulatingWhatEach": "Simulating what each pull would teach …",
  "teardownPage.thereNoPlan": "✕ There is no plan: {message}.",
  "teardownPage.printSheet": "Print the sheet",

  "printSheet.sheetPrint": "Sheet to print",

  "results.unitGoesInto": "the unit goes into its own column",
  "results.writeLoadKn": "write the load in kN, without the unit",
  "results.writeLoadWhich": "Write the load at which the test ended.",
  "results.writeUpperLoad": "Write the upper load.",
  "results.commasPartCells": "commas part the cells of this file, so write a point",
  "results.writePoint": "write a point",
  "results.resultMustLarger": "result_to must be larger than result",
  "results.upperLoadMust": "the upper load must be larger than the lower one",
} as const;
