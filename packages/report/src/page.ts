/** What every section of the report is made from. */
import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook } from "@secondline/scenarios";
import type { Words } from "@secondline/words";

export interface Page {
  readonly words: Words;
  readonly rig: Rig;
  readonly outcome: Outcome;
  readonly outlook?: Outlook;
}
