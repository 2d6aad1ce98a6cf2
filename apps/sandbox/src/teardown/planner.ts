/** The plan of a teardown, as it is asked for and answered across the threads. */
import type { Rig } from "@secondline/rig";
import { type BreakTest, planTeardown, readWearRecord, type TeardownReading } from "@secondline/strength";

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
  const read = readWearRecord(record);
  if (!read.ok) throw new Error(`the record has faults: ${read.issues[0]?.message}`);
  return planTeardown({ ...input, record: read.record });
}

export interface Planner {
  plan: typeof plan;
}
