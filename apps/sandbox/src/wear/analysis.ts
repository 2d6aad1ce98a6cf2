/** What takes longer than a frame, as it is asked for and answered across the threads. */
import type { Plot } from "@secondline/figures";
import type { Rig } from "@secondline/rig";
import type { Assessed, EventRuns, Outlook } from "@secondline/scenarios";
import type { BreakLogReport, BreakTest } from "@secondline/strength";
import type { WrittenRecord } from "@secondline/workbench";

export interface TakeDownInput {
  /** As its own file has it. */
  readonly rig: Rig;
  readonly record: WrittenRecord;
  readonly on: string;
  /** Own break tests that count in the verdict; empty for none. */
  readonly tests: readonly BreakTest[];
  /** The runs that the verdict rests on. */
  readonly events: readonly EventRuns[];
  /** Whether the verdict is of the whole search. */
  readonly whole: boolean;
}

export interface LogFindings {
  readonly report: BreakLogReport;
  /** Fit of every group, then residuals and retention of every stock. */
  readonly plots: readonly Plot[];
}

/** Until when the rig may stay up, and falls left until the last day on which a site card could count; absent: not known. */
export interface CardDates {
  readonly outlook: Outlook;
  readonly fallsLeft?: number;
}

export interface Analysis {
  breakLog(tests: readonly BreakTest[]): LogFindings;
  takeDown(input: TakeDownInput): Outlook;
  card(input: TakeDownInput & { readonly assessed: Assessed }): CardDates;
}
