/** Until when a rig may stay up, and for how many falls a card may count: what takes longer than a frame. Plain, for any thread. */
import type { Rig } from "@secondline/rig";
import {
  type Assessed,
  type Assessment,
  type CardTerms,
  cardTerms,
  type EventRuns,
  type Outlook,
  type OutlookQuestion,
  rigOnLaterDays,
  type SearchResult,
  takeDownDates,
} from "@secondline/scenarios";
import { type BreakTest, readWearRecord } from "@secondline/strength";
import type { WrittenRecord } from "../documents/documents.ts";

export interface TakeDownInput {
  /** The rig as its own file has it. */
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

/** How long the rig keeps with the walker of a search that was asked for a card. */
export type CardDates = CardTerms & { readonly outlook: Outlook };

/** What is asked of a rig with its record for a card, of what a search found: plain, for another thread. */
export function cardInput(
  { rig, on }: Pick<Assessment, "rig"> & { readonly on: string },
  record: WrittenRecord,
  assessed: Assessed,
  { demands: events, outcome }: SearchResult,
): TakeDownInput & { readonly assessed: Assessed } {
  return { rig, record, on, tests: assessed.tests, events, whole: outcome.search.complete, assessed };
}

/** Throws where the record has faults. */
export const takeDownOutlook = (input: TakeDownInput): Outlook => takeDownDates(questionOf(input));

/** Throws where the record has faults. */
export const cardDates = ({ assessed, ...input }: TakeDownInput & { readonly assessed: Assessed }): CardDates =>
  cardTerms(assessed, questionOf(input));

function questionOf({ rig, record, on, ...rest }: TakeDownInput): OutlookQuestion {
  const read = readWearRecord(record);
  if (!read.ok) throw new Error(`The record has faults: ${JSON.stringify(read.issues[0])}`);
  return { on, rigOn: rigOnLaterDays({ rig, wear: read.record, on })!, ...rest };
}
