/** The plan of a teardown and what its results taught, as they are asked for and answered across the threads. */
import type { Rig } from "@secondline/rig";
import {
  type BreakTest,
  planTeardown,
  readWearRecord,
  type TeardownLearnt,
  type TeardownReading,
  teardownLearnt,
  type WearRecord,
} from "@secondline/strength";

export interface PlanInput {
  readonly rig: Rig;
  /** As written. */
  readonly record: unknown;
  readonly on: string;
  readonly pulls: number;
  /** Own break tests that were known before the teardown. */
  readonly tests: readonly BreakTest[];
}

/** Plain, so that it is tested without a thread. */
export function plan({ record, ...input }: PlanInput): TeardownReading {
  return planTeardown({ ...input, record: readOrThrow(record) });
}

export interface LearntInput extends Pick<PlanInput, "rig" | "record" | "on"> {
  readonly before: readonly BreakTest[];
  readonly results: readonly BreakTest[];
}

export function learnt({ record, ...input }: LearntInput): TeardownLearnt {
  return teardownLearnt({ ...input, record: readOrThrow(record) });
}

function readOrThrow(record: unknown): WearRecord {
  const read = readWearRecord(record);
  if (!read.ok) throw new Error(`the record has faults: ${JSON.stringify(read.issues[0])}`);
  return read.record;
}

export interface Planner {
  plan: typeof plan;
  learnt: typeof learnt;
}
