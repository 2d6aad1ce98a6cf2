/** Words of a sweep, in a file of their own because the first load does not need them. */

import type { Rig } from "@secondline/rig";
import {
  type Crossing,
  type Governing,
  type Knob,
  type KnobFault,
  type KnobRange,
  knobText,
  type LimitFound,
  type SweepLimit,
  type SweepWhat,
  type Swept,
  type Told,
} from "@secondline/scenarios";
import { generalCautions, judgedTexts, unconfirmedTexts } from "./cautionWords.ts";
import { tellFault } from "./faultWords.ts";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { listed } from "./lists.ts";
import { tellBasis } from "./noteWords.ts";
import { lowered, partInSentence, partName } from "./partNames.ts";
import { eventTitle } from "./phrases.ts";
import { drop, height, load, margin, type RoundingSide, required, rounded } from "./quantity.ts";
import { spokenField } from "./spokenFields.ts";
import { SWEEP_ENGLISH, type SweepKey } from "./sweepEnglish.ts";
import { lapseList } from "./verdictWords.ts";

export type SweepWords = ReturnType<typeof createSweepWords>;

export const saySweep = (key: SweepKey, values: Values = {}): string => filled(SWEEP_ENGLISH[key], values);

/** Largest misfit that is not told, in squares [-]. */
const LARGEST_UNTOLD_MISFIT = 3;

export function createSweepWords(language: Language) {
  return {
    say: saySweep,
    /** `option`: the option that the user gave. */
    fault: ({ kind, text, about }: KnobFault, option: string) =>
      saySweep(`fault.${kind}`, { option, text, about: tellFault(about) }),
    what: (rig: Rig, what: SweepWhat) => whatText(language, rig, what),
    head: (rig: Rig, { what, knobs }: Swept) =>
      saySweep("head.over", {
        what: whatText(language, rig, what),
        range: listed(
          knobs.map((knob) =>
            saySweep("range", { name: knob.name, from: knobText(knob, knob.from), to: knobText(knob, knob.to) }),
          ),
        ),
      }),
    value: valueText,
    knobValue,
    /** Undefined if there is none. */
    stretches: (knob: Knob, stretches: readonly KnobRange[]): string | undefined =>
      listed(stretchTexts(knob, stretches).map(({ from, to }) => saySweep("interval", { low: from, high: to }))) ||
      undefined,
    band: (what: SweepWhat, { low, high }: Told) =>
      saySweep("interval", { low: valueText(what, low, "down"), high: valueText(what, high, "up") }),
    governs: (rig: Rig, governing: Governing) => governsText(language, rig, governing),
    /** Events that are worse than any limit, then the values at which limits are met. */
    sentences: (rig: Rig, swept: Swept) => sentencesOf(language, rig, swept),
    limit: (what: SweepWhat, limit: SweepLimit) =>
      saySweep(`region.limit.${limit.kind}`, { limit: limitValue(what, limit) }),
    notes: (rig: Rig, swept: Swept) => noteTexts(language, rig, swept),
    cautions: (rig: Rig, swept: Swept) => [
      saySweep("caution.sweep"),
      ...unconfirmedTexts(sayIn(language), rig),
      ...judgedTexts(sayIn(language), rig, swept.besides.judged),
      ...generalCautions(language),
      ...(swept.invented ? [sayIn(language)("caution.invented")] : []),
    ],
    eventTitle: (rig: Rig, event: Governing["event"]) => eventTitle(language, rig, event),
  };
}

function whatText(language: Language, rig: Rig, what: SweepWhat): string {
  switch (what.kind) {
    case "load":
      return saySweep("what.load", { part: lowered(partName(sayIn(language), rig, what.part)) });
    case "margin":
    case "drop":
    case "height":
      return saySweep(`what.${what.kind}`);
  }
}

/** Rounded to the safe side, or to the side of an interval. */
export function valueText({ kind }: SweepWhat, value: number, side?: RoundingSide): string {
  switch (kind) {
    case "margin":
      return side === undefined ? margin(value) : rounded(value, value < 10 ? 2 : 0, side);
    case "drop":
      return side === undefined ? drop(value) : `${rounded(value, 1, side)} m`;
    case "height":
      return side === undefined ? height(value) : `${rounded(value, 1, side)} m`;
    case "load":
      return side === undefined ? load(value) : `${rounded(value / 1000, Math.abs(value) < 9995 ? 2 : 1, side)} kN`;
  }
}

