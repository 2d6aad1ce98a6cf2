/** A study's outcome for reading in a terminal. */
import { formatForce, formatLength, formatMass, formatPercent, formatRatio, type Rig } from "@secondline/rig";
import {
  cameOfIt,
  LIKELY_FIRST_BASIS,
  type Outcome,
  type PartOutcome,
  type WhatIfOutcome,
} from "@secondline/scenarios";
import { type Outlook, outlookText } from "./outlook.ts";
import { kilonewtons, margin, metres } from "./quantity.ts";
import { type Cell, table } from "./table.ts";
import { bold, dim, VERDICT_COLOUR, VERDICT_MARK, width } from "./terminal.ts";
import { bullets, wrap, wrapHanging } from "./wrap.ts";

export interface TextOptions {
  /** Every what-if, not only those that govern. */
  readonly all: boolean;
  /** What the wear record says must be looked at. */
  readonly notes: readonly string[];
  readonly outlook?: Outlook;
}

export function outcomeText(rig: Rig, outcome: Outcome, options: TextOptions): string {
  const shown = options.all ? outcome.whatIfs.map((_, i) => i) : governing(outcome);
  return [
    bold(outcome.rigName),
    wrap(rigLine(rig, outcome), width),
    "",
    whatIfTable(outcome, shown),
    ...leftOut(outcome, shown),
    "",
    partsTable(outcome, shown),
    dim(
      wrap(
        "Loads in kN as a load cell reports them (CFC 60). Strength and margin: central value; 5 %: what 19 of 20 such parts reach.",
        width,
      ),
    ),
    "",
    verdict(outcome),
    ...likeliest(outcome),
    ...(options.outlook ? ["", ...outlookText(options.outlook).map((line) => wrap(line, width))] : []),
    "",
    ...(options.notes.length > 0 ? ["Look at these:", ...bullets(options.notes, width), ""] : []),
    ...weakPoints(outcome),
    "Before you rely on this:",
    ...bullets(outcome.cautions, width),
  ].join("\n");
}

function rigLine(rig: Rig, { statics, accuracy }: Outcome): string {
  const connections = (rig.backup?.connections ?? []).filter((one) => one.kind === "connection").length;
  const connected = `${connections === 0 ? "no" : connections} connection${connections === 1 ? "" : "s"}`;
  const backup = rig.backup ? `backup ${formatPercent(rig.backup.slack)} longer, ${connected}` : "no backup";
  return (
    `${formatLength(rig.span)} span, main line ${formatForce(rig.main.pretension)}, ${backup}, walker ${formatMass(rig.walker.mass)}. ` +
    `Standing in the middle: ${formatForce(statics.standingTension)}, sag ${formatLength(statics.standingSag)}. ` +
    `${accuracy[0]!.toUpperCase()}${accuracy.slice(1)} mesh.`
  );
}

/** How many of the what-ifs that lose the walker are shown besides. */
const MOST_LOST = 3;

/** What-ifs in which some part has its worst, the deepest drop, some that lose the walker, and those that failed. */
function governing(outcome: Outcome): number[] {
  const chosen = new Set(outcome.parts.map((part) => part.whatIf));
  const drops = outcome.whatIfs.map((one) => one.drop ?? 0);
  chosen.add(drops.indexOf(Math.max(...drops)));
  for (const i of outcome.incomplete) chosen.add(i);
  for (const i of lost(outcome).slice(0, MOST_LOST)) chosen.add(i);
  return [...chosen].sort((a, b) => a - b);
}

/** What-ifs in which nothing catches the walker, or the ground comes first. */
const lost = ({ whatIfs }: Outcome) =>
  whatIfs.flatMap((one, i) => (one.ok && (!one.caught || (one.feetClearance ?? 1) <= 0) ? [i] : []));

/** What the table above leaves out. */
function leftOut(outcome: Outcome, shown: readonly number[]): string[] {
  if (shown.length === outcome.whatIfs.length) return [];
  const more = lost(outcome).filter((i) => !shown.includes(i)).length;
  const also = more === 0 ? "" : ` In ${more} more the walker is not caught or meets the ground.`;
  return [
    dim(
      wrap(`${outcome.whatIfs.length} what-ifs were run; these ${shown.length} govern.${also} --all lists all.`, width),
    ),
  ];
}

