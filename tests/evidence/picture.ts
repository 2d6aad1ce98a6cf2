/** The picture of the ensembles: a row for each load, our runs as a band, the other program's as dots, over its mean. */
import type { Catch } from "./catches.ts";

const [LEFT, RIGHT, ROW, TOP] = [250, 20, 15, 46];
const WIDTH = 860;
/** Ends of the axis, over the mean of the other program [-]. */
const [LOW, HIGH] = [0.4, 1.6];

const x = (ratio: number) =>
  Math.round(10 * (LEFT + ((Math.min(HIGH, Math.max(LOW, ratio)) - LOW) / (HIGH - LOW)) * (WIDTH - LEFT - RIGHT))) / 10;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

export function catchesPicture(catches: readonly Catch[]): string {
  const height = TOP + ROW * catches.length + 12;
  const ticks = [0.4, 0.6, 0.8, 1, 1.2, 1.4, 1.6].map(
    (ratio) =>
      `<path d="M${x(ratio)} ${TOP - 6}V${height - 10}" stroke="#e2ddd2"${ratio === 1 ? ' stroke-width="2"' : ""}/><text x="${x(ratio)}" y="${TOP - 12}" text-anchor="middle">${ratio}</text>`,
  );
  const rows = catches.map(({ ensemble, quantity, theirs, ours }, i) => {
    const [y, unit] = [TOP + ROW * i + ROW / 2, mean(theirs)];
    const [from, to, middle] = [x(ours.low / unit), x(ours.high / unit), x(ours.mean / unit)];
    const dots = theirs.map((one) => `<circle cx="${x(one / unit)}" cy="${y}" r="2"/>`).join("");
    return `<text x="${LEFT - 8}" y="${y + 3.5}" text-anchor="end">${ensemble}: ${quantity}</text><rect x="${from}" y="${y - 5}" width="${Math.round(10 * (to - from)) / 10}" height="10" fill="#9cc5cc"/><path d="M${middle} ${y - 6}V${y + 6}" stroke="#0b5d6b" stroke-width="2"/><g fill="#1d2226" fill-opacity="0.6">${dots}</g>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" font-family="Arial, sans-serif" font-size="10.5" fill="#1d2226">
<title>Loads of eleven ensembles: our runs as bands, the other program's as dots</title>
<rect width="${WIDTH}" height="${height}" fill="#faf8f3"/>
<text x="8" y="14" font-size="12">Load or drop over the other program's mean: bands are our runs, the stroke their mean; dots are its runs</text>
${ticks.join("")}
${rows.join("\n")}
</svg>
`;
}