const governsText = (language: Language, rig: Rig, { part }: Governing): string =>
  part === undefined ? "" : partName(sayIn(language), rig, part);

function limitValue({ kind }: SweepWhat, { value }: SweepLimit): string {
  switch (kind) {
    case "margin":
      return required(value);
    case "drop":
    case "height":
      return `${required(value)} m`;
    case "load":
      return `${required(value / 1000)} kN`;
  }
}

function sentencesOf(language: Language, rig: Rig, swept: Swept): readonly string[] {
  const warned = isWarned(swept);
  return [
    ...warningsOf(language, rig, swept),
    ...swept.limits.map((one) => limitText(language, rig, swept, one, warned)),
  ];
}

/** An event is worse than any limit, so a kept limit is no good news. */
export const isWarned = ({ points, besides }: Pick<Swept, "points" | "besides">): boolean =>
  points.some(({ lost, ground }) => lost > 0 || ground > 0) || besides.withheld.length > 0 || besides.lapses.length > 0;

/**
 * Events that a kept limit does not make good: nothing holds the walker, the ground is reached, or no verdict may say that the
 * rig holds.
 */
function warningsOf(language: Language, rig: Rig, { points, besides }: Swept): readonly string[] {
  const say = sayIn(language);
  const list = (some: Swept["points"]) =>
    listed(
      some.map(({ change }) => changeText(change)),
      "semicolon",
    );
  const inRuns = (key: "lost" | "ground") => {
    const at = points.filter((one) => one[key] > 0);
    if (at.length === 0) return [];
    return [at.length === points.length ? saySweep(`said.${key}All`) : saySweep(`said.${key}`, { list: list(at) })];
  };
  return [
    ...inRuns("lost"),
    ...inRuns("ground"),
    ...(besides.lapses.length > 0 ? [say("verdict.hasLapsed", { what: lapseList(say, rig, besides.lapses) })] : []),
    ...besides.withheld.map(({ what, points: at }) => {
      const text = say("verdict.withheld", { what: tellBasis(what) });
      if (at.length === points.length) return text;
      return saySweep("said.at", { text, list: list(at.map((index) => points[index]!)) });
    }),
  ];
}

function limitText(
  language: Language,
  rig: Rig,
  swept: Swept,
  { limit, crossings, throughout }: LimitFound,
  warned: boolean,
): string {
  const { what } = swept;
  const knob = swept.knobs[0]!;
  if (crossings.length > 0) return crossings.map((one) => crossingText(language, rig, what, knob, one)).join(" ");
  if (!throughout) return "";
  const { keeps, sure, worst } = throughout;
  const text = saySweep(`throughout.${limit.kind}.${keeps ? "keeps" : "below"}`, {
    limit: limitValue(what, limit),
    value: valueText(what, worst.value),
    governs: worst.part === undefined ? "" : saySweep("governs", { part: inSentence(language, rig, worst) }),
    event: eventTitle(language, rig, worst.event),
  });
  const told = warned && keeps ? saySweep("throughout.apart", { text }) : text;
  return sure ? told : `${told} ${saySweep("throughout.unsure")}`;
}

const inSentence = (language: Language, rig: Rig, { part }: Governing): string =>
  part === undefined ? "" : partInSentence(sayIn(language), rig, { id: part });

function crossingText(language: Language, rig: Rig, what: SweepWhat, knob: Knob, crossing: Crossing): string {
  const { limit, kept, at, governing } = crossing;
  const factor = governing.class === "afterFailure" ? rig.requiredAfterFailure : rig.requiredFactor.value;
  return saySweep(`crossing.${limit.kind}.${kept}`, {
    at: placeText(knob, digits(knob, at, kept === "above" ? "up" : "down")),
    interval: intervalText(knob, crossing),
    limit: limitValue(what, limit),
    part: inSentence(language, rig, governing),
    required: required(factor),
    class: governing.class ? saySweep(`class.${governing.class}`) : "",
    event: eventTitle(language, rig, governing.event),
  });
}

/** "9.4 % slack", "3 connections". */
export function placeText(knob: Knob, number: string): string {
  if (knob.kind !== "field") return saySweep(`at.${knob.kind}`, { at: number });
  const label = lowered(spokenField(knob.path)?.label ?? knob.name);
  return saySweep("at.field", { at: knob.unit === "" ? number : `${number} ${knob.unit}`, label });
}

/** Number of steps in the range that are told apart: two digits more would be noise [-]. */
const RANGE_STEPS = 200;

