/**
 * Every number that derating rests on, in one table: its value, the direction in which a change of it would be unsafe, and how
 * sure it is. DERATING.md prints this table (`npm run derating -w packages/strength`), and `test/constants.test.ts` pins it.
 * The values stand in `constantValues.ts`, because the computing code needs none of these words.
 */
import { type ConstantKey, constant } from "./constantValues.ts";

/** How a number is known: read in its source, read where somebody else quotes it, remembered, or set by us. */
export type ConstantStatus = "published" | "seen second hand" | "from memory" | "assumed";

export interface Constant {
  readonly value: number;
  readonly unit: string;
  /** A change in this direction raises strengths or narrows their spread. */
  readonly unsafe: "higher" | "lower";
  readonly status: ConstantStatus;
  /** Meaning of the constant, with its source if it has one. */
  readonly meaning: string;
}

type Row = readonly [
  key: ConstantKey,
  unit: string,
  unsafe: Constant["unsafe"],
  status: ConstantStatus,
  meaning: string,
];

const HSE = "HSE Contract Research Report 364/2001, ch. 3";
const WSTDA = "WSTDA-UV-Sling-2003 as reproduced elsewhere";
const UFC = "UFC 4-159-03 (2005), Table 6-8";

const CONSTANT_ROWS = [
  ["beyond.share", "", "higher", "assumed", "share of the value at the edge that counts at most beyond a range"],
  ["beyond.spread", "", "lower", "assumed", "least spread beyond a range"],
  ["unknown.value", "", "higher", "assumed", "a part of whose kind nothing is known, and a doubt without a number"],
  ["unknown.spread", "", "lower", "assumed", "its spread"],
  [
    "unknown.age",
    "years",
    "lower",
    "assumed",
    "age of a part that bears no date, the oldest that a rig document accepts: how long it can have been in the open",
  ],

  ["make.textile.spread", "", "lower", "assumed", "scatter between new textile parts"],
  ["make.textile.shared", "", "lower", "assumed", "correlation of two parts of one make"],
  ["make.metal.value", "", "higher", "assumed", "metal in use, over its rating"],
  ["make.metal.spread", "", "lower", "assumed", "its spread"],

  ["bolt.placement.value", "", "higher", "assumed", "rock and placement, which nobody sees"],
  ["bolt.placement.spread", "", "lower", "assumed", "its spread"],
  ["bolt.axial", "kN", "higher", "published", "least axial strength, EN 959:2018, 4.3.1 and 4.3.2"],
  ["bolt.radial", "kN", "lower", "published", "least radial strength, EN 959:2018, 4.3.1 and 4.3.2"],
  ["bolt.direction.spread", "", "lower", "assumed", "spread where the pull is not across the axis"],

  ["sun.polyester.loss", "", "lower", "seen second hand", `lost in the end, ${WSTDA}`],
  ["sun.polyester.years", "years", "higher", "assumed", "time constant, drawn through most of the loss in 12 months"],
  ["sun.polyester.to", "months", "higher", "assumed", "range of the curve"],
  ["sun.polyamide.loss", "", "lower", "seen second hand", `lost after 36 months, ${WSTDA}: 50 to 60 %`],
  ["sun.polyamide.to", "months", "higher", "seen second hand", `range of the line, ${WSTDA}`],
  ["sun.hmpe.loss", "", "lower", "assumed", "lost after 36 months: as polyamide, for no open number was found"],
  ["sun.hmpe.to", "months", "higher", "assumed", "range of the line"],
  ["sun.aramid.loss", "", "lower", "assumed", "lost in the end"],
  ["sun.aramid.years", "years", "higher", "assumed", "time constant"],
  ["sun.aramid.to", "months", "higher", "assumed", "range of the curve"],
  [
    "sun.spreadPerLoss",
    "",
    "lower",
    "assumed",
    "spread over loss: up to 40 % in 16 months (Lift & Access, quoting WSTDA) is not below the 5 % value",
  ],
  ["sun.shared", "", "lower", "assumed", "correlation of two parts in the sun"],

  ["dose.january", "", "lower", "assumed", "weight of the month, northern half; the mean of the twelve is 1"],
  ["dose.february", "", "lower", "assumed", "weight of the month"],
  ["dose.march", "", "lower", "assumed", "weight of the month"],
  ["dose.april", "", "lower", "assumed", "weight of the month"],
  ["dose.may", "", "lower", "assumed", "weight of the month"],
  ["dose.june", "", "lower", "assumed", "weight of the month"],
  ["dose.july", "", "lower", "assumed", "weight of the month"],
  ["dose.august", "", "lower", "assumed", "weight of the month"],
  ["dose.september", "", "lower", "assumed", "weight of the month"],
  ["dose.october", "", "lower", "assumed", "weight of the month"],
  ["dose.november", "", "lower", "assumed", "weight of the month"],
  ["dose.december", "", "lower", "assumed", "weight of the month"],
  ["dose.lowLatitude", "", "lower", "assumed", "weight below 30 degrees"],
  ["dose.middleLatitude", "", "lower", "assumed", "weight from 30 to 50 degrees"],
  ["dose.highLatitude", "", "lower", "assumed", "weight above 50 degrees"],

  ["wet.polyamide.value", "", "higher", "published", `${UFC}: reduce nylon lines by 15 %`],
  ["wet.polyamide.spread", "", "lower", "assumed", "its spread"],
  [
    "wet.polyester.value",
    "",
    "higher",
    "published",
    `${UFC}, and a yarn table of Tension Technology International: no loss`,
  ],
  ["wet.polyester.spread", "", "lower", "assumed", "its spread"],
  ["wet.hmpe.value", "", "higher", "from memory", "takes up no water"],
  ["wet.hmpe.spread", "", "lower", "assumed", "its spread"],
  ["wet.aramid.value", "", "higher", "published", "L. Orear, ribbon parachute fabrics: 3 to 13 % lost, the middle"],
  ["wet.aramid.spread", "", "lower", "assumed", "its spread"],

  ["age.lossPerYear", "", "lower", "assumed", "lost in a year, in the dark"],
  ["age.spreadPerYear", "", "lower", "assumed", "spread for a year"],
  ["age.to", "years", "higher", "assumed", "range: makers' shelf lives of about ten years are common practice"],
  ["age.shared", "", "lower", "assumed", "correlation of two old parts"],

  ["falls.loss", "", "lower", "assumed", "lost in the end"],
  ["falls.count", "falls", "higher", "assumed", "falls in which most of it is lost"],
  ["falls.spreadPerLoss", "", "lower", "assumed", "spread over loss"],
  ["falls.to", "falls", "higher", "assumed", "range"],
  ["falls.shared", "", "lower", "assumed", "correlation of two places"],

  ["clamp.first", "", "lower", "assumed", "lost at once"],
  ["clamp.loss", "", "lower", "assumed", "lost with time on top, in the end"],
  ["clamp.months", "months", "higher", "assumed", "time constant"],
  ["clamp.usualLoad", "", "higher", "assumed", "load over rated strength at which the loss is this"],
  ["clamp.leastScale", "", "lower", "assumed", "least scale of the loss, for light loads"],
  ["clamp.mostScale", "", "lower", "assumed", "largest scale of the loss: for heavy loads, and for unknown ones"],
  ["clamp.spreadPerLoss", "", "lower", "assumed", "spread over loss"],
  ["clamp.to", "months", "higher", "assumed", "range"],
  ["clamp.shared", "", "lower", "assumed", "correlation of two clamps"],

  ["sewing.asSewn", "", "higher", "assumed", "as sewn, over the webbing"],
  ["sewing.loss", "", "lower", "assumed", "of the webbing, lost outside in the end"],
  ["sewing.months", "months", "higher", "assumed", "time constant"],
  ["sewing.spread", "", "lower", "assumed", "spread as sewn"],
  ["sewing.spreadPerLoss", "", "lower", "assumed", "spread over loss outside"],
  ["sewing.to", "months", "higher", "assumed", "range"],
  ["sewing.shared", "", "lower", "assumed", "correlation of two seams"],

  ["abrasion.lossPerDepth", "", "lower", "assumed", "what is worn away carries nothing"],
  ["cut.lossPerDepth", "", "lower", "assumed", "a cut edge draws load to its tip"],
  ["damage.spreadPerDepth", "", "lower", "assumed", "spread over depth"],
  ["damage.to", "", "higher", "assumed", "deepest damage covered, share of the width"],
  ["heat.lossPerShare", "", "lower", "assumed", "glazed fibre carries nothing"],
  ["heat.spreadPerShare", "", "lower", "assumed", "spread over the glazed share"],
  ["heat.to", "", "higher", "assumed", "range, share of the section"],
  ["slip.lossPerShare", "", "lower", "assumed", "loss over slipped share of the length"],
  ["slip.spreadPerShare", "", "lower", "assumed", "spread over slipped share"],
  ["slip.to", "", "higher", "assumed", "range"],

  ["bend.atOne", "", "higher", "from memory", "Cordage Institute rule: pin as thick as the webbing"],
  ["bend.full", "", "lower", "from memory", "Cordage Institute rule: pin over thickness from which nothing is lost"],
  ["bend.spread", "", "lower", "assumed", "least spread"],
  ["bend.spreadPerLoss", "", "lower", "assumed", "spread over loss"],
  ["bend.shared", "", "lower", "assumed", "correlation of two bends"],

  ["knot.figureEight.value", "", "higher", "from memory", `${HSE}: double figure-of-eight on a bight 61 to 77 %`],
  ["knot.figureEight.spread", "", "lower", "assumed", "its spread"],
  [
    "knot.barrel.value",
    "",
    "higher",
    "published",
    "P. I. Sáez et al., Symmetry 16 (2024) 167: mean 61.82 % of 90 breaks",
  ],
  ["knot.barrel.spread", "", "lower", "assumed", "its spread"],
  ["knot.bowline.value", "", "higher", "from memory", `${HSE}: 55 to 74 %`],
  ["knot.bowline.spread", "", "lower", "assumed", "its spread"],
  ["knot.overhand.value", "", "higher", "from memory", `${HSE}: 58 to 68 %`],
  ["knot.overhand.spread", "", "lower", "assumed", "its spread"],
  ["knot.butterfly.value", "", "higher", "from memory", `${HSE}: 61 to 72 %`],
  ["knot.butterfly.spread", "", "lower", "assumed", "its spread"],
  ["knot.doubleFisherman.value", "", "higher", "assumed", "a training page, seen second hand, says 68 %"],
  ["knot.doubleFisherman.spread", "", "lower", "assumed", "its spread"],
  ["knot.waterKnot.value", "", "higher", "assumed", "a training page, seen second hand, says 64 %"],
  ["knot.waterKnot.spread", "", "lower", "assumed", "its spread"],
  ["knot.unknown.value", "", "higher", "assumed", "below every loop knot in rope that is named above"],
  ["knot.unknown.spread", "", "lower", "assumed", "its spread"],
  [
    "knot.webbing.value",
    "",
    "higher",
    "seen second hand",
    "Austrian slackline association, own pulls, title and year not known: 25 to 50 % left, the middle",
  ],
  ["knot.webbing.spread", "", "lower", "assumed", "its spread"],
  ["knot.shared", "", "lower", "assumed", "correlation of two knots of one kind"],

  [
    "rigged.choked.value",
    "",
    "higher",
    "from memory",
    "EN 1492-1; a lifting association's table, seen second hand, has the same",
  ],
  ["rigged.basket.value", "", "higher", "from memory", "EN 1492-1, strands up to 45 degrees off the pull"],
  ["rigged.spread", "", "lower", "assumed", "spread of either"],

  ["own.spreadPerChange", "", "lower", "assumed", "spread over the distance of an own factor from 1"],
  ["own.leastSpread", "", "lower", "assumed", "least spread of an own factor"],
  ["own.mostSpread", "", "lower", "assumed", "largest spread of an own factor"],

  ["place.weblockMark", "m", "lower", "assumed", "length that a weblock marks, half to either side of the span's end"],
  ["place.cutReach", "m", "lower", "assumed", "length that a cut weakens, to either side"],
  ["place.joinReach", "m", "lower", "assumed", "length of a join between sections, to either side"],
  ["place.weblockBehind", "m", "lower", "assumed", "webbing under load in a weblock, behind the span's end"],
  [
    "place.loopBehind",
    "m",
    "lower",
    "assumed",
    "webbing under load in a sewn loop and its seam, behind the span's end",
  ],
  ["place.knotBehind", "m", "lower", "assumed", "webbing under load in a knot and its loop, behind the span's end"],
  ["place.knotInside", "m", "lower", "assumed", "webbing that a knot or a loop's seam takes up inside the span"],

  [
    "reading.tension",
    "",
    "higher",
    "assumed",
    "how far off a reading of tension may be when it does not say so, share of it",
  ],
  ["reading.sag", "", "higher", "assumed", "how far off a reading of sag may be when it does not say so, share of it"],
] as const satisfies readonly Row[];

/** A value without a row does not compile. */
type Unsaid = Exclude<ConstantKey, (typeof CONSTANT_ROWS)[number][0]>;
type Whole<T extends never> = [T] extends [never] ? ConstantKey : never;

/** The whole table, in its order. */
export const CONSTANTS: ReadonlyMap<Whole<Unsaid>, Constant> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ CONSTANT_ROWS.map(([key, unit, unsafe, status, meaning]) => [
    key,
    { value: constant(key), unit, unsafe, status, meaning },
  ]),
);

const TABLE_HEADS = ["constant", "value", "unsafe if", "known", "what it is"];

/** The table in Markdown, one part for every first word of the keys. */
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
      const widths = TABLE_HEADS.map((head, i) => Math.max(head.length, ...cells.map((row) => row[i]!.length)));
      const line = (row: readonly string[], fill = " ") =>
        `| ${row.map((cell, i) => cell.padEnd(widths[i]!, fill)).join(" | ")} |`;
      return [
        line(TABLE_HEADS),
        line(
          TABLE_HEADS.map(() => ""),
          "-",
        ),
        ...cells.map((row) => line(row)),
      ].join("\n");
    })
    .join("\n\n");
}
