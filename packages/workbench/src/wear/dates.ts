/** Until when a rig may stay up, and for how many falls a card may count: what takes longer than a frame. Plain, for any thread. */
import type { Rig } from "@secondline/rig";
import {
  type Assessed,
  type CardTerms,
  cardUntil,
  type EventRuns,
  fallsLeft,
  type Outlook,
  rigOnLaterDays,
  takeDownDates,
} from "@secondline/scenarios";
import { type BreakTest, readWearRecord } from "@secondline/strength";
import type { WrittenRecord } from "../documents/documents.ts";

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

/** How long the rig keeps with the walker of a search that was asked for a card. */
export type CardDates = CardTerms & { readonly outlook: Outlook };

/** Throws where the record has faults. */
export const takeDown = (input: TakeDownInput): Outlook => outlookOf(input, laterRigs(input));

/** Throws where the record has faults. */
export function cardDates({ assessed, ...input }: TakeDownInput & { readonly assessed: Assessed }): CardDates {
  const rigOn = laterRigs(input);
  const outlook = outlookOf(input, rigOn);
  const until = cardUntil(assessed, outlook);
  const { on, tests, events, whole } = input;
  const left = until && whole ? fallsLeft({ on, until: until.day, rigOn, tests, events }) : undefined;
  return { outlook, ...(left === undefined ? {} : { fallsLeft: left }) };
}

type RigOn = NonNullable<ReturnType<typeof rigOnLaterDays>>;

function laterRigs({ rig, record, on }: TakeDownInput): RigOn {
  const read = readWearRecord(record);
  if (!read.ok) throw new Error(`The record has faults: ${read.issues[0]?.message}`);
  return rigOnLaterDays({ rig, wear: read.record, on })!;
}

const outlookOf = ({ on, tests, events, whole }: TakeDownInput, rigOn: RigOn) =>
  takeDownDates({ on, rigOn, tests, events, whole });
