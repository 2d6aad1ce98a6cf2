/**
 * Every number that derating rests on, in one table: its value, the direction in which a change of it would be unsafe, and how sure
 * it is. DERATING.md prints this table (`npm run derating -w packages/strength`), and `test/constants.test.ts` pins it.
 */

/** How a number is known: read in its source, read where somebody else quotes it, remembered, or set by us. */
export type ConstantStatus = "published" | "seen second hand" | "from memory" | "assumed";

export interface Constant {
  readonly value: number;
  readonly unit: string;
  /** A change in this direction raises strengths or narrows their spread. */
  readonly unsafe: "higher" | "lower";
  readonly status: ConstantStatus;
  /** What it is; with a source where there is one. */
  readonly meaning: string;
}

type Row = readonly [
  key: string,
  value: number,
  unit: string,
  unsafe: Constant["unsafe"],
  status: ConstantStatus,
  meaning: string,
];

const HSE = "HSE Contract Research Report 364/2001, ch. 3";
const WSTDA = "WSTDA-UV-Sling-2003 as reproduced elsewhere";
const UFC = "UFC 4-159-03 (2005), Table 6-8";

const ROWS = [
  ["beyond.share", 0.5, "", "higher", "assumed", "share of the value at the edge that counts beyond a range"],
  ["beyond.spread", 0.3, "", "lower", "assumed", "least spread beyond a range"],
  [
    "unknown.value",
    0.7,
    "",
    "higher",
    "assumed",
    "a part of whose kind nothing is known, and a doubt without a number",
  ],
  ["unknown.spread", 0.2, "", "lower", "assumed", "its spread"],
  [
    "unknown.age",
    50,
    "years",
    "lower",
    "assumed",
    "age of a part that bears no date, the oldest that a rig document accepts: how long it can have been in the open",
  ],

  ["make.textile.spread", 0.05, "", "lower", "assumed", "scatter between new textile parts"],
  ["make.textile.shared", 0.7, "", "lower", "assumed", "correlation of two parts of one make"],
  ["make.metal.value", 0.95, "", "higher", "assumed", "metal in use, over its rating"],
  ["make.metal.spread", 0.05, "", "lower", "assumed", "its spread"],

  ["bolt.placement.value", 0.85, "", "higher", "assumed", "rock and placement, which nobody sees"],
  ["bolt.placement.spread", 0.2, "", "lower", "assumed", "its spread"],
  ["bolt.axial", 15, "kN", "higher", "published", "least axial strength, EN 959:2018, 4.3.1 and 4.3.2"],
  ["bolt.radial", 25, "kN", "lower", "published", "least radial strength, EN 959:2018, 4.3.1 and 4.3.2"],
  ["bolt.direction.spread", 0.1, "", "lower", "assumed", "spread where the pull is not across the axis"],

  ["sun.polyester.loss", 0.3, "", "lower", "seen second hand", `lost in the end, ${WSTDA}`],
  [
    "sun.polyester.years",
    0.4,
    "years",
    "higher",
    "assumed",
    "time constant, drawn through most of the loss in 12 months",
  ],
  ["sun.polyester.to", 36, "months", "higher", "assumed", "range of the curve"],
  ["sun.polyamide.loss", 0.55, "", "lower", "seen second hand", `lost after 36 months, ${WSTDA}: 50 to 60 %`],
  ["sun.polyamide.to", 36, "months", "higher", "seen second hand", `range of the line, ${WSTDA}`],
  ["sun.hmpe.loss", 0.55, "", "lower", "assumed", "lost after 36 months: as polyamide, for no open number was found"],
  ["sun.hmpe.to", 24, "months", "higher", "assumed", "range of the line"],
  ["sun.aramid.loss", 0.6, "", "lower", "assumed", "lost in the end"],
  ["sun.aramid.years", 0.5, "years", "higher", "assumed", "time constant"],
  ["sun.aramid.to", 12, "months", "higher", "assumed", "range of the curve"],
  [
    "sun.spreadPerLoss",
    0.6,
    "",
    "lower",
    "assumed",
    "spread over loss: up to 40 % in 16 months (Lift & Access, quoting WSTDA) is not below the 5 % value",
  ],
  ["sun.shared", 0.8, "", "lower", "assumed", "correlation of two parts in the sun"],

  ["dose.january", 0.4, "", "lower", "assumed", "weight of the month, northern half; the mean of the twelve is 1"],
  ["dose.february", 0.6, "", "lower", "assumed", "weight of the month"],
  ["dose.march", 0.9, "", "lower", "assumed", "weight of the month"],
  ["dose.april", 1.2, "", "lower", "assumed", "weight of the month"],
  ["dose.may", 1.5, "", "lower", "assumed", "weight of the month"],
  ["dose.june", 1.65, "", "lower", "assumed", "weight of the month"],
  ["dose.july", 1.65, "", "lower", "assumed", "weight of the month"],
  ["dose.august", 1.45, "", "lower", "assumed", "weight of the month"],
  ["dose.september", 1.1, "", "lower", "assumed", "weight of the month"],
  ["dose.october", 0.75, "", "lower", "assumed", "weight of the month"],
  ["dose.november", 0.45, "", "lower", "assumed", "weight of the month"],
  ["dose.december", 0.35, "", "lower", "assumed", "weight of the month"],
  ["dose.lowLatitude", 1.3, "", "lower", "assumed", "weight below 30 degrees"],
  ["dose.middleLatitude", 1, "", "lower", "assumed", "weight from 30 to 50 degrees"],
  ["dose.highLatitude", 0.8, "", "lower", "assumed", "weight above 50 degrees"],

  ["wet.polyamide.value", 0.85, "", "higher", "published", `${UFC}: reduce nylon lines by 15 %`],
  ["wet.polyamide.spread", 0.04, "", "lower", "assumed", "its spread"],
  [
    "wet.polyester.value",
    1,
    "",
    "higher",
    "published",
    `${UFC}, and a yarn table of Tension Technology International: no loss`,
  ],
  ["wet.polyester.spread", 0.02, "", "lower", "assumed", "its spread"],
  ["wet.hmpe.value", 1, "", "higher", "from memory", "takes up no water"],
  ["wet.hmpe.spread", 0.03, "", "lower", "assumed", "its spread"],
  [
    "wet.aramid.value",
    0.92,
    "",
    "higher",
    "published",
    "L. Orear, ribbon parachute fabrics: 3 to 13 % lost, the middle",
  ],
  ["wet.aramid.spread", 0.04, "", "lower", "assumed", "its spread"],

  ["age.lossPerYear", 0.01, "", "lower", "assumed", "lost in a year, in the dark"],
  ["age.spreadPerYear", 0.005, "", "lower", "assumed", "spread for a year"],
  ["age.to", 10, "years", "higher", "assumed", "range: makers' shelf lives of about ten years are common practice"],
  ["age.shared", 0.8, "", "lower", "assumed", "correlation of two old parts"],

  ["falls.loss", 0.25, "", "lower", "assumed", "lost in the end"],
  ["falls.count", 100, "falls", "higher", "assumed", "falls in which most of it is lost"],
  ["falls.spreadPerLoss", 0.5, "", "lower", "assumed", "spread over loss"],
  ["falls.to", 400, "falls", "higher", "assumed", "range"],
  ["falls.shared", 0.6, "", "lower", "assumed", "correlation of two places"],

  ["clamp.first", 0.05, "", "lower", "assumed", "lost at once"],
  ["clamp.loss", 0.4, "", "lower", "assumed", "lost with time on top, in the end"],
  ["clamp.months", 4, "months", "higher", "assumed", "time constant"],
  ["clamp.usualLoad", 0.1, "", "higher", "assumed", "load over rated strength at which the loss is this"],
  ["clamp.leastScale", 0.8, "", "lower", "assumed", "least scale of the loss, for light loads"],
  ["clamp.mostScale", 1.4, "", "lower", "assumed", "largest scale of the loss: for heavy loads, and for unknown ones"],
  ["clamp.spreadPerLoss", 0.35, "", "lower", "assumed", "spread over loss"],
  ["clamp.to", 24, "months", "higher", "assumed", "range"],
  ["clamp.shared", 0.6, "", "lower", "assumed", "correlation of two clamps"],

  ["sewing.asSewn", 0.8, "", "higher", "assumed", "as sewn, over the webbing"],
  ["sewing.loss", 0.25, "", "lower", "assumed", "of the webbing, lost outside in the end"],
  ["sewing.months", 6, "months", "higher", "assumed", "time constant"],
  ["sewing.spread", 0.1, "", "lower", "assumed", "spread as sewn"],
  ["sewing.spreadPerLoss", 0.3, "", "lower", "assumed", "spread over loss outside"],
  ["sewing.to", 36, "months", "higher", "assumed", "range"],
  ["sewing.shared", 0.5, "", "lower", "assumed", "correlation of two seams"],

  ["abrasion.lossPerDepth", 1, "", "lower", "assumed", "what is worn away carries nothing"],
  ["cut.lossPerDepth", 1.5, "", "lower", "assumed", "a cut edge draws load to its tip"],
  ["damage.spreadPerDepth", 0.4, "", "lower", "assumed", "spread over depth"],
  ["damage.to", 0.4, "", "higher", "assumed", "deepest damage covered, share of the width"],
  ["heat.lossPerShare", 1, "", "lower", "assumed", "glazed fibre carries nothing"],
  ["heat.spreadPerShare", 0.5, "", "lower", "assumed", "spread over the glazed share"],
  ["heat.to", 0.3, "", "higher", "assumed", "range, share of the section"],
  ["slip.lossPerShare", 4, "", "lower", "assumed", "loss over slipped share of the length"],
  ["slip.spreadPerShare", 2, "", "lower", "assumed", "spread over slipped share"],
  ["slip.to", 0.05, "", "higher", "assumed", "range"],

  ["bend.atOne", 0.5, "", "higher", "from memory", "Cordage Institute rule: pin as thick as the webbing"],
  ["bend.full", 8, "", "lower", "from memory", "Cordage Institute rule: pin over thickness from which nothing is lost"],
  ["bend.spread", 0.02, "", "lower", "assumed", "least spread"],
  ["bend.spreadPerLoss", 0.2, "", "lower", "assumed", "spread over loss"],
  ["bend.shared", 0.5, "", "lower", "assumed", "correlation of two bends"],

  ["knot.figureEight.value", 0.61, "", "higher", "from memory", `${HSE}: double figure-of-eight on a bight 61 to 77 %`],
  ["knot.figureEight.spread", 0.1, "", "lower", "assumed", "its spread"],
  [
    "knot.barrel.value",
    0.618,
    "",
    "higher",
    "published",
    "P. I. Sáez et al., Symmetry 16 (2024) 167: mean 61.82 % of 90 breaks",
  ],
  ["knot.barrel.spread", 0.1, "", "lower", "assumed", "its spread"],
  ["knot.bowline.value", 0.55, "", "higher", "from memory", `${HSE}: 55 to 74 %`],
  ["knot.bowline.spread", 0.1, "", "lower", "assumed", "its spread"],
  ["knot.overhand.value", 0.58, "", "higher", "from memory", `${HSE}: 58 to 68 %`],
  ["knot.overhand.spread", 0.12, "", "lower", "assumed", "its spread"],
  ["knot.butterfly.value", 0.61, "", "higher", "from memory", `${HSE}: 61 to 72 %`],
  ["knot.butterfly.spread", 0.1, "", "lower", "assumed", "its spread"],
  ["knot.doubleFisherman.value", 0.6, "", "higher", "assumed", "a training page, seen second hand, says 68 %"],
  ["knot.doubleFisherman.spread", 0.12, "", "lower", "assumed", "its spread"],
  ["knot.waterKnot.value", 0.5, "", "higher", "assumed", "a training page, seen second hand, says 64 %"],
  ["knot.waterKnot.spread", 0.2, "", "lower", "assumed", "its spread"],
  ["knot.unknown.value", 0.5, "", "higher", "assumed", "below every loop knot in rope that is named above"],
  ["knot.unknown.spread", 0.2, "", "lower", "assumed", "its spread"],
  [
    "knot.webbing.value",
    0.375,
    "",
    "higher",
    "seen second hand",
    "Austrian slackline association, own pulls, title and year not known: 25 to 50 % left, the middle",
  ],
  ["knot.webbing.spread", 0.25, "", "lower", "assumed", "its spread"],
  ["knot.shared", 0.5, "", "lower", "assumed", "correlation of two knots of one kind"],

  [
    "rigged.choked.value",
    0.8,
    "",
    "higher",
    "from memory",
    "EN 1492-1; a lifting association's table, seen second hand, has the same",
  ],
  ["rigged.basket.value", 1.4, "", "higher", "from memory", "EN 1492-1, strands up to 45 degrees off the pull"],
  ["rigged.spread", 0.1, "", "lower", "assumed", "spread of either"],

  ["own.spreadPerChange", 0.5, "", "lower", "assumed", "spread over the distance of an own factor from 1"],
  ["own.leastSpread", 0.05, "", "lower", "assumed", "least spread of an own factor"],
  ["own.mostSpread", 0.3, "", "lower", "assumed", "largest spread of an own factor"],

  [
    "place.weblockMark",
    0.15,
    "m",
    "lower",
    "assumed",
    "length that a weblock marks, half to either side of the span's end",
  ],
  ["place.cutReach", 0.025, "m", "lower", "assumed", "length that a cut weakens, to either side"],
  ["place.joinReach", 0.15, "m", "lower", "assumed", "length of a join between sections, to either side"],
  ["place.weblockBehind", 0.3, "m", "lower", "assumed", "webbing under load in a weblock, behind the span's end"],
  [
    "place.loopBehind",
    0.5,
    "m",
    "lower",
    "assumed",
    "webbing under load in a sewn loop and its seam, behind the span's end",
  ],
  ["place.knotBehind", 1, "m", "lower", "assumed", "webbing under load in a knot and its loop, behind the span's end"],
  ["place.knotInside", 0.3, "m", "lower", "assumed", "webbing that a knot or a loop's seam takes up inside the span"],

  [
    "reading.tension",
    0.1,
    "",
    "higher",
    "assumed",
    "how far off a reading of tension may be when it does not say so, share of it",
  ],
  [
    "reading.sag",
    0.1,
    "",
    "higher",
    "assumed",
    "how far off a reading of sag may be when it does not say so, share of it",
  ],
] as const satisfies readonly Row[];

