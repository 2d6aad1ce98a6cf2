/** `compare`: two to four layouts side by side. */
import { type Accuracy, compareLayouts, type Outcome } from "@secondline/scenarios";
import { englishCompareWords as compareWords } from "@secondline/words/compare";
import { sayOptions } from "@secondline/words/terminal/options";
import { type AssessmentOptions, type ComparedAssessment, readAssessments } from "../assessment.ts";
import { type Compared, comparisonData, comparisonText } from "../compareText.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { failedRuns } from "../outcomeData.ts";
import { runStudy } from "../study.ts";
import { message, print } from "../terminal.ts";

export interface CompareOptions extends AssessmentOptions, ComputingOptions {
  readonly json?: boolean;
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
}

export async function compare(files: readonly string[], options: CompareOptions): Promise<void> {
  if (files.length < 2 || files.length > 4) {
    throw new CommandFailure(EXIT.input, [sayOptions("compare.count", { count: files.length })]);
  }
  const layouts: Compared[] = [];
  for (const read of readAssessments(files, options)) layouts.push(await studied(read, options));
  const comparison = compareLayouts(layouts.map(({ outcome }) => outcome));
  print(options.json ? jsonText(comparisonData(layouts, comparison)) : comparisonText(layouts, comparison));
  for (const { rig, outcome } of layouts) {
    const count = failedRuns(rig, outcome).length;
    if (count === 0) continue;
    message(compareWords.say("compare.failed", { name: outcome.rigName, count }));
    process.exitCode = EXIT.audit;
  }
}

async function studied({ assessed, withoutWear }: ComparedAssessment, options: CompareOptions): Promise<Compared> {
  const { rig } = assessed;
  const { outcome }: { readonly outcome: Outcome } = await runStudy(
    assessed,
    { accuracy: options.accuracy, size: options.set, ...(options.estimate ? { estimate: true } : {}) },
    { ...readComputing(options), label: `${rig.name}: ` },
  );
  return { rig, outcome, withoutWear };
}