/** 9.40 reads 9.4, and 9.00 reads 9, with the language's decimal sign. */
const withoutZeros = (text: string): string => text.replace(/[.,]0+$/, "").replace(/([.,]\d*?)0+$/, "$1");

/** "9.4 %": a value of the swept number, with as many digits as mean something. */
export function knobValue(knob: Knob, value: number, side: RoundingSide): string {
  const number = withoutZeros(digits(knob, value, side));
  return knob.unit === "" ? number : `${number} ${knob.unit}`;
}

const digits = (knob: Knob, value: number, side: RoundingSide): string => rounded(value, decimalsOf(knob), side);

const decimalsOf = ({ whole, from, to }: Knob): number =>
  whole ? 0 : Math.max(0, Math.min(6, Math.ceil(-Math.log10((to - from) / RANGE_STEPS))));

/** Tolerance of rounding: 0.3 ÷ 0.1 is not exactly 3 [-]. */
const STEP_TOLERANCE = 1e-9;

/**
 * Stretches of a number in words, rounded inwards, so that the told stretch is never wider than the kept one. A stretch without
 * a number of that many digits is left out.
 */
export function stretchTexts(knob: Knob, stretches: readonly KnobRange[]): readonly { from: string; to: string }[] {
  const scale = 10 ** decimalsOf(knob);
  return stretches
    .filter(({ from, to }) => Math.ceil(from * scale - STEP_TOLERANCE) <= Math.floor(to * scale + STEP_TOLERANCE))
    .map(({ from, to }) => ({ from: knobValue(knob, from, "up"), to: knobValue(knob, to, "down") }));
}

function intervalText(knob: Knob, { low, high }: Crossing): string {
  const unit = knob.unit === "" ? "" : ` ${knob.unit}`;
  const from = low === undefined ? undefined : digits(knob, low, "down");
  const to = high === undefined ? undefined : digits(knob, high, "up");
  if (from === undefined && to === undefined) return saySweep("interval.all");
  if (from === undefined) return saySweep("interval.upTo", { high: `${to}${unit}` });
  if (to === undefined) return saySweep("interval.from", { low: `${from}${unit}` });
  if (from === to) return saySweep("interval.sure");
  return saySweep("interval", { low: from, high: `${to}${unit}` });
}

function noteTexts(
  language: Language,
  rig: Rig,
  { points, misfit, accuracy, knobs, what, silent }: Swept,
): readonly string[] {
  const failed = points.reduce((sum, one) => sum + one.failed, 0);
  return [
    ...(what.kind === "margin" ? [saySweep("said.partsAlone")] : []),
    ...(silent.length > 0 ? [silentText(language, rig, silent)] : []),
    ...(failed > 0 ? [saySweep("said.failed", { count: failed })] : []),
    ...(misfit > LARGEST_UNTOLD_MISFIT ? [saySweep("said.misfit", { times: rounded(misfit, 1, "up") })] : []),
    ...(knobs.some(({ kind }) => kind === "months") ? [saySweep("caption.months")] : []),
    ...(accuracy === "quick" ? [saySweep("said.coarse")] : []),
  ];
}

/** So many are named [-]. */
const MOST_NAMED = 3;

function silentText(language: Language, rig: Rig, silent: Swept["silent"]): string {
  const named = silent.slice(0, MOST_NAMED).map(({ event }) => eventTitle(language, rig, event));
  return saySweep("said.silent", { count: silent.length, list: listed(named, "semicolon") });
}

export const changeText = (change: Readonly<Record<string, string>>): string =>
  listed(Object.entries(change).map(([name, value]) => `${name} = ${value}`));

const [MINUTE, HOUR, DAY] = [60, 3600, 86_400];

/** How long work takes [s], in the unit that fits. */
export function timeText(seconds: number): string {
  const at = (value: number, unit: "seconds" | "minutes" | "hours" | "days") =>
    saySweep(`study.time.${unit}`, { value: value < 10 ? Number(value.toPrecision(2)) : Math.round(value) });
  if (seconds < 2 * MINUTE) return at(Math.max(1, Math.ceil(seconds)), "seconds");
  if (seconds < 2 * HOUR) return at(seconds / MINUTE, "minutes");
  if (seconds < 2 * DAY) return at(seconds / HOUR, "hours");
  return at(seconds / DAY, "days");
}

/** The words of English. */
export const sweepWords = createSweepWords(english);
