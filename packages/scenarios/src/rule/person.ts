/** The pull on the person, against limits of its own: a body is no part that one tests to failure. */
import type { Basis } from "@secondline/rig";
import { type EventLevel, type EventRuns, levelsOf, measuredRuns } from "./demand.ts";

export interface PullLimit {
  /** [N] */
  readonly limit: number;
  readonly basis: Basis;
}

/** Limits of the pull, the gentlest first. A rig should keep the first limit and must not pass the last. */
export const PULL_LIMITS: readonly PullLimit[] = [
  {
    limit: 6000,
    basis: { kind: "published", note: "EN 355:2002: most that an energy absorber may let through, 100 kg" },
  },
  {
    limit: 8000,
    basis: { kind: "published", note: "OSHA 29 CFR 1926.502(d)(16): most that may act on a body in a full harness" },
  },
  {
    limit: 12000,
    basis: { kind: "from memory", note: "limit taken for a short pull on a body in UIAA and EN standards for ropes" },
  },
];

export interface PersonMargin {
  /** E of the pull in the worst event, and its 95 % interval [N]; `pull` is the largest seen. */
  readonly demand: number;
  readonly low: number;
  readonly high: number;
  readonly pull: number;
  /** The pulls of the runs behind it in rising order [N], and whether something was drawn in these. */
  readonly loads: readonly number[];
  readonly drawn: boolean;
  readonly event: number;
  /** The limits that E passes. */
  readonly passes: readonly PullLimit[];
  readonly grade: "fails" | "thin" | "keeps";
}

export const pullLevels = (events: readonly EventRuns[]): readonly EventLevel[] =>
  levelsOf(measuredRuns(events, (run) => run.peaks.leash));

const passed = (pull: number) => PULL_LIMITS.filter(({ limit }) => pull > limit);

/** What a pull on a body is by the limits [N]. */
export function gradeOfPull(pull: number): PersonMargin["grade"] {
  const passes = passed(pull).length;
  return passes === PULL_LIMITS.length ? "fails" : passes > 0 ? "thin" : "keeps";
}

/** Undefined without a run. */
export function personMargin(events: readonly EventRuns[]): PersonMargin | undefined {
  if (events.length === 0) return undefined;
  const { level, values, drawn, of } = pullLevels(events).reduce((a, b) => (b.level.rank > a.level.rank ? b : a));
  const { value: demand, low, high } = level;
  const loads = [...values].sort((a, b) => a - b);
  const grade = gradeOfPull(demand);
  return { demand, low, high, pull: loads.at(-1)!, loads, drawn, event: of.index, passes: passed(demand), grade };
}
