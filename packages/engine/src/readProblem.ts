/**
 * Checks a problem file as it was read from JSON: every fault at once, each with its path, what was got and what was expected.
 * Nothing is guessed or clamped; unknown keys are refused.
 */
import { MOST_BRANCHES } from "./lineLayout.ts";
import type { Problem } from "./problem.ts";
import type { ProblemIssue } from "./recording.ts";
import { legImbalance } from "./statics/legs.ts";
import { strainAt, tensionCurve } from "./tensionCurve.ts";

export type ProblemReading =
  | { readonly ok: true; readonly problem: Problem }
  | { readonly ok: false; readonly issues: readonly ProblemIssue[] };

/** Reads a problem; a value of any shape may be given. */
export function readProblem(input: unknown): ProblemReading {
  const issues: ProblemIssue[] = [];
  const check = new Checker(issues);
  checkProblem(check, input);
  if (issues.length === 0) checkTogether(check, input as Problem);
  return issues.length === 0 ? { ok: true, problem: input as Problem } : { ok: false, issues };
}

type Fields = Readonly<Record<string, unknown>>;
type Rule = (check: Checker, path: string, value: unknown) => void;

class Checker {
  readonly issues: ProblemIssue[];
  constructor(issues: ProblemIssue[]) {
    this.issues = issues;
  }
  fault(path: string, got: unknown, expected: string): void {
    this.issues.push({ path: path === "" ? "(file)" : path, got: show(got), expected });
  }

  /** An object with these keys; a key ending in "?" may be missing. Returns it, or undefined. */
  object(path: string, value: unknown, rules: Readonly<Record<string, Rule>>): void {
    if (typeof value !== "object" || value === null || Array.isArray(value)) {
      this.fault(path, value, "an object");
      return;
    }
    const fields = value as Fields;
    const known = Object.keys(rules).map((key) => key.replace(/\?$/, ""));
    for (const key of Object.keys(fields)) {
      if (!known.includes(key))
        this.fault(join(path, key), fields[key], `no such key here; known are ${known.join(", ")}`);
    }
    for (const [marked, rule] of Object.entries(rules)) {
      const key = marked.replace(/\?$/, "");
      if (fields[key] === undefined) {
        if (marked === key) this.fault(join(path, key), undefined, "a value; it is missing");
      } else rule(this, join(path, key), fields[key]);
    }
  }

  list(path: string, value: unknown, rule: Rule, least = 0, most = 1000): void {
    if (!Array.isArray(value) || value.length < least || value.length > most) {
      this.fault(path, value, `a list of ${least} to ${most} entries`);
      return;
    }
    for (const [k, entry] of value.entries()) rule(this, `${path}[${k}]`, entry);
  }
}

const join = (path: string, key: string): string => (path === "" ? key : `${path}.${key}`);

function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "number") return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** A finite number within bounds; `above` excludes its bound. */
function number(what: string, bounds: { above?: number; from?: number; to?: number } = {}): Rule {
  return (check, path, value) => {
    const ok =
      typeof value === "number" &&
      Number.isFinite(value) &&
      value > (bounds.above ?? Number.NEGATIVE_INFINITY) &&
      value >= (bounds.from ?? Number.NEGATIVE_INFINITY) &&
      value <= (bounds.to ?? Number.POSITIVE_INFINITY);
    if (!ok) check.fault(path, value, what);
  };
}
const text: Rule = (check, path, value) => {
  if (typeof value !== "string" || value === "") check.fault(path, value, "a text");
};
const oneOf =
  (...choices: string[]): Rule =>
  (check, path, value) => {
    if (!choices.includes(value as string))
      check.fault(path, value, choices.map((choice) => `"${choice}"`).join(" or "));
  };
const length = number("a length above 0, in metres", { above: 0, to: 1e5 });
const strength = number("a strength above 0, in newtons", { above: 0 });
const fraction = number("a fraction of the line's natural length, 0 to 1", { from: 0, to: 1 });
const inner = number("a fraction of the line's natural length between 0 and 1, ends excluded", {
  above: 0,
  to: 1 - 1e-9,
});
const stiffness = number("a stiffness above 0, in N/m", { above: 0 });
const time = number("a time of 0 or more, in seconds", { from: 0 });

const curve: Rule = (check, path, value) => {
  const before = check.issues.length;
  check.list(
    path,
    value,
    (c, at, point) => {
      if (!Array.isArray(point) || point.length !== 2 || !point.every(Number.isFinite))
        c.fault(at, point, "a pair [strain, tension in newtons]");
    },
    2,
    200,
  );
  if (check.issues.length > before) return;
  const points = value as [number, number][];
  if (points[0]![0] !== 0 || points[0]![1] !== 0)
    check.fault(`${path}[0]`, points[0], "[0, 0]: a slack line carries nothing");
  for (let k = 1; k < points.length; k++) {
    if (points[k]![0] <= points[k - 1]![0])
      check.fault(`${path}[${k}]`, points[k], "a larger strain than the point before");
    if (points[k]![1] < points[k - 1]![1])
      check.fault(`${path}[${k}]`, points[k], "a tension not below the point before: a curve may not fall");
  }
  const last = points.length - 1;
  if (check.issues.length === before && points[last]![1] <= points[last - 1]![1]) {
    check.fault(
      `${path}[${last}]`,
      points[last],
      "a tension above the point before: the curve goes on straight from here",
    );
  }
};

