/** `report`: a page to print and file with the rig. */

import { inspectedIn, type ReportedSweep, report as reportHtml } from "@secondline/report";
import {
  type Accuracy,
  type Assessed,
  type Chances,
  type Knob,
  noChances,
  type Outcome,
  type SweepPoints,
  type SweepWhat,
  sweepPoints,
  type WhatIf,
  worstWhatIf,
} from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { longDay } from "@secondline/words/dates";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import type { Computing } from "../computing.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { EXIT } from "../failure.ts";
import { houseFaces } from "../houseFaces.ts";
import { failedRuns } from "../outcomeData.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { computedOutlook } from "../outlook.ts";
import { say } from "../say.ts";
import { runChances, runStudy } from "../study.ts";
import { documentOf, enough, namedRig, readCounts, readKnobs, readWhat, tried } from "../sweepQuestion.ts";
import { runSweep } from "../sweepRuns.ts";
import { message } from "../terminal.ts";

export interface ReportOptions extends AssessmentOptions, ComputingOptions {
  readonly out: string;
  readonly force?: boolean;
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  readonly chances?: boolean;
  /** Numbers to sweep, as `sweep` takes them. */
  readonly sweep: readonly string[];
  readonly sweepWhat: string;
}

export async function report(file: string, options: ReportOptions): Promise<void> {
  const inputs = [file, options.wear, options.tests].filter((input) => input !== undefined);
  const out = checkOutFile(options.out, options.force === true, inputs);
  const computing = readComputing(options);
  const read = readAssessment(file, options);
  const { assessed } = read;
  // Faults of a question are told before anything is computed.
  const asked = sweepsAsked(file, read, options);
  const search = { accuracy: options.accuracy, size: options.set, traces: true };
  const found = await runStudy(assessed, { ...search, ...(options.estimate ? { estimate: true } : {}) }, computing);
  const { outcome } = found;
  const outlook = computedOutlook(read, found);
  const chances = options.chances ? await chancesOf(assessed, outcome, computing) : [];
  const sweeps: ReportedSweep[] = [];
  for (const one of asked) sweeps.push(await sweptOf(file, assessed, one, options, computing));
  const date = longDay(new Date());
  const { rig, wear, on } = read.assessment;
  const inspected = wear && on !== undefined ? inspectedIn(wear, rig, on) : [];
  const extras = { date, chances, sweeps, inspected, faces: houseFaces(), ...(outlook ? { outlook } : {}) };
  writeOutFile(out, reportHtml(assessed, outcome, extras));
  message(words.verdict(assessed.rig, outcome));
  message(say("report.written", { file: options.out }));
  if (failedRuns(assessed.rig, outcome).length > 0) process.exitCode = EXIT.audit;
}

interface AskedSweep {
  readonly knobs: readonly Knob[];
  readonly points: SweepPoints;
  readonly what: SweepWhat;
}

function sweepsAsked(
  file: string,
  { assessment: { rig, ...known }, assessed }: ReturnType<typeof readAssessment>,
  options: ReportOptions,
): readonly AskedSweep[] {
  if (options.sweep.length === 0) return [];
  const what = readWhat(options.sweepWhat, assessed.rig, "--sweep-what");
  const document = documentOf(file);
  return options.sweep.map((text) => {
    const knobs = readKnobs([text], { rig, document, known }, "--sweep");
    const counts = readCounts(undefined, knobs);
    return { knobs, points: enough(file, sweepPoints({ document, known, knobs, counts })), what };
  });
}

async function sweptOf(
  file: string,
  assessed: Assessed,
  { knobs, points, what }: AskedSweep,
  { accuracy, set }: ReportOptions,
  computing: Computing,
): Promise<ReportedSweep> {
  const swept = await tried(file, what, () => runSweep(points, knobs, { what, accuracy, size: set }, computing));
  return { swept, named: namedRig(points, knobs, assessed) };
}

/** Chances of the what-if that the verdict turns on; none if no strength helps. */
async function chancesOf(assessed: Assessed, outcome: Outcome, computing: Computing): Promise<readonly Chances[]> {
  const worst = worstWhatIf(outcome)?.whatIf;
  if (!worst) {
    message(say("report.noRunForChances"));
    return [];
  }
  // Chances are worked out until the first part fails. For a part that gives way, they are those of the event in which it does.
  const whatIf: WhatIf = worst.kind === "givesWay" ? worst.during : worst;
  const why = noChances(assessed, whatIf);
  if (!why) return [await runChances(assessed, { whatIf }, computing)];
  message(say("report.noChances", { why: chanceWords.noChances(assessed.rig, why) }));
  return [];
}
