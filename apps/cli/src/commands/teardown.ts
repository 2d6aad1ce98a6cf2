/** `teardown`: the pieces to cut out of a line that comes down, and the gain of their results. */

import { teardownSheet } from "@secondline/report";
import type { FactValue, Rig } from "@secondline/rig";
import {
  DEFAULT_LOAD_SHARE,
  DEFAULT_PULLS,
  nothingHangs,
  OUTCOMES,
  planTeardown,
  readDate,
  readResults,
  type Teardown,
  type TeardownIssue,
  type TeardownLearnt,
  teardownLearnt,
  teardownLog,
} from "@secondline/strength";
import { listed, quantity, englishWords as words } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { tellNote } from "@secondline/words/notes";
import { englishTeardownWords as teardownWords } from "@secondline/words/teardown";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { logFaults } from "../breakLogFile.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { LARGEST_BYTES, readText } from "../input.ts";
import { jsonText } from "../jsonText.ts";
import { checkOutFile, type OutFile, writeOutFile } from "../outFile.ts";
import { readRigFile } from "../rigFile.ts";
import { table } from "../table.ts";
import { bold, dim, message, print, width } from "../terminal.ts";
import { readWearFile } from "../wearFile.ts";
import { bullets, wrap, wrapHanging } from "../wrap.ts";

const { say } = teardownWords;

export interface TeardownOptions extends Pick<AssessmentOptions, "tests"> {
  readonly wear: string;
  readonly on: string;
  readonly pulls?: string;
  readonly sheet?: string;
  readonly log?: string;
  readonly force?: boolean;
  readonly results?: string;
  readonly share?: string;
  readonly json?: boolean;
}

export function teardown(file: string, options: TeardownOptions): void {
  if (options.results !== undefined) learnt(file, options.results, options);
  else plan(file, options);
}

/** More pulls than anybody has in a day, and more than a line has room for. */
const MOST_PULLS = 60;

function plan(file: string, options: TeardownOptions): void {
  if (options.share !== undefined) throw refuse("--share", say("teardown.fault.shareAlone"));
  const pulls = pullsOf(options.pulls);
  const inputs = [file, options.wear, options.tests].filter((input) => input !== undefined);
  const outFile = (name: string | undefined, others: readonly string[]): OutFile | undefined =>
    name === undefined ? undefined : checkOutFile(name, options.force === true, [...inputs, ...others]);
  const sheet = outFile(options.sheet, []);
  const log = outFile(options.log, []);
  if (sheet !== undefined && sheet.path === log?.path) throw refuse("--log", say("teardown.fault.sameFile"));
  const { rig, record, tests } = readGiven(file, options);
  const reading = planTeardown({ rig, record, on: options.on, tests, pulls });
  if (!reading.ok) throw notHanging(rig, options, reading.issue);
  const found = reading.teardown;
  print(options.json ? planJson(rig, found) : planText(rig, found));
  if (sheet !== undefined) {
    writeOutFile(sheet, teardownSheet(rig, found));
    message(say("teardown.written", { file: sheet.name }));
  }
  if (log !== undefined) {
    writeOutFile(log, teardownLog(found));
    message(say("teardown.logWritten", { file: log.name }));
  }
}

const refuse = (option: string, why: string) => new CommandFailure(EXIT.input, [`${option}: ${why}`]);

/** The rig is taken as written; the plan works out the state of the day. A line that is down already is reported first. */
function readGiven(file: string, options: TeardownOptions) {
  const [rig, record] = [readRigFile(file), readWearFile(options.wear)];
  const issue = readDate(options.on) === undefined ? undefined : nothingHangs(rig, record, options.on);
  if (issue?.webbings.some(({ since }) => since !== undefined)) throw notHanging(rig, options, issue);
  const { assessment } = readAssessment(file, options);
  return { rig, record, tests: assessment.tests ?? [] };
}

function notHanging(rig: Rig, { wear, on }: TeardownOptions, issue: TeardownIssue): CommandFailure {
  const [head, ...lines] = teardownWords.teardownIssue(rig, on, issue);
  return new CommandFailure(EXIT.input, [`${wear}: ${head}`, ...lines.map((line) => `  ${line}`)]);
}

function pullsOf(text: string | undefined): number {
  if (text === undefined) return DEFAULT_PULLS;
  const value = /^\d{1,4}$/.test(text) ? Number(text) : 0;
  if (value >= 1 && value <= MOST_PULLS) return value;
  throw refuse("--pulls", say("teardown.fault.pulls", { got: text.slice(0, 40), most: MOST_PULLS }));
}

function planJson(rig: Rig, found: Teardown): string {
  const pieces = found.pieces.map((piece) => ({ ...piece, words: teardownWords.teardownPiece(rig, found, piece) }));
  return jsonText({ ...found, pieces, cautions: words.generalCautions() });
}

