/** The report: one self-contained page to print on A4 and file with the rig. Pure: the same input gives the same text. */
import { formatForce, formatLength, type Rig } from "@secondline/rig";
import { inputHash } from "../inputHash.ts";
import type { Outcome } from "../outcome.ts";
import type { Chances } from "../reliability/chancesOutcome.ts";
import { VERSION } from "../version.ts";
import { chancesSection } from "./chancesSection.ts";
import { elevation } from "./elevation.ts";
import { escapeHtml, type Html, raw, tag } from "./html.ts";
import { partsTable, strengthSection, verdictMark } from "./partsSection.ts";
import { rigTable } from "./rigSection.ts";
import { styleOf } from "./style.ts";
import { plots, whatIfTable } from "./whatIfSection.ts";

export interface ReportOptions {
  readonly rig: Rig;
  /** When it was made, as it is to be printed; the report itself knows no clock. */
  readonly date: string;
  /** Date of the state that the rig was brought to by a wear record. */
  readonly stateOn?: string;
  /** What its wear record says must be looked at, and until when it may stay up. */
  readonly notes?: readonly string[];
  /** Chances of what-ifs, where they were worked out. */
  readonly chances?: readonly Chances[];
}

/** The whole page. Give an outcome with traces for the force plots. */
export function report(outcome: Outcome, { rig, date, stateOn, notes = [], chances = [] }: ReportOptions): string {
  const { statics } = outcome;
  const hash = inputHash(rig);
  const body = [
    tag("h1", outcome.rigName),
    tag(
      "p",
      `${stateOn === undefined ? "" : `State of ${stateOn} by its wear record. `}Computed ${date} with Secondline ${VERSION}, ${outcome.accuracy} mesh. A computation, not an approval.`,
      {
        class: "soft",
      },
    ),
    tag("p", [verdictMark(outcome.verdict), raw(" &nbsp;"), outcome.sentence], {
      class: `sentence ${outcome.verdict}`,
    }),
    tag("section", [tag("h2", "Before you rely on this"), list(outcome.cautions)], { class: "cautions" }),
    ...(notes.length > 0 ? [tag("h2", "Its state and outlook"), list(notes)] : []),
    tag("h2", "The rig"),
    tag("figure", [
      elevation(rig, outcome),
      tag("figcaption", "To scale. Full line: main line with the walker standing in the middle. Dashed: backup."),
    ]),
    tag(
      "p",
      `Unloaded: ${formatForce(statics.unloadedTension)} and ${formatLength(statics.unloadedSag)} of sag. Walker standing in the middle: ${formatForce(statics.standingTension)} and ${formatLength(statics.standingSag)}.`,
    ),
    rigTable(rig),
    tag("h2", "Every part"),
    partsTable(outcome),
    tag("h2", "The what-ifs that govern"),
    plots(outcome),
    tag("h2", "Every what-if"),
    whatIfTable(outcome),
    ...chancesSection(chances),
    tag("h2", "What the verdict rests on"),
    tag("p", "The weakest grounds of the parts that are nearest to failing:"),
    list(
      outcome.weakestBases.map((basis) => `${basis.kind}: ${basis.note}`),
      "bases",
    ),
    ...strengthSection(outcome),
    tag("footer", [
      tag("p", ["Input (SHA-256 of the rig in SI units): ", tag("code", hash)]),
      tag(
        "p",
        `Secondline ${VERSION}. Loads: filtered as in SAE J211-1, CFC 60. Numbers have two or three significant digits; that is not their accuracy.`,
      ),
    ]),
  ];
  const foot = `${outcome.rigName} · ${date} · a computation, not an approval · input ${hash.slice(0, 16)}`;
  return `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escapeHtml(outcome.rigName)} – report</title><style>${styleOf(foot)}</style></head>\n<body>${body.map((one) => one.html).join("\n")}</body></html>\n`;
}

const list = (items: readonly string[], kind?: string): Html =>
  tag(
    "ul",
    items.map((item) => tag("li", item)),
    kind === undefined ? {} : { class: kind },
  );
