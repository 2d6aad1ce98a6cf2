/** What is said by the teardown on the page. Not part of the first load. */
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

  "results.unitColumn": "the unit goes into its own column",
  "results.withoutUnit": "write the load in kN, without the unit",
  "results.loadMissing": "Write the load at which the test ended.",
  "results.upperLoadMissing": "Write the upper load.",
  "results.commas": "commas part the cells of this file, so write a point",
  "results.writePoint": "write a point",
  "results.fileOrder": "result_to must be larger than result",
  "results.formOrder": "the upper load must be larger than the lower one",
} as const;
