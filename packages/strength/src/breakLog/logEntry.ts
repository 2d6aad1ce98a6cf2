/** One result from the test machine. */

import type { FactValue, KnotKind } from "@secondline/rig";
import type { Observation } from "@secondline/statistics";
import type { LogFact } from "./logFacts.ts";

export interface BreakTest {
  /** Line of the file it came from, the header being line 1; absent for one typed into a form. */
  readonly line?: number;
  /** Calendar date, YYYY-MM-DD. */
  readonly date?: string;
  /** The kind of sample: webbing, leash, sewn loop … */
  readonly part: string;
  readonly material: string;
  readonly batch?: string;
  /** State of the sample in the user's words: new, fall zone, clamp mark … */
  readonly state: string;
  readonly wet: boolean;
  /** Where the sample was taken from. */
  readonly takenFrom?: string;
  readonly monthsOutside?: number;
  /** Sun taken, in months of full sun in an average month. A used sample counts for a stock only if this is given [-]. */
  readonly sunMonths?: number;
  readonly falls?: number;
  /** Months in a clamp, for a sample with a clamp mark; if absent, the months outside count [-]. */
  readonly clampedMonths?: number;
  /** Months that stitching has been outside; if absent, the months of the sample outside count [-]. */
  readonly sewnMonths?: number;
  /** Knot in which the sample was pulled. */
  readonly knot?: KnotKind;
  /** How the test ended, as written. */
  readonly outcome: OutcomeWord;
  /** The strength, or the bound of it, that follows from `outcome` [N]. */
  readonly result: Observation;
  readonly failureMode?: string;
  readonly failurePlace?: string;
  readonly note?: string;
  /** The log says that its tests are made up. Every number that rests on them must say so too. */
  readonly invented?: true;
}

/** A fault in a break log: its place, the value found, the value expected. */
export interface LogFault {
  /** Line in the file, the header being line 1. */
  readonly line: number;
  readonly column: string;
  readonly got: FactValue;
  readonly expected: FactValue;
  readonly message: LogFact;
}

/** How a test ended, as written in the column `outcome`. */
export const OUTCOMES = ["broke", "stopped", "broke elsewhere", "broke below", "broke between"] as const;
export type OutcomeWord = (typeof OUTCOMES)[number];

/** Knots as they are written in the column `knot`. */
export const KNOT_KINDS: readonly KnotKind[] = [
  "figureEight",
  "barrel",
  "bowline",
  "overhand",
  "butterfly",
  "doubleFisherman",
  "waterKnot",
  "unknown",
];

/** Columns of a break log, in the order they are written. */
export const LOG_COLUMNS = [
  "date",
  "part",
  "material",
  "batch",
  "state",
  "wet",
  "taken_from",
  "months_outside",
  "sun_months",
  "falls",
  "clamped_months",
  "sewn_months",
  "knot",
  "outcome",
  "result",
  "result_to",
  "unit",
  "failure_mode",
  "failure_place",
  "note",
] as const;
export type LogColumn = (typeof LOG_COLUMNS)[number];
export const REQUIRED_COLUMNS: readonly LogColumn[] = ["part", "material", "state", "wet", "outcome", "result", "unit"];
