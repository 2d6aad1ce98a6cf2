/** The mark between the cells of a table from a spreadsheet. */

const DELIMITERS = [",", ";", "\t"];
/** So far down the names are looked for, below a title [lines]. */
const HEAD_LINES = 20;

/** The mark that gives the most cells in one line near the top, where the names are. A comma between two digits is no mark. */
export function delimiterOf(text: string): string {
  const lines = text.split(/\r\n|\n|\r/, HEAD_LINES).filter((line) => !line.startsWith("#"));
  const bare = lines.map((line) => line.replace(/"[^"]*"/g, "").replace(/\d,(?=\d)/g, ""));
  const most = (one: string) => Math.max(...bare.map((line) => line.split(one).length));
  return DELIMITERS.reduce((best, one) => (most(one) > most(best) ? one : best));
}