function whatIfTable(outcome: Outcome, shown: readonly number[]): string {
  const rows = shown.map((i): Cell[] => {
    const one = outcome.whatIfs[i]!;
    return [String(i + 1), one.title + remark(one, outcome), ...figures(one)];
  });
  return table(
    [
      { head: "", align: "right" },
      { head: "What if", flexible: true },
      { head: "Walker", align: "right" },
      { head: "Main", align: "right" },
      { head: "Backup", align: "right" },
      { head: "Drop", align: "right" },
      { head: "Feet", align: "right" },
    ],
    rows,
    width,
  );
}

function figures(one: WhatIfOutcome): string[] {
  if (!one.ok || !one.peaks) return ["–", "–", "–", "–", "–"];
  const backup = Math.max(one.peaks.backupA, one.peaks.backupB);
  return [
    kilonewtons(one.peaks.leash),
    kilonewtons(Math.max(one.peaks.mainA, one.peaks.mainB)),
    backup > 0 ? kilonewtons(backup) : "–",
    one.drop === undefined ? "–" : `${metres(one.drop)} m`,
    feet(one.feetClearance),
  ];
}

function remark(one: WhatIfOutcome, outcome: Outcome): string {
  const said = cameOfIt(one, outcome);
  return said === "caught" ? "" : `: ${said}`;
}

function partsTable(outcome: Outcome, shown: readonly number[]): string {
  const rows = outcome.parts.map((part): Cell[] => [
    name(part, outcome),
    load(part),
    kilonewtons(part.strength),
    kilonewtons(part.strength5),
    margin(part.margin),
    margin(part.margin5),
    { text: `${VERDICT_MARK[part.verdict]} ${part.verdict}`, paint: VERDICT_COLOUR[part.verdict] },
    shown.includes(part.whatIf) ? String(part.whatIf + 1) : "",
  ]);
  return table(
    [
      { head: "From harness to rock", flexible: true },
      { head: "Load", align: "right" },
      { head: "Holds", align: "right" },
      { head: "5 %", align: "right" },
      { head: "Margin", align: "right" },
      { head: "5 %", align: "right" },
      { head: "Verdict" },
      { head: "In", align: "right" },
    ],
    rows,
    width,
  );
}

function name(part: PartOutcome, outcome: Outcome): string {
  const first = part.id === outcome.firstToFail ? " ← first" : "";
  if (!part.weakest || (part.id !== "main" && part.id !== "backup")) return part.name + first;
  return `${part.name}, ${part.weakest.reason} ${formatLength(Math.round(part.weakest.at * 10) / 10)} from A${first}`;
}

function load(part: PartOutcome): string {
  const uncertainty = part.loadUncertainty === undefined ? "" : ` ±${kilonewtons(part.loadUncertainty)}`;
  return `${part.parts ? "≥ " : ""}${kilonewtons(part.load)}${uncertainty}`;
}

function verdict(outcome: Outcome): string {
  const mark = `${VERDICT_MARK[outcome.verdict]} `;
  const text = wrapHanging(outcome.sentence, width, " ".repeat(mark.length));
  return VERDICT_COLOUR[outcome.verdict](bold(mark + text));
}

const MOST_LIKELY = 3;

/** The parts likeliest to be first when strengths and loads scatter. */
function likeliest({ likelyFirst }: Outcome): string[] {
  const percent = (share: number) => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
  const said = likelyFirst.slice(0, MOST_LIKELY).map(({ name, first }) => `${name} ${percent(first.value)}`);
  return said.length === 0
    ? []
    : [
        dim(
          wrap(
            `Likeliest to go first: ${said.join(", ")} (${LIKELY_FIRST_BASIS.kind}: ${LIKELY_FIRST_BASIS.note}).`,
            width,
          ),
        ),
      ];
}

function weakPoints(outcome: Outcome): string[] {
  if (outcome.weakestBases.length === 0) return [];
  const list = bullets(
    outcome.weakestBases.map((basis) => `${basis.kind}: ${basis.note}`),
    width,
  );
  return [`The verdict rests on (weakest first; required factor ${formatRatio(outcome.requiredFactor)}):`, ...list, ""];
}

/** Height of the feet above the ground. */
function feet(clearance: number | undefined): string {
  if (clearance === undefined) return "?";
  return clearance <= 0 ? "ground" : `${metres(clearance)} m`;
}
