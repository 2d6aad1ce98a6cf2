/**
 * Checks a problem file as it was read from JSON: every fault at once, each with its path, what was got and what was expected.
 * Nothing is guessed or clamped; unknown keys are refused.
 */

import { GRAVITY } from "../constants.ts";
import { strainAt, tensionCurve } from "../line/tensionCurve.ts";
import { hypot } from "../portable/index.ts";
import type { Problem } from "../problem.ts";
import type { ProblemIssue } from "../record/recording.ts";
import { legImbalance } from "../rigging/legs.ts";
import { Checker } from "./checker.ts";
import { limitIssues } from "./limits.ts";
import { checkFields } from "./problemRules.ts";

/** A checked problem, or every fault of one with its place. */
export type ProblemReading =
  | { readonly ok: true; readonly problem: Problem }
  | { readonly ok: false; readonly issues: readonly ProblemIssue[] };

/** Reads a problem; a value of any shape may be given. */
export function readProblem(input: unknown): ProblemReading {
  const issues: ProblemIssue[] = [];
  const check = new Checker(issues);
  checkFields(check, input);
  if (issues.length === 0) checkTogether(check, input as Problem);
  return issues.length === 0 ? { ok: true, problem: input as Problem } : { ok: false, issues };
}

/** What no single field can tell. */
function checkTogether(check: Checker, problem: Problem): void {
  for (const name of ["main", "backup"] as const) {
    const make = problem[name];
    if (!make) continue;
    if ((make.material === undefined) === (make.sections === undefined)) {
      check.fault(
        name,
        make.material ? "material and sections" : "neither material nor sections",
        "one of material and sections",
      );
    }
    for (const [k, section] of (make.sections ?? []).entries()) {
      const from = k === 0 ? 0 : make.sections![k - 1]!.to;
      if (section.to <= from) check.fault(`${name}.sections[${k}].to`, section.to, "an end beyond the section before");
    }
    if (make.sections && make.sections.at(-1)!.to !== 1) {
      check.fault(
        `${name}.sections[${make.sections.length - 1}].to`,
        make.sections.at(-1)!.to,
        "1: the last section reaches the line's end",
      );
    }
    for (const [k, zone] of (make.weakZones ?? []).entries()) {
      if (zone.to <= zone.from)
        check.fault(`${name}.weakZones[${k}].to`, zone.to, `a place beyond where the zone begins, ${zone.from}`);
    }
  }
  if (check.issues.length > 0) return;
  checkSize(check, problem);
  checkLoads(check, problem);
  checkLegs(check, problem);
  if (check.issues.length === 0) check.issues.push(...limitIssues(problem));
}

/** Element size of the fine mesh, which the limit assumes [m], and the largest recording: elements × seconds. */
const FINEST_ELEMENT_SIZE = 0.2;
const MOST_ELEMENT_SECONDS = 1_000_000;

function checkSize(check: Checker, { span, rise, backup, duration }: Problem): void {
  const chord = hypot(span, rise);
  const length = chord * (backup ? 2 + backup.slack : 1);
  const elements = Math.ceil(length / FINEST_ELEMENT_SIZE);
  if (elements * duration <= MOST_ELEMENT_SECONDS) return;
  const longest = (MOST_ELEMENT_SECONDS / duration) * FINEST_ELEMENT_SIZE;
  check.fault(
    "span",
    `${span} m: ${elements} elements on the fine mesh, for ${duration} s`,
    `lines of ${longest.toFixed(0)} m together at most for this duration: a longer recording does not fit into memory`,
  );
}

function checkLoads(check: Checker, problem: Problem): void {
  const { pretension } = problem.main;
  const weakest = Math.min(
    problem.main.strength ?? Number.POSITIVE_INFINITY,
    ...(problem.main.weakZones ?? []).map((zone) => zone.strength),
  );
  if (pretension >= weakest)
    check.fault("main.pretension", pretension, `less than the line holds where it is weakest, ${weakest} N`);
  for (const { material: make } of problem.main.sections ?? [{ material: problem.main.material! }]) {
    const strain = strainAt(tensionCurve(make.curve), pretension);
    if (strain > 1)
      check.fault("main.pretension", pretension, "a tension the line reaches before it is twice its length");
  }
  const weight = problem.walker.mass * GRAVITY;
  if (problem.start === "hanging" && problem.leash.strength !== undefined && problem.leash.strength <= weight) {
    check.fault("leash.strength", problem.leash.strength, `more than the walker's weight, ${weight.toFixed(0)} N`);
  }
}

function checkLegs(check: Checker, problem: Problem): void {
  for (const end of ["A", "B"] as const) {
    const legs = problem.anchors?.[end]?.legs;
    if (!legs) continue;
    const { unbalanced, pushes } = legImbalance(problem, end);
    if (pushes || unbalanced > 0.05 * problem.main.pretension) {
      check.fault(
        `anchors.${end}.legs`,
        `${legs.length} legs that leave ${unbalanced.toFixed(0)} N unbalanced`,
        "legs that hold the line's pretension by pulling alone",
      );
    }
  }
  const failure = problem.legFailure;
  if (!failure) return;
  const count = problem.anchors?.[failure.anchor]?.legs?.length ?? 0;
  if (!Number.isInteger(failure.leg) || failure.leg >= count)
    check.fault("legFailure.leg", failure.leg, `a leg of anchor ${failure.anchor}, which has ${count}`);
}
