/** Reads the plan of a study: which rigs, over which ranges, in which what-ifs, with how many draws. Every fault at once. */

import type { Accuracy } from "@secondline/engine";
import { isGroup } from "@secondline/rig";
import { parseWhatIf, type WhatIf, whatIfKey } from "../events/registry.ts";

export const PLAN_FORMAT = "study/1";

export interface PlanSweep {
  /** Ranges as `sweep --over` takes them: one or two. */
  readonly over: readonly string[];
  readonly points: number;
}

export interface StudyPlan {
  readonly name: string;
  /** Files, from the folder of the plan. */
  readonly rigs: readonly string[];
  /** None: every rig as it stands. */
  readonly sweeps: readonly PlanSweep[];
  /** Named one by one, or a set of the rig. */
  readonly whatIfs: readonly WhatIf[] | "quick" | "full";
  readonly draws: number;
  readonly accuracy: Accuracy;
  readonly seed?: number;
  /** The day that counts, YYYY-MM-DD. */
  readonly on?: string;
}

export interface PlanFault {
  readonly path: string;
  readonly got: string;
  readonly expected: string;
}

export type PlanReading =
  | { readonly ok: true; readonly plan: StudyPlan }
  | { readonly ok: false; readonly issues: readonly PlanFault[] };

const MOST_RIGS = 1000;
const MOST_POINTS = 1000;
const MOST_DRAWS = 1_000_000;
const ACCURACIES = ["quick", "standard", "fine"] as const;
const KEYS = ["secondline", "name", "notes", "rigs", "sweeps", "whatIfs", "draws", "accuracy", "seed", "on"];

export function readPlan(document: unknown): PlanReading {
  const issues: PlanFault[] = [];
  const fault = (path: string, got: unknown, expected: string) => {
    issues.push({ path, got: shown(got), expected });
  };
  if (!isGroup(document)) {
    fault("", document, `a group of named values with "secondline": "${PLAN_FORMAT}"`);
    return { ok: false, issues };
  }
  const of = (key: string) => (Object.hasOwn(document, key) ? document[key] : undefined);
  if (of("secondline") !== PLAN_FORMAT) fault("secondline", of("secondline"), `"${PLAN_FORMAT}"`);
  for (const key of Object.keys(document)) if (!KEYS.includes(key)) fault(key, key, `one of ${KEYS.join(", ")}`);
  const whole = (path: string, value: unknown, least: number, most: number): number => {
    if (typeof value === "number" && Number.isInteger(value) && value >= least && value <= most) return value;
    fault(path, value, `a whole number from ${least} to ${most}`);
    return least;
  };
  const texts = (path: string, value: unknown, least: number, most: number, what: string): readonly string[] => {
    if (!Array.isArray(value) || value.length < least || value.length > most) {
      fault(path, value, `a list of ${least} to ${most} ${what}`);
      return [];
    }
    value.forEach((one, i) => {
      if (typeof one !== "string" || one === "") fault(`${path}[${i}]`, one, what);
    });
    return value.filter((one): one is string => typeof one === "string");
  };
  const rigs = texts("rigs", of("rigs"), 1, MOST_RIGS, "names of rig files");
  rigs.forEach((one, i) => {
    if (rigs.indexOf(one) < i) fault(`rigs[${i}]`, one, "every rig file once");
  });
  const sweeps = (Array.isArray(of("sweeps")) ? (of("sweeps") as unknown[]) : []).map((one, i): PlanSweep => {
    const path = `sweeps[${i}]`;
    if (!isGroup(one)) {
      fault(path, one, 'a group such as { "over": ["backup.slack=2%..14%"], "points": 7 }');
      return { over: [], points: 2 };
    }
    for (const key of Object.keys(one))
      if (key !== "over" && key !== "points") fault(`${path}.${key}`, key, "over or points");
    return {
      over: texts(`${path}.over`, one.over, 1, 2, "ranges such as backup.slack=2%..14%"),
      points: whole(`${path}.points`, one.points, 2, MOST_POINTS),
    };
  });
  if (of("sweeps") !== undefined && !Array.isArray(of("sweeps"))) fault("sweeps", of("sweeps"), "a list of sweeps");
  const whatIfs = readWhatIfs(of("whatIfs"), texts, fault);
  const draws = whole("draws", of("draws"), 1, MOST_DRAWS);
  const accuracy = (of("accuracy") ?? "standard") as Accuracy;
  if (!ACCURACIES.includes(accuracy)) fault("accuracy", accuracy, ACCURACIES.join(", "));
  const seed = of("seed") === undefined ? undefined : whole("seed", of("seed"), 0, 2 ** 31 - 1);
  const [name, on] = [of("name") ?? "", of("on")];
  if (typeof name !== "string" || name.length > 200) fault("name", name, "a text of at most 200 characters");
  if (on !== undefined && typeof on !== "string") fault("on", on, "a day, YYYY-MM-DD");
  if (issues.length > 0) return { ok: false, issues };
  return {
    ok: true,
    plan: {
      name: name as string,
      rigs,
      sweeps,
      whatIfs,
      draws,
      accuracy,
      ...(seed === undefined ? {} : { seed }),
      ...(on === undefined ? {} : { on: on as string }),
    },
  };
}

function readWhatIfs(
  value: unknown,
  texts: (path: string, value: unknown, least: number, most: number, what: string) => readonly string[],
  fault: (path: string, got: unknown, expected: string) => void,
): StudyPlan["whatIfs"] {
  if (value === "quick" || value === "full") return value;
  if (!Array.isArray(value)) {
    fault("whatIfs", value, '"quick", "full" or a list of what-ifs such as ["fall@0.5", "fails@0,hanging@0.25"]');
    return [];
  }
  const seen = new Set<string>();
  return texts("whatIfs", value, 1, 1000, "what-ifs such as fall@0.5").flatMap((text, i) => {
    const found = parseWhatIf(text);
    if (!found) fault(`whatIfs[${i}]`, text, "a what-if such as fall@0.5 or fails@0,hanging@0.25");
    // Its draws would be the same once more, and count twice.
    else if (seen.has(whatIfKey(found))) fault(`whatIfs[${i}]`, text, "every what-if once");
    if (found) seen.add(whatIfKey(found));
    return found ?? [];
  });
}

const LONGEST_QUOTE = 60;
function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  const text = JSON.stringify(value);
  return text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;
}
