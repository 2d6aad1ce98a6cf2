/** The answer in a few lines, for the terminal and the report. */

import type { Rig } from "@secondline/rig";
import { groundEvent, LIKELY_FIRST_BASIS, type Outcome, type Outlook, PULL_LIMITS } from "@secondline/scenarios";
import { chance } from "./chanceNumbers.ts";
import { dayText } from "./dates.ts";
import { type Language, sayIn } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { listed } from "./lists.ts";
import { tellBasis } from "./noteWords.ts";
import { lowered, partName, partTitle } from "./partNames.ts";
import { eventTitle } from "./phrases.ts";
import { drop, height, limit as limitText, load, margin, required, strength } from "./quantity.ts";
import { basisText, blankTexts } from "./tableWords.ts";
import { untilSentence } from "./untilWords.ts";
import { valueNames } from "./valueNames.ts";
import { governingOf } from "./verdictWords.ts";

export interface NamedValue {
  readonly name: string;
  readonly value: string;
}

/**
 * Drop, height left, pull on the person, the part with the least share of its required margin, parts without a second, blanks,
 * date.
 */
export function facts(language: Language, rig: Rig, outcome: Outcome, outlook?: Outlook): readonly NamedValue[] {
  const say = sayLaterIn(language);
  const blanks = blankTexts(language, rig, outcome);
  return [
    ...dropFact(language, rig, outcome),
    { name: say("fact.feet"), value: feetFact(language, rig, outcome) },
    ...pullFact(language, rig, outcome),
    { name: say("fact.weakest"), value: weakestFact(language, rig, outcome) },
    { name: say("fact.single"), value: singlesList(language, rig, outcome) },
    blanks.length === 0
      ? { name: say("fact.nothingBlank"), value: say("fact.noBlanks") }
      : { name: say("fact.blanks"), value: listed(blanks, "semicolon") },
    ...(outlook ? [{ name: say("fact.until"), value: untilSentence(language, rig, outlook, outcome) }] : []),
  ];
}

/** Values that nobody has confirmed, and the day of the state, for readers of the first page alone. */
export function recordFacts(language: Language, rig: Rig, { cautions, taken }: Outcome): readonly NamedValue[] {
  const say = sayLaterIn(language);
  const paths = cautions.flatMap((one) => (one.kind === "unconfirmed" ? one.paths : []));
  const { wear, on } = taken;
  const dated =
    on !== undefined && say(wear ? "fact.recordOn" : "fact.recordDay", { on: dayText(on), name: wear?.name ?? "" });
  return [
    {
      name: say("fact.unconfirmed"),
      value: paths.length === 0 ? say("fact.noUnconfirmed") : valueNames(sayIn(language), rig, paths),
    },
    { name: say("fact.record"), value: dated || say("fact.noRecord") },
  ];
}

const eventOf = (language: Language, rig: Rig, { whatIfs }: Outcome, index: number): string =>
  lowered(eventTitle(language, rig, whatIfs[index]!.whatIf));

function dropFact(language: Language, rig: Rig, outcome: Outcome): NamedValue[] {
  const { deepest } = outcome.falls;
  if (!deepest) return [];
  const say = sayLaterIn(language);
  const event = eventOf(language, rig, outcome, deepest.whatIf);
  return [{ name: say("fact.drop"), value: say("fact.inEvent", { value: drop(deepest.drop), event }) }];
}

function feetFact(language: Language, rig: Rig, outcome: Outcome): string {
  const say = sayLaterIn(language);
  const { leastFeet, onGround } = outcome.falls;
  const ground = groundEvent(onGround, leastFeet?.whatIf);
  if (leastFeet && leastFeet.height > 0 && ground === undefined) {
    const event = eventOf(language, rig, outcome, leastFeet.whatIf);
    return say("fact.inEvent", { value: height(leastFeet.height), event });
  }
  const index = ground ?? leastFeet?.whatIf;
  if (index === undefined) return say("fact.noGround");
  return say("fact.onGround", { event: eventOf(language, rig, outcome, index) });
}

function pullFact(language: Language, rig: Rig, outcome: Outcome): NamedValue[] {
  const { person } = outcome;
  if (!person) return [];
  const say = sayLaterIn(language);
  const passed = person.passes.at(-1);
  const { limit, basis } = passed ?? PULL_LIMITS[0]!;
  const passes = say(passed ? "person.above" : "person.belowAll", {
    limit: limitText(limit),
    note: tellBasis(basis.note),
  });
  const event = eventOf(language, rig, outcome, person.event);
  const value = say("fact.pullValue", { demand: load(person.demand), passes, event });
  return [{ name: say("fact.pull"), value }];
}

function weakestFact(language: Language, rig: Rig, outcome: Outcome): string {
  const say = sayLaterIn(language);
  const part = outcome.parts.find(({ id }) => id === outcome.leastMargin);
  const worst = part && governingOf(part);
  if (!worst) return say("fact.noLoad");
  return say("fact.weakestValue", {
    part: partTitle(say, rig, part),
    strength: strength(worst.strength5),
    demand: load(worst.demand),
    margin: margin(worst.margin),
    required: required(worst.required),
    class: say(`class.${part.governing!}`),
    event: eventOf(language, rig, outcome, worst.whatIf),
  });
}

function singlesList(language: Language, rig: Rig, { singles }: Outcome): string {
  const say = sayLaterIn(language);
  const parts = singles.filter(({ single }) => single).map(({ part }) => partName(say, rig, part));
  return parts.length === 0 ? say("single.none") : listed(parts, "semicolon");
}

const MOST_NAMED_PARTS = 3;

/** The parts likeliest to fail first when strengths and loads scatter; undefined if none was told apart. */
export function likelyText(language: Language, rig: Rig, { likelyFirst }: Outcome): string | undefined {
  const say = sayLaterIn(language);
  const parts = (likelyFirst?.parts ?? [])
    .slice(0, MOST_NAMED_PARTS)
    .map(({ id, first }) =>
      say("likely.part", { part: lowered(partName(say, rig, id)), chance: chance(say, first.value) }),
    );
  if (parts.length === 0) return undefined;
  return say("likely.list", { parts: listed(parts, "semicolon"), basis: basisText(language, LIKELY_FIRST_BASIS) });
}