export type ConstantKey = (typeof ROWS)[number][0];

/** The whole table, in its order. */
export const CONSTANTS: ReadonlyMap<ConstantKey, Constant> = new Map(
  ROWS.map(([key, value, unit, unsafe, status, meaning]) => [key, { value, unit, unsafe, status, meaning }]),
);

/** The value of a constant, in the unit of its row. */
export function constant(key: ConstantKey): number {
  return CONSTANTS.get(key)!.value;
}

const HEADS = ["constant", "value", "unsafe if", "known", "what it is"];

/** The table in Markdown, one part of it for every first word of the keys. */
export function constantsMarkdown(): string {
  const groups = [...new Set([...CONSTANTS.keys()].map((key) => key.split(".")[0]!))];
  return groups
    .map((group) => {
      const rows = [...CONSTANTS].filter(([key]) => key.startsWith(`${group}.`));
      const cells = rows.map(([key, { value, unit, unsafe, status, meaning }]) => [
        `\`${key}\``,
        `${value}${unit === "" ? "" : ` ${unit}`}`,
        unsafe,
        status,
        meaning,
      ]);
      const widths = HEADS.map((head, i) => Math.max(head.length, ...cells.map((row) => row[i]!.length)));
      const line = (row: readonly string[], fill = " ") =>
        `| ${row.map((cell, i) => cell.padEnd(widths[i]!, fill)).join(" | ")} |`;
      return [
        line(HEADS),
        line(
          HEADS.map(() => ""),
          "-",
        ),
        ...cells.map((row) => line(row)),
      ].join("\n");
    })
    .join("\n\n");
}
