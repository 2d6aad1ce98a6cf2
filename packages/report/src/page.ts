/** What every section of the report is made from. */
import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook } from "@secondline/scenarios";
import type { Words } from "@secondline/words";
import type { ChanceWords } from "@secondline/words/chances";
import type { LaterSay } from "@secondline/words/later";

/** A page is put together when it is asked for: it may say every sentence. */
export type PageWords = Words & ChanceWords & { readonly say: LaterSay };

export interface ReportPage {
  readonly words: PageWords;
  readonly rig: Rig;
  readonly outcome: Outcome;
  readonly outlook?: Outlook;
}
