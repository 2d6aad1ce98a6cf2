/** The inputs of every section of the report. */
import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook } from "@secondline/scenarios";
import type { Words } from "@secondline/words";
import type { ChanceWords } from "@secondline/words/chances";
import type { LaterSay } from "@secondline/words/later";

/** A page is made only when it is asked for, so it may use every sentence. */
export type PageWords = Words & ChanceWords & { readonly say: LaterSay };

export interface ReportPage {
  readonly words: PageWords;
  readonly rig: Rig;
  readonly outcome: Outcome;
  readonly outlook?: Outlook;
}