function planText(rig: Rig, found: Teardown): string {
  const { pieces, pulls, on, bands, notes, invented } = found;
  const wanted = teardownWords.teardownWanted(rig, found);
  const cannot = teardownWords.teardownCannot(rig, found);
  return [
    bold(say("teardown.title", { name: rig.name, on: dayText(on), pieces: pieces.length, pulls })),
    ...(invented ? [wrap(say("teardown.invented"), width)] : []),
    ...bullets(
      bands.map((band) => teardownWords.teardownBand(rig, band)),
      width,
    ),
    "",
    ...(pieces.length === 0 ? [say("teardown.none")] : pieceLines(rig, found)),
    "",
    ...(wanted === undefined ? [] : [wrap(wanted, width), ""]),
    ...(cannot.length === 0 ? [] : [`${say("teardown.cannotHead")}:`, ...bullets(cannot, width), ""]),
    ...(notes.length === 0 ? [] : [`${say("head.notes")}:`, ...bullets(notes.map(tellNote), width), ""]),
    `${say("teardown.section.assumed")}:`,
    ...bullets(teardownWords.teardownAssumed(found), width),
    "",
    ...bullets(words.generalCautions(), width),
  ].join("\n");
}

function pieceLines(rig: Rig, found: Teardown): string[] {
  return found.pieces.flatMap((piece) => {
    const { id, what, where, state, teaches } = teardownWords.teardownPiece(rig, found, piece);
    const indent = " ".repeat(5);
    return [
      `${id.padEnd(5)}${wrapHanging(`${what}: ${where}`, width, indent)}`,
      dim(`${indent}${wrapHanging(`${state === "" ? "" : `${state}. `}${teaches}`, width, indent)}`),
    ];
  });
}

function learnt(file: string, results: string, options: TeardownOptions): void {
  const plans = ["pulls", "sheet", "log"] as const;
  const planned = plans.find((name) => options[name] !== undefined);
  if (planned !== undefined) throw refuse(`--${planned}`, say("teardown.fault.together", { option: `--${planned}` }));
  const share = shareOf(options.share);
  const { rig, record, tests } = readGiven(file, options);
  const reading = readResults(readText(results, LARGEST_BYTES.breakLog));
  if (!reading.ok) throw isWithoutRows(reading.faults) ? noRows(results) : logFaults(results, reading.faults);
  const found = teardownLearnt({ rig, record, on: options.on, before: tests, results: reading.tests, share });
  if (found.counted === 0) {
    const materials = listed(found.materials);
    throw new CommandFailure(EXIT.input, [
      `${results}: ${say("teardown.fault.noneCounts", { count: found.results, materials })}`,
    ]);
  }
  print(options.json ? jsonText({ ...found, empty: reading.empty }) : learntText(rig, found, reading.empty));
}

/** A log without a row that was filled in. */
const isWithoutRows = (faults: readonly { readonly got: FactValue }[]) =>
  faults.length === 1 &&
  faults.some(({ got }) => typeof got === "object" && "code" in got && got.code === "got.headerOnly");

const noRows = (file: string) =>
  new CommandFailure(EXIT.input, [`${file}: ${say("teardown.fault.noRows", { outcomes: listed(OUTCOMES) })}`]);

function shareOf(text: string | undefined): number {
  if (text === undefined) return DEFAULT_LOAD_SHARE;
  const value = /^\d{1,2}(\.\d{1,3})?( ?%)?$/.test(text) ? Number.parseFloat(text) : 0;
  if (value >= 10 && value <= 95) return value / 100;
  throw refuse("--share", say("teardown.fault.share", { got: text.slice(0, 40) }));
}

function learntText(rig: Rig, found: TeardownLearnt, empty: number): string {
  const { on, counted, results, contradictions, invented, share } = found;
  return [
    bold(say("teardown.learnt.title", { name: rig.name, on: dayText(on) })),
    ...(invented ? [wrap(say("teardown.invented"), width)] : []),
    wrap(say("teardown.learnt.counted", { counted, results }), width),
    ...(empty > 0 ? [wrap(say("teardown.learnt.empty", { count: empty }), width)] : []),
    "",
    ...(contradictions.length === 0
      ? [say("teardown.learnt.agrees")]
      : bullets(
          contradictions.map((one) => `! ${teardownWords.contradiction(one)}`),
          width,
        )),
    "",
    factorTable(found),
    "",
    partTable(rig, found),
    dim(wrap(say("teardown.learnt.nextCaption", { on: dayText(on), share: quantity.percent(share) }), width)),
    "",
    ...bullets(words.generalCautions(), width),
  ].join("\n");
}

function factorTable({ factors }: TeardownLearnt): string {
  const rows = factors.map((one) => {
    const { what, tests, before, after } = teardownWords.factorLearnt(one);
    return [what, tests, before, after];
  });
  const columns = [
    { head: say("teardown.learnt.factor"), flexible: true },
    { head: say("teardown.learnt.tests"), align: "right" as const },
    { head: say("teardown.learnt.before"), align: "right" as const },
    { head: say("teardown.learnt.after"), align: "right" as const },
  ];
  return table(columns, rows, width);
}

function partTable(rig: Rig, found: TeardownLearnt): string {
  const rows = found.parts.map((one) => {
    const { part, before, after, change, until, daysBefore, daysAfter } = teardownWords.partLearnt(rig, one, found);
    return [part, before, after, change, until, daysBefore, daysAfter];
  });
  const columns = [
    { head: say("teardown.learnt.part", { on: dayText(found.on) }), flexible: true },
    ...(["held", "holds", "change", "until", "daysBefore", "daysAfter"] as const).map((name) => ({
      head: say(`teardown.learnt.${name}`),
      align: "right" as const,
    })),
  ];
  return table(columns, rows, width);
}
