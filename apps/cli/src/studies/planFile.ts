/** Reads a plan with the rigs that it names, and puts all of them through their checks. */
import { dirname, resolve } from "node:path";
import { checkTexts, readRig } from "@secondline/rig";
import {
  casesOf,
  MOST_CASES,
  type PlannedRig,
  type PlanRuns,
  planned,
  readKnob,
  readPlan,
  whatIfKey,
} from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { changeText, saySweep, sweepWords } from "@secondline/words/sweep";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "../failure.ts";
import { faults, inBroughtWords, LARGEST_BYTES, readJsonFile, readText } from "../input.ts";

/** Most runs of a study [-]. */
const MOST_RUNS = 10_000_000;
const MOST_LINES = 20;

const refuse = (lines: readonly string[]): CommandFailure => new CommandFailure(EXIT.input, lines.slice(0, MOST_LINES));

export function readPlanFile(file: string): PlanRuns {
  const { document, issues } = readJsonFile(file, LARGEST_BYTES.rig);
  const texts = checkTexts(document, sayFiles("noun.plan"));
  const before = [...issues, ...texts.issues];
  if (texts.bottomless || before.length > 0) throw faults(file, { issues: before });
  const reading = readPlan(document);
  if (!reading.ok) throw faults(file, { issues: reading.issues.map(inBroughtWords) });
  const { plan } = reading;
  const rigs = plan.rigs.map((name) => plannedRig(resolve(dirname(file), name), name, plan));
  const wrong = rigs.flatMap(({ wrong }) => wrong);
  if (wrong.length > 0) throw refuse(wrong);
  const all = rigs.map(({ planned: one }) => one);
  const cases = casesOf(plan, all);
  const events = typeof plan.whatIfs === "string" ? 1 : plan.whatIfs.length;
  const least = cases * events * plan.draws;
  if (least > MOST_RUNS)
    throw refuse([saySweep("study.tooMany", { file, runs: quantity.local(least.toPrecision(2)), most: MOST_RUNS })]);
  if (cases > MOST_CASES) throw refuse([saySweep("study.tooManyCases", { file, cases, most: MOST_CASES })]);
  const found = planned(plan, all);
  if (!found.ok) {
    throw refuse(
      found.issues.map(
        (one) =>
          `${one.file}: ${saySweep("bad.point", { change: changeText(one.change), message: tellFault(one.issue.message) })}`,
      ),
    );
  }
  const { runs } = found;
  if (runs.count > MOST_RUNS) {
    throw refuse([
      saySweep("study.tooMany", { file, runs: quantity.local(runs.count.toPrecision(2)), most: MOST_RUNS }),
    ]);
  }
  const { nowhere } = runs;
  if (nowhere.length > 0 && runs.count > 0)
    throw refuse(nowhere.map((event) => saySweep("study.nowhere", { file, event: whatIfKey(event) })));
  if (runs.count === 0) throw refuse([saySweep("study.noRuns", { file })]);
  return runs;
}

function plannedRig(
  path: string,
  name: string,
  plan: PlanRuns["plan"],
): { readonly planned: PlannedRig; readonly wrong: readonly string[] } {
  const reading = readRig(readText(path, LARGEST_BYTES.rig));
  if (!reading.ok) throw faults(path, reading);
  const { rig, document } = reading;
  const read = plan.sweeps.map(({ over }) =>
    over.map((text) => readKnob(text, { rig, document, dated: plan.on !== undefined })),
  );
  const wrong = read.flat().flatMap((one) => (one.ok ? [] : [`${name}: ${sweepWords.fault(one.fault, "over")}`]));
  return {
    planned: { file: name, document, sweeps: read.map((knobs) => knobs.flatMap((one) => (one.ok ? [one.knob] : []))) },
    wrong,
  };
}
