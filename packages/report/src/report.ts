/**
 * The report: one self-contained page to print on A4 and file with the rig. Its first page is enough for an answer: the
 * verdict, the inputs taken into account, and the few numbers that decide. Pure: the same input gives the same text. Every
 * sentence and every number comes from the words package.
 */
import {
  type Assessed,
  type CautionFact,
  type Chances,
  type Outcome,
  type Outlook,
  VERSION,
} from "@secondline/scenarios";
import { createWords, english, type Language, lowered } from "@secondline/words";
import { createChanceWords } from "@secondline/words/chances";
import { sayLaterIn } from "@secondline/words/later";
import { tellNote } from "@secondline/words/notes";
import { meshText } from "@secondline/words/rig";
import { chancesSection } from "./chancesSection.ts";
import { factsSection } from "./factsSection.ts";
import { escapeHtml, type Html, listOf, tag } from "./html.ts";
import type { PageWords } from "./page.ts";
import { partsTable, strengthSection } from "./partsSection.ts";
import { figure, rigSection } from "./rigSection.ts";
import { type Inspected, signedSection } from "./signedSection.ts";
import { followSection, singlesSection } from "./singlesSection.ts";
import { styleOf } from "./style.ts";
import { type ReportedSweep, sweepSection } from "./sweepSection.ts";
import { verdictLine } from "./verdictLine.ts";
import { plots, whatIfTable } from "./whatIfSection.ts";

export interface ReportExtras {
  /** The time of making, as text to print; the report itself has no clock. */
  readonly date: string;
  /** The take-down date of the rig, if a day was given. */
  readonly outlook?: Outlook;
  /** Chances of what-ifs, if they were worked out. */
  readonly chances?: readonly Chances[];
  /** Sweeps of numbers of this rig, if they were asked for. */
  readonly sweeps?: readonly ReportedSweep[];
  /** Inspections in the record. */
  readonly inspected?: readonly Inspected[];
  /** Our typefaces as style rules with their data in them; without them the page takes installed ones. */
  readonly faces?: string;
  readonly language?: Language;
}

/**
 * The whole page as HTML that needs nothing else.
 *
 * `assessed`: the result of `assess` or `assessRig` from which the outcome was worked out. Give an outcome with traces for the
 * force plots. Everything that comes from a document is escaped.
 */
export function report(assessed: Assessed, outcome: Outcome, extras: ReportExtras): string {
  const { rig } = assessed;
  const { date, outlook, chances = [], sweeps = [], inspected = [], faces = "", language = english } = extras;
  const words: PageWords = {
    ...createWords(language),
    ...createChanceWords(language),
    say: sayLaterIn(language),
  };
  const { say } = words;
  const page = { words, rig, outcome, ...(outlook ? { outlook } : {}) };
  const body: readonly Html[] = [
    tag("h1", outcome.rigName),
    tag("p", say("report.made", { date, version: VERSION, mesh: lowered(meshText(language, outcome.accuracy)) }), {
      class: "soft",
    }),
    verdictLine(page),
    ...factsSection(page),
    figure(page),
    tag("section", [tag("p", say("report.moreCautions")), listOf(words.cautions(rig, firstCautions(outcome)))], {
      class: "cautions",
    }),
    ...section(say("head.notes"), outcome.notes.map(tellNote)),
    tag("h2", say("head.parts")),
    ...partsTable(page),
    ...followSection(page),
    tag("h2", say("head.governing")),
    plots(page),
    tag("h2", say("head.whatIfs")),
    whatIfTable(page),
    ...singlesSection(page),
    ...chancesSection(page, chances),
    ...sweepSection(page, sweeps),
    ...rigSection(page),
    ...strengthSection(page),
    tag("section", [tag("h2", say("head.cautions")), listOf(words.cautions(rig, outcome.cautions))], {
      class: "cautions all",
    }),
    ...signedSection(page, inspected),
    tag("footer", [
      tag("p", [say("report.hash"), tag("code", outcome.hash)]),
      tag("p", say("report.footer", { version: VERSION })),
    ]),
  ];
  const foot = say("report.foot", { name: outcome.rigName, date, hash: outcome.hash.slice(0, 16) });
  const title = escapeHtml(say("report.title", { name: outcome.rigName }));
  return `<!doctype html>\n<html lang="${escapeHtml(language.code)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title><style>${faces}${styleOf(foot, say("report.pageOf", { page: "{page}", pages: "{pages}" }))}</style></head>\n<body><main>${body.map((one) => one.html).join("\n")}</main></body></html>\n`;
}

/** Cautions that the first page must have. */
const FIRST_PAGE_CAUTIONS: readonly CautionFact["kind"][] = [
  "general",
  "unconfirmed",
  "judged",
  "failedRuns",
  "partial",
  "coarse",
  "noBackup",
  "noGround",
  "invented",
];
const firstCautions = ({ cautions }: Outcome) => cautions.filter(({ kind }) => FIRST_PAGE_CAUTIONS.includes(kind));

const section = (head: string, items: readonly string[]): readonly Html[] =>
  items.length === 0 ? [] : [tag("h2", head), listOf(items)];
