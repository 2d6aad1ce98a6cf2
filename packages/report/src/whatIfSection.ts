/** What was simulated, and what came of it. */
import { formatForce, formatLength, formatSpeed } from "@secondline/rig";
import type { Outcome, WhatIfOutcome } from "../outcome.ts";
import { lower } from "../sentence.ts";
import { forcePlot } from "./forcePlot.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";

export function whatIfTable(outcome: Outcome): Html {
  const rows = outcome.whatIfs.map((one): Content[] => [one.title, ...figures(one), cameOfIt(one, outcome)]);
  const caption =
    "Anchors: the larger of both ends, main line and backup each. Height: of the feet of an upright walker above the ground.";
  const heads = ["What if", "Walker", "Main line", "Backup", "Drop", "Height", "What came of it"];
  return tableOf(caption, heads, rows, [1, 2, 3, 4, 5]);
}

function figures(one: WhatIfOutcome): string[] {
  if (!one.ok || !one.peaks) return ["–", "–", "–", "–", "–"];
  const { leash, mainA, mainB, backupA, backupB } = one.peaks;
  const backup = Math.max(backupA, backupB);
  return [
    formatForce(leash),
    formatForce(Math.max(mainA, mainB)),
    backup > 0 ? formatForce(backup) : "–",
    one.drop === undefined ? "–" : formatLength(one.drop),
    height(one.feetClearance),
  ];
}

function height(clearance: number | undefined): string {
  if (clearance === undefined) return "not known";
  return clearance <= 0 ? "ground" : formatLength(clearance);
}

/** In words, what a reader must not overlook. Tapes are made to part and are not spoken of. */
export function cameOfIt(one: WhatIfOutcome, outcome: Pick<Outcome, "parts">): string {
  if (!one.ok) return `could not be computed: ${one.problem ?? "no reason given"}`;
  const gone = new Set(one.broke.flatMap(({ part }) => nameOf(part, outcome) ?? []));
  const said = [...gone].map((name) => `${lower(name)} gives way`);
  if (one.groundSpeed !== undefined) said.push(`the walker reaches the ground at ${formatSpeed(one.groundSpeed)}`);
  else if (one.feetClearance !== undefined && one.feetClearance <= 0) said.push("the feet reach the ground");
  if (!one.caught) said.push("not caught");
  return said.length === 0 ? "caught" : said.join(", ");
}

/** Undefined for a tape, which is no part of the outcome. */
function nameOf(id: string, outcome: Pick<Outcome, "parts">): string | undefined {
  return outcome.parts.find((part) => part.id === id)?.name ?? (id.startsWith("connection.") ? undefined : id);
}

const MOST_PLOTS = 6;

/** Forces over time in the what-ifs that govern. Empty without traces. */
export function plots(outcome: Outcome): Html {
  const nearest = [...outcome.parts].sort((a, b) => a.margin - b.margin);
  const governing = [...new Set(nearest.map((part) => part.whatIf))].slice(0, MOST_PLOTS);
  const figures = governing.flatMap((index) => {
    const { trace, title } = outcome.whatIfs[index]!;
    return trace ? [tag("figure", [forcePlot(trace, `Forces over time: ${title}`), tag("figcaption", title)])] : [];
  });
  return tag("div", figures, { class: "plots" });
}
