/** What was simulated, and what came of it. */
import { formatForce, formatLength, formatSpeed } from "@secondline/rig";
import type { Outcome, WhatIfOutcome } from "../outcome.ts";
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
    one.feetClearance === undefined ? "not known" : formatLength(one.feetClearance),
  ];
}

/** In words, what a reader must not overlook. */
export function cameOfIt(one: WhatIfOutcome, outcome: Pick<Outcome, "parts">): string {
  if (!one.ok) return `Could not be computed: ${one.problem ?? "no reason given"}`;
  const said = one.broke.map((part) => `${nameOf(part.part, outcome)} gives way`);
  if (one.groundSpeed !== undefined) said.push(`reaches the ground at ${formatSpeed(one.groundSpeed)}`);
  else if (one.feetClearance !== undefined && one.feetClearance <= 0) said.push("the feet reach the ground");
  said.push(one.caught ? "caught" : "not caught");
  return said.join(", ");
}

function nameOf(id: string, outcome: Pick<Outcome, "parts">): string {
  const known = outcome.parts.find((part) => part.id === id)?.name;
  if (known !== undefined) return known;
  return id.startsWith("connection.") ? `tape ${Number(id.slice("connection.".length)) + 1}` : id;
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
