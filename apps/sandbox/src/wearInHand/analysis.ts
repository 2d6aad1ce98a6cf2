/** What takes longer than a frame, as it is asked for and answered across the threads. */
import type { Plot } from "@secondline/figures";
import type { BreakLogReport, BreakTest } from "@secondline/strength";
import type { cardDates, takeDownOutlook } from "@secondline/workbench";

export interface LogFindings {
  readonly report: BreakLogReport;
  /** Fit of every group, then residuals and retention of every stock. */
  readonly plots: readonly Plot[];
}

export interface Analysis {
  breakLog(tests: readonly BreakTest[]): LogFindings;
  takeDown: typeof takeDownOutlook;
  card: typeof cardDates;
}