const branch: Rule = (check, path, value) => {
  if (!Array.isArray(value) || value.length !== 2) {
    check.fault(path, value, "a pair [stiffness in newtons, time in seconds]");
    return;
  }
  number("a branch stiffness above 0, in newtons", { above: 0 })(check, `${path}[0]`, value[0]);
  number("a relaxation time above 0, in seconds", { above: 0 })(check, `${path}[1]`, value[1]);
};

const material: Rule = (check, path, value) =>
  check.object(path, value, {
    mass: number("a mass above 0, in kg per metre", { above: 0, to: 100 }),
    curve,
    branches: (c, at, list) => c.list(at, list, branch, 0, MOST_BRANCHES),
  });

const lineRules: Readonly<Record<string, Rule>> = {
  "material?": material,
  "sections?": (check, path, value) =>
    check.list(path, value, (c, at, section) => c.object(at, section, { to: fraction, material }), 1),
  "strength?": strength,
  "weakZones?": (check, path, value) =>
    check.list(path, value, (c, at, zone) => c.object(at, zone, { from: fraction, to: fraction, strength })),
  "width?": length,
  "dragCoefficient?": number("a drag coefficient of 0 or more", { from: 0, to: 10 }),
};

const joints: Rule = (check, path, value) =>
  check.list(path, value, (c, at, joint) => c.object(at, joint, { at: inner, "strength?": strength }), 0, 200);

const anchor: Rule = (check, path, value) =>
  check.object(path, value, {
    "stiffness?": stiffness,
    "mass?": number("a mass above 0, in kg", { above: 0 }),
    "legs?": (c, at, list) =>
      c.list(
        at,
        list,
        (d, place, leg) => d.object(place, leg, { rock: position, stiffness, "strength?": strength }),
        1,
        12,
      ),
  });
const position: Rule = (check, path, value) => {
  if (
    !Array.isArray(value) ||
    value.length !== 3 ||
    !value.every(Number.isFinite) ||
    Math.hypot(...(value as number[])) < 0.01
  ) {
    check.fault(path, value, "a place [x, y, z] in metres, at least 1 cm from the master point");
  }
};

function checkProblem(check: Checker, input: unknown): void {
  check.object("", input, {
    name: text,
    span: length,
    rise: number("a height difference in metres", { from: -1e4, to: 1e4 }),
    main: (c, at, value) =>
      c.object(at, value, {
        pretension: number("a tension above 0, in newtons", { above: 0 }),
        ...lineRules,
        "slip?": (d, place, slip) => d.object(place, slip, { "A?": strength, "B?": strength }),
      }),
    "backup?": (c, at, value) =>
      c.object(at, value, {
        slack: number("a slack of 0 or more, as a share of the chord: a backup may not be shorter than the span", {
          from: 0,
          to: 3,
        }),
        ...lineRules,
        "connections?": joints,
        "tapes?": joints,
      }),
    leash: (c, at, value) => c.object(at, value, { length, material, "strength?": strength }),
    ring: (c, at, value) =>
      c.object(at, value, {
        mass: number("a mass above 0, in kg", { above: 0 }),
        clearance: number("a clearance of 0 or more, in metres", { from: 0, to: 1 }),
        friction: number("a friction coefficient from 0 to 2", { from: 0, to: 2 }),
        "strength?": strength,
      }),
    walker: (c, at, value) =>
      c.object(at, value, {
        mass: number("a mass above 0, in kg", { above: 0, to: 1000 }),
        at: inner,
        tieIn: number("a height in metres", { from: -5, to: 5 }),
        lateral: number("a sideways offset in metres", { from: -5, to: 5 }),
        "dragArea?": number("a drag area of 0 or more, in m²", { from: 0, to: 10 }),
      }),
    start: oneOf("standing", "hanging"),
    "letGo?": time,
    "cut?": (c, at, value) => c.object(at, value, { at: fraction, time }),
    "anchors?": (c, at, value) => c.object(at, value, { "A?": anchor, "B?": anchor }),
    "legFailure?": (c, at, value) =>
      c.object(at, value, {
        anchor: oneOf("A", "B"),
        leg: number("the number of a leg, from 0", { from: 0, to: 11 }),
        time,
      }),
    "airDensity?": number("an air density of 0 or more, in kg/m³", { from: 0, to: 2 }),
    "ground?": (c, at, value) =>
      c.list(
        at,
        value,
        (d, place, point) => {
          if (!Array.isArray(point) || point.length !== 2 || !point.every(Number.isFinite))
            d.fault(place, point, "a pair [x, z] in metres");
        },
        2,
        10_000,
      ),
    duration: number("a duration above 0 and up to 120, in seconds", { above: 0, to: 120 }),
  });
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
}

/** Element size that the limit reckons with, the fine mesh's [m], and what a recording of it may take: elements × seconds. */
const FINEST = 0.25;
const MOST_ELEMENT_SECONDS = 1_000_000;

function checkSize(check: Checker, { span, rise, backup, duration }: Problem): void {
  const chord = Math.hypot(span, rise);
  const length = chord * (backup ? 2 + backup.slack : 1);
  const elements = Math.ceil(length / FINEST);
  if (elements * duration <= MOST_ELEMENT_SECONDS) return;
  const longest = (MOST_ELEMENT_SECONDS / duration) * FINEST;
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
  const weight = problem.walker.mass * 9.80665;
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
