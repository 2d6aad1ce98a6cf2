/** Chances of failure for reading in a terminal. */
import { formatLength } from "@secondline/rig";
import {
  type Chances,
  chanceText,
  formatChance,
  IN_BRACKETS,
  inputText,
  type PartChance,
  partName,
  restText,
  SHARE_KINDS,
  shareText,
  worthARow,
} from "@secondline/scenarios";
import { kilonewtons } from "./quantity.ts";
import { table } from "./table.ts";
import { bold, dim, width } from "./terminal.ts";
import { bullets, wrap } from "./wrap.ts";

/** Chances of one rig, one what-if after another; what is common to all is said once, at the end. */
export function chancesText(all: readonly Chances[], notes: readonly string[]): string {
  const [one] = all;
  return [
    bold(one!.rigName),
    "",
    ...all.flatMap((chances) => [whatIfText(chances), ""]),
    ...(notes.length > 0 ? ["Look at these:", ...bullets(notes, width), ""] : []),
    "Before you rely on this:",
    ...bullets([...new Set(all.flatMap((chances) => chances.cautions))], width),
  ].join("\n");
}

function whatIfText(chances: Chances): string {
  return [
    bold(chances.title),
    wrap(chances.sentence, width),
    "",
    partsTable(chances),
    ...restOf(chances),
    ...(chances.shares.length > 0 ? ["", sharesTable(chances)] : []),
    "",
    inputsTable(chances),
    "",
    "The numbers rest on:",
    ...bullets(chances.restsOn, width),
  ].join("\n");
}

function partsTable({ parts }: Chances): string {
  const rows = parts
    .filter(worthARow)
    .map((part) => [
      nameOf(part),
      kilonewtons(part.load),
      kilonewtons(part.strength),
      chanceText(part.first),
      chanceText(part.fails),
    ]);
  return table(
    [
      { head: "Part", flexible: true },
      { head: "Load", align: "right" },
      { head: "Holds", align: "right" },
      { head: "Goes first", align: "right" },
      { head: "Fails", align: "right" },
    ],
    rows,
    width,
  );
}

/** With the place of a weak stretch. */
function nameOf(part: PartChance): string {
  const { stretch } = part;
  if (!stretch || stretch.reason === "webbing") return partName(part);
  return `${partName(part)} ${formatLength(Math.round(5 * (stretch.from + stretch.to)) / 10)} from A`;
}

function restOf({ parts }: Chances): string[] {
  return [
    dim(
      wrap(
        `kN; middle load of the runs, central strength. Goes first: has the least margin of all. Fails: carries more than it holds, before anything else has failed. ${IN_BRACKETS} ${restText(parts)}`.trimEnd(),
        width,
      ),
    ),
  ];
}

const MOST_SHARES = 10;

function sharesTable({ shares }: Chances): string {
  const rows = shares
    .slice(0, MOST_SHARES)
    .map((share) => [
      share.name,
      SHARE_KINDS[share.kind],
      shareText(share),
      formatChance(Math.max(0, share.total.value)),
    ]);
  return table(
    [
      { head: "Where the scatter of the least margin comes from", flexible: true },
      { head: "Of" },
      { head: "Alone", align: "right" },
      { head: "With others", align: "right" },
    ],
    rows,
    width,
  );
}

function inputsTable({ inputs }: Chances): string {
  const rows = inputs.map((input) => [
    input.name,
    input.id,
    inputText(input).join(" "),
    `${input.basis.kind}: ${input.basis.note}`,
  ]);
  return table(
    [{ head: "Uncertain" }, { head: "--spread" }, { head: "Middle and spread" }, { head: "Basis", flexible: true }],
    rows,
    width,
  );
}
