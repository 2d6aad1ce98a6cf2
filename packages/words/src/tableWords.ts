/** The cells of the tables that every face shows: the same fact has the same text everywhere. */

import type { Basis, Rig } from "@secondline/rig";
import type { Outcome, PartOutcome, SingleFailure, WhatIfOutcome } from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import { type Language, type Say, sayIn } from "./language.ts";
import { listed } from "./lists.ts";
import { tellBasis } from "./noteWords.ts";
import { partName, partTitle } from "./partNames.ts";
import { eventTitle } from "./phrases.ts";
import {
  dropIn,
  factor as factorText,
  heightIn,
  load,
  loadIn,
  margin,
  percent,
  required,
  strengthIn,
} from "./quantity.ts";
import { spokenField } from "./spokenFields.ts";
import { fateText } from "./storyWords.ts";
import { governingOf } from "./verdictWords.ts";

export interface PartRow {
  readonly name: string;
  /** E and R in kN, margin and required margin; "–" if no run loaded the part. */
  readonly demand: string;
  /** The 95 % interval of E from the number of runs, kN. */
  readonly band: string;
  readonly strength: string;
  readonly margin: string;
  readonly required: string;
  readonly verdict: string;
  /** Index into the outcome's what-ifs. */
  readonly event?: number;
}

export const basisText = (language: Language, { kind, note }: Basis): string =>
  sayIn(language)("basis.text", { kind: broughtIn(kind), note: tellBasis(note) });

export function partRow(language: Language, rig: Rig, part: PartOutcome): PartRow {
  const say = sayIn(language);
  const worst = governingOf(part);
  const none = say("table.none");
  return {
    name: partTitle(say, rig, part),
    demand: worst ? loadIn(worst.demand) : none,
    band: worst ? bandText(say, worst.demandInterval) : none,
    strength: strengthIn(worst?.strength5 ?? part.strength5),
    margin: worst ? margin(worst.margin) : none,
    required: worst
      ? say("table.required.class", { factor: required(worst.required), class: say(`class.${part.governing!}`) })
      : none,
    verdict: say(`part.verdict.${part.verdict}`),
    ...(worst ? { event: worst.whatIf } : {}),
  };
}

/** "3.30–3.61", kN. */
export const bandText = (say: Say, [low, high]: readonly [number, number]): string =>
  say("table.band", { low: strengthIn(low), high: loadIn(high) });

/** E with its 95 % interval: "E 3.51 kN (3.30–3.61)". */
export const loadWithBand = (language: Language, demand: number, band: readonly [number, number]): string =>
  sayIn(language)("load.band", { load: load(demand), band: bandText(sayIn(language), band) });

export interface WhatIfRow {
  readonly title: string;
  readonly fate: string;
  readonly walker: string;
  readonly main: string;
  readonly backup: string;
  readonly drop: string;
  readonly feet: string;
}

export function whatIfRow(language: Language, rig: Rig, one: WhatIfOutcome): WhatIfRow {
  const say = sayIn(language);
  const title = eventTitle(language, rig, one.whatIf);
  const none = say("table.none");
  const { peaks } = one;
  const carried = (newton: number) => (newton > 0 ? loadIn(newton) : none);
  return {
    title: one.counts ? title : say("table.toldOnly", { title }),
    fate: fateText(language, rig, one),
    walker: peaks ? loadIn(peaks.leash) : none,
    main: peaks ? carried(Math.max(peaks.mainA, peaks.mainB)) : none,
    backup: peaks ? carried(Math.max(peaks.backupA, peaks.backupB)) : none,
    drop: one.drop === undefined ? none : dropIn(one.drop),
    feet: one.ok ? feetText(say, one.feetClearance) : none,
  };
}

function feetText(say: Say, clearance: number | undefined): string {
  if (clearance === undefined) return say("table.notKnown");
  return clearance <= 0 ? say("table.feetOnGround") : heightIn(clearance);
}

export interface SingleWords {
  readonly ways: string;
  readonly leaves: string;
  readonly shown: string;
}

export function singleWords(language: Language, one: SingleFailure): SingleWords {
  const say = sayIn(language);
  return {
    ways: listed(one.ways.map((way) => say(`single.way.${way}`))),
    leaves: say(`single.leaves.${one.leaves}`),
    shown: say(one.catches === undefined ? "single.notShown" : one.catches ? "single.shown" : "single.shownNot"),
  };
}

export interface WhyRow {
  readonly what: string;
  readonly value: string;
  readonly basis: string;
}

/** A part's strength in steps: the rated one, then every factor with its scatter and its basis. */
export function whyRows(
  language: Language,
  part: Pick<PartOutcome, "rated" | "ratedBasis" | "factors">,
): readonly WhyRow[] {
  const say = sayIn(language);
  return [
    { what: say("table.rated"), value: `${strengthIn(part.rated)} kN`, basis: basisText(language, part.ratedBasis) },
    ...part.factors.map((factor) => ({
      what: broughtIn(factor.name),
      value: `× ${factorText(factor.value)} ± ${percent(factor.spread, "up")}`,
      basis: basisText(language, factor.basis),
    })),
  ];
}

/** The blanks, and their cost. */
export function blankTexts(language: Language, rig: Rig, { blanks }: Pick<Outcome, "blanks">): readonly string[] {
  const say = sayIn(language);
  return blanks.map(({ part, field, costs }) =>
    say("blank.item", {
      part: partName(say, rig, part),
      what: spokenField(field)?.label ?? field,
      share: percent(costs, "down"),
    }),
  );
}
