/** `report`: a page to print and file with the rig. */

import { inspectedIn, report as reportHtml } from "@secondline/report";
import {
  type Accuracy,
  type Assessed,
  type Chances,
  noChances,
  type Outcome,
  type WhatIf,
  worstWhatIf,
} from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import type { Computing } from "../computing.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { EXIT } from "../failure.ts";
import { failedRuns } from "../outcomeData.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { outlookOf } from "../outlook.ts";
import { say } from "../say.ts";
import { runChances, runStudy } from "../study.ts";
import { message } from "../terminal.ts";

export interface ReportOptions extends AssessmentOptions, ComputingOptions {
  readonly out: string;
  readonly force?: boolean;
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  readonly chances?: boolean;
}

export async function report(file: string, options: ReportOptions): Promise<void> {
  const inputs = [file, options.wear, options.tests].filter((input) => input !== undefined);
  const out = checkOutFile(options.out, options.force === true, inputs);
  const computing = readComputing(options);
  const read = readAssessment(file, options);
  const { assessed } = read;
  const search = { accuracy: options.accuracy, size: options.set, traces: true };
  const found = await runStudy(assessed, { ...search, ...(options.estimate ? { estimate: true } : {}) }, computing);
  const { outcome } = found;
  const outlook = outlookOf(read, found);
  const chances = options.chances ? await chancesOf(assessed, outcome, computing) : [];
  const date = new Date().toISOString().slice(0, 10);
  const { rig, wear, on } = read.assessment;
  const inspected = wear && on !== undefined ? inspectedIn(wear, rig, on) : [];
  writeOutFile(out, reportHtml(assessed, outcome, { date, chances, inspected, ...(outlook ? { outlook } : {}) }));
  message(words.verdict(assessed.rig, outcome));
  message(say("report.written", { file: options.out }));
  if (failedRuns(assessed.rig, outcome).length > 0) process.exitCode = EXIT.audit;
}

/** Of the what-if that the verdict turns on; none where no strength helps. */
async function chancesOf(assessed: Assessed, outcome: Outcome, computing: Computing): Promise<readonly Chances[]> {
  const worst = worstWhatIf(outcome)?.whatIf;
  if (!worst) {
    message(say("report.noRunForChances"));
    return [];
  }
  // Chances are worked out until the first part fails: of one that gives way, those of the event in which it does.
  const whatIf: WhatIf = worst.kind === "givesWay" ? worst.during : worst;
  const why = noChances(assessed, whatIf);
  if (!why) return [await runChances(assessed, { whatIf }, computing)];
  message(say("report.noChances", { why: chanceWords.noChances(assessed.rig, why) }));
  return [];
}
