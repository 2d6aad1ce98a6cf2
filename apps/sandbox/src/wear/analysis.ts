/** What takes longer than a frame, as it is asked for and answered across the threads. */
import type { Rig } from "@secondline/rig";
import type { BreakLogReport, BreakTest, TakeDown } from "@secondline/strength";
import type { WrittenRecord } from "./work.ts";

export interface TakeDownInput {
  readonly rig: Rig;
  readonly record: WrittenRecord;
  readonly on: string;
  readonly loads: Readonly<Record<string, number>>;
  readonly requiredFactor: number;
  readonly confidences: readonly number[];
  /** Own break tests in place of published factors; empty for none. */
  readonly tests: readonly BreakTest[];
}

export interface Analysis {
  breakLog(tests: readonly BreakTest[]): BreakLogReport;
  /** One per confidence. */
  takeDowns(input: TakeDownInput): readonly TakeDown[];
}
