/** `check`: what every part of a rig carries and holds, and the verdict. */
import type { Accuracy, Outcome } from "@secondline/scenarios";
import { EXIT } from "../failure.ts";
import { outcomeText } from "../outcomeText.ts";
import { outlook } from "../outlook.ts";
import { type RigOptions, readKnownRig } from "../rigFile.ts";
import { runStudy } from "../study.ts";
import { message, print } from "../terminal.ts";
import { readWhatIf } from "../whatIfOption.ts";

export interface CheckOptions extends RigOptions {
  readonly json?: boolean;
  readonly require?: boolean;
  readonly whatIf: readonly string[];
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  readonly all?: boolean;
}

export async function check(file: string, options: CheckOptions): Promise<void> {
  const whatIfs = options.whatIf.map(readWhatIf);
  const { rig, notes, breakTests, rigOn } = await readKnownRig(file, options);
  const outcome = await runStudy(rig, {
    accuracy: options.accuracy,
    size: options.set,
    ...(whatIfs.length > 0 ? { whatIfs } : {}),
    ...(options.estimate ? { estimate: true } : {}),
    ...(breakTests.length > 0 ? { breakTests } : {}),
  });
  const later = rigOn && options.on ? { outlook: outlook(outcome, { rigOn, breakTests }, options.on) } : {};
  print(
    options.json
      ? JSON.stringify({ ...outcome, ...(notes.length > 0 ? { notes } : {}), ...later }, null, 2)
      : outcomeText(rig, outcome, { all: options.all === true, notes, ...later }),
  );
  leave(outcome, options.require === true);
}

function leave(outcome: Outcome, required: boolean): void {
  if (outcome.incomplete.length > 0) {
    for (const i of outcome.incomplete) message(`${outcome.whatIfs[i]!.title}: ${outcome.whatIfs[i]!.problem}`);
    process.exitCode = EXIT.audit;
  } else if (required && outcome.verdict !== "holds") {
    process.exitCode = EXIT.required;
  }
}
