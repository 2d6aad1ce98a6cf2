/** `check`: load and strength of every part of a rig, and the verdict. */
import type { Rig } from "@secondline/rig";
import type { Accuracy, Outcome } from "@secondline/scenarios";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { checkText } from "../checkText.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { failedRuns, outcomeData } from "../outcomeData.ts";
import { computedOutlook } from "../outlook.ts";
import { say } from "../say.ts";
import { runStudy } from "../study.ts";
import { message, print } from "../terminal.ts";
import { checkWhatIfs, readWhatIf } from "../whatIfOption.ts";
import { readWhole } from "../wholeNumber.ts";

/** The set alone takes about fifty, and a search that asks for more than a day's runs was mistyped. */
const FEWEST_RUNS = 100;
const MOST_RUNS = 100_000;

export interface CheckOptions extends AssessmentOptions, ComputingOptions {
  readonly json?: boolean;
  readonly require?: boolean;
  readonly whatIf: readonly string[];
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  readonly runs?: string;
  readonly all?: boolean;
  readonly why?: boolean;
  readonly singles?: boolean;
}

export async function check(file: string, options: CheckOptions): Promise<void> {
  if (options.require) refusePartial(options);
  const whatIfs = options.whatIf.map(readWhatIf);
  const runs = readWhole("--runs", options.runs, FEWEST_RUNS, MOST_RUNS);
  const computing = readComputing(options);
  const read = readAssessment(file, options);
  const { rig } = read.assessed;
  checkWhatIfs(rig, whatIfs);
  const search = {
    accuracy: options.accuracy,
    size: options.set,
    ...(whatIfs.length > 0 ? { whatIfs } : {}),
    ...(options.estimate ? { estimate: true } : {}),
    ...(runs === undefined ? {} : { runs }),
  };
  const found = await runStudy(read.assessed, search, computing);
  const { outcome } = found;
  const outlook = computedOutlook(read, found);
  const { all = false, why = false, singles = false } = options;
  print(
    options.json
      ? jsonText(outcomeData(rig, outcome, outlook))
      : checkText(rig, outcome, { all, why, singles, outlook }),
  );
  setExitCode(rig, outcome, options.require === true);
}

/** A question about the whole rig is not answered from a part of the search. */
function refusePartial({ whatIf, set, accuracy }: CheckOptions): void {
  const why = [
    ...(whatIf.length > 0 ? [say("refused.chosen")] : []),
    ...(set === "quick" ? [say("refused.quickSet")] : []),
    ...(accuracy === "quick" ? [say("refused.quickMesh")] : []),
  ];
  if (why.length > 0) throw new CommandFailure(EXIT.input, why);
}

function setExitCode(rig: Rig, outcome: Outcome, required: boolean): void {
  const failed = failedRuns(rig, outcome);
  for (const line of failed) message(line);
  if (failed.length > 0) process.exitCode = EXIT.audit;
  else if (required && outcome.verdict !== "holds") process.exitCode = EXIT.required;
}
