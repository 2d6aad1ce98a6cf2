/** `sweep`: how a number of the rig moves the governing margin, drop or load, and where it meets a limit. */
import { type Accuracy, type Swept, sweepPoints } from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { changeText } from "@secondline/words/sweep";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { say } from "../say.ts";
import { documentOf, enough, namedRig, readCounts, readKnobs, readLimit, readWhat, tried } from "../sweepQuestion.ts";
import { runSweep } from "../sweepRuns.ts";
import { sweepData, sweepText } from "../sweepText.ts";
import { message, print } from "../terminal.ts";
import { checkWhatIfs, readWhatIf } from "../whatIfOption.ts";

export interface SweepCommandOptions extends AssessmentOptions, ComputingOptions {
  readonly over: readonly string[];
  readonly points?: string;
  readonly what: string;
  readonly limit?: string;
  readonly whatIf: readonly string[];
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly json?: boolean;
  readonly out?: string;
  readonly force?: boolean;
}

export async function sweep(file: string, options: SweepCommandOptions): Promise<void> {
  const whatIfs = options.whatIf.map(readWhatIf);
  const computing = readComputing(options);
  const { assessment, assessed } = readAssessment(file, options);
  const { rig, ...known } = assessment;
  const what = readWhat(options.what, assessed.rig, "--what");
  const limit = options.limit === undefined ? undefined : readLimit(options.limit, what);
  const document = documentOf(file);
  const knobs = readKnobs(options.over, { rig, document, known }, "--over");
  const counts = readCounts(options.points, knobs);
  checkWhatIfs(rig, whatIfs);
  const files = [file, options.wear, options.tests].flatMap((one) => one ?? []);
  const out = options.out === undefined ? undefined : checkOutFile(options.out, options.force === true, files);
  const points = enough(file, sweepPoints({ document, known, knobs, counts }));
  const swept = await tried(file, what, () =>
    runSweep(
      points,
      knobs,
      {
        what,
        accuracy: options.accuracy,
        size: options.set,
        ...(whatIfs.length > 0 ? { whatIfs } : {}),
        ...(limit === undefined ? {} : { limit }),
      },
      computing,
    ),
  );
  const taken = englishWords.taken(assessed.rig, assessed);
  const named = namedRig(points, knobs, assessed);
  const text = options.json ? jsonText(sweepData(named, swept, taken)) : sweepText(named, swept, taken);
  if (out) writeOutFile(out, `${text}\n`);
  else print(text);
  setExitCode(swept);
}

/** A value at which every run failed has no number. */
function setExitCode({ points }: Swept): void {
  const failed = points.filter((one) => one.runs === 0);
  for (const { change } of failed) message(`${changeText(change)}: ${say("trouble.draw")}`);
  if (failed.length > 0) process.exitCode = EXIT.audit;
}
