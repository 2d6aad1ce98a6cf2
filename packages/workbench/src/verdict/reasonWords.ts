/** Why a part's margin is what it is, and where the pull on the person is hardest, in sentences. */
import {
  type ClassOutcome,
  EVENT_CLASSES,
  type Outcome,
  type PartOutcome,
  type PersonMargin,
  PULL_LIMITS,
  type Rig,
  type WhatIf,
} from "@secondline/scenarios";
import { capital, quantity, weakness, englishWords as words } from "@secondline/words";
import { tellNote } from "@secondline/words/notes";
import { sayVerdict } from "@secondline/words/page/verdict";

export interface MarginTold {
  readonly name: string;
  readonly sentence: string;
  /** On middle values, with the what-if that it is of. */
  readonly middle: { readonly sentence: string; readonly whatIf: WhatIf } | undefined;
}

/** Margin, load and event, once for each class of events that loads the part. */
export const marginsTold = (part: PartOutcome, rig: Rig, outcome: Outcome): readonly MarginTold[] =>
  EVENT_CLASSES.flatMap((name) => {
    const one = part.byClass[name];
    if (!one) return [];
    const event = outcome.whatIfs[one.whatIf];
    const middle = event && {
      whatIf: event.whatIf,
      sentence: sayVerdict("reasons.middleValues", {
        eventTitle: words.eventTitle(rig, event.whatIf),
        margin: quantity.margin(one.strength / one.load),
      }),
    };
    return [{ name: capital(words.className(name)), sentence: marginSentence(one), middle }];
  });

function marginSentence(one: ClassOutcome): string {
  const margin = sayVerdict("reasons.marginOf", {
    margin: quantity.margin(one.margin),
    required: quantity.required(one.required),
    strength: quantity.strength(one.strength5),
    demand: quantity.load(one.demand),
    band: words.say("table.band", {
      low: quantity.strength(one.demandInterval[0]),
      high: quantity.load(one.demandInterval[1]),
    }),
    runs: one.runs,
  });
  const place =
    one.at !== undefined && one.reason
      ? sayVerdict("reasons.weakPlace", { reason: weakness(one.reason), along: quantity.along(one.at) })
      : "";
  return `${margin}${place}.`;
}

/** For every limit of the pull on a person: whether the pull passes it, and its basis. */
export const limitsTold = ({ demand }: PersonMargin) =>
  PULL_LIMITS.map(({ limit, basis }) => ({
    basis,
    sentence:
      demand > limit
        ? words.say("person.above", { limit: quantity.load(limit), note: tellNote(basis.note) })
        : `${quantity.load(limit)}: ${tellNote(basis.note)}`,
  }));
