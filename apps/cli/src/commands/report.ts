/** `report`: a page to print and file with the rig. */
import type { Rig } from "@secondline/rig";
import {
  type Accuracy,
  type BreakTest,
  type Chances,
  governingWhatIf,
  noChances,
  type Outcome,
  report as reportHtml,
} from "@secondline/scenarios";
import { EXIT } from "../failure.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { outlook, outlookText } from "../outlook.ts";
import { type RigOptions, readKnownRig } from "../rigFile.ts";
import { runChances, runStudy } from "../study.ts";
import { message } from "../terminal.ts";

export interface ReportOptions extends RigOptions {
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
  const { rig, notes, breakTests, rigOn } = await readKnownRig(file, options);
  const outcome = await runStudy(rig, {
    accuracy: options.accuracy,
    size: options.set,
    traces: true,
    ...(options.estimate ? { estimate: true } : {}),
    ...(breakTests.length > 0 ? { breakTests } : {}),
  });
  const later = rigOn && options.on ? outlookText(outlook(outcome, { rigOn, breakTests }, options.on)) : [];
  const chances = options.chances ? await chancesOf(rig, outcome, breakTests) : [];
  const date = new Date().toISOString().slice(0, 10);
  const html = reportHtml(outcome, {
    rig,
    date,
    notes: [...notes, ...later],
    chances,
    ...(options.on === undefined ? {} : { stateOn: options.on }),
  });
  writeOutFile(out, html);
  message(outcome.sentence);
  message(`Written to ${options.out}.`);
  if (outcome.incomplete.length > 0) process.exitCode = EXIT.audit;
}

/** Of the what-if in which the first to fail has its least margin; none where no strength helps. */
async function chancesOf(rig: Rig, outcome: Outcome, breakTests: readonly BreakTest[]): Promise<readonly Chances[]> {
  const whatIf = governingWhatIf(outcome);
  const nothing = noChances(rig, whatIf);
  if (nothing === undefined) return [await runChances(rig, { whatIf, breakTests })];
  message(`No chances in the report: ${nothing}`);
  return [];
}
