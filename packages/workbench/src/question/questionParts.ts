/** A what-if as a sentence with blanks: words, choices and places, in the order in which they are read. */
import type { Rig } from "@secondline/rig";
import { asItsKeySays, type WhatIf } from "@secondline/scenarios";
import { lowered, englishWords as words } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";
import { kindsFor, legChoices, ofKind, readLeg, WALKERS, WALKERS_AT_A_LEG } from "./whatIfChoices.ts";

interface Option<T extends string> {
  readonly value: T;
  readonly label: string;
}

export interface QuestionChoice {
  readonly kind: "choice";
  readonly label: string;
  readonly value: string;
  readonly options: readonly Option<string>[];
  /** The what-if with this answer. */
  readonly choose: (value: string) => WhatIf;
}

export interface QuestionPlace {
  readonly kind: "place";
  /** What is at the place. */
  readonly label: string;
  /** Fraction of the line, 0 at anchor A [-]. */
  readonly at: number;
  /** A cut may lie at an anchor itself; a walker stands some way from it. */
  readonly ends: boolean;
  /** The what-if with this place. */
  readonly move: (at: number) => WhatIf;
}

export type QuestionPart = { readonly kind: "words"; readonly text: string } | QuestionChoice | QuestionPlace;

export function questionParts(whatIf: WhatIf, rig: Rig): readonly QuestionPart[] {
  return [
    say(sayPage("question.title")),
    choice(sayPage("question.whatHappens"), whatIf.kind, kindsFor(whatIf, rig), (kind) => ofKind(kind, whatIf, rig)),
    ...blanksOf(whatIf, rig),
  ];
}

const say = (text: string): QuestionPart => ({ kind: "words", text });

function choice<T extends string>(
  label: string,
  value: T,
  options: readonly Option<T>[],
  answered: (value: T) => WhatIf,
): QuestionPart {
  const choose = (text: string) => answered(options.find((one) => one.value === text)?.value ?? value);
  return { kind: "choice", label, value, options, choose };
}

/** What is left to say of the kind that is chosen. */
function blanksOf(whatIf: WhatIf, rig: Rig): readonly QuestionPart[] {
  switch (whatIf.kind) {
    case "leashFall":
      return walkerAt(whatIf);
    case "mainFails":
      return mainFailsBlanks(whatIf);
    case "legFails":
      return legFailsBlanks(whatIf, rig);
    case "rescue":
      if (!whatIf.during) return walkerAt(whatIf);
      return [say(sayPage("question.and", { eventTitle: lowered(words.eventTitle(rig, whatIf.during)) }))];
    case "givesWay":
      return [say(sayPage("question.in", { eventTitle: lowered(words.eventTitle(rig, whatIf.during)) }))];
  }
}

function walkerAt(whatIf: Exclude<WhatIf, { kind: "givesWay" }>): readonly QuestionPart[] {
  const move = (at: number) => asItsKeySays({ ...whatIf, at });
  return [
    say(sayPage("question.at")),
    { kind: "place", label: sayPage("question.walkersPlace"), at: whatIf.at, ends: false, move },
  ];
}

function mainFailsBlanks(whatIf: Extract<WhatIf, { kind: "mainFails" }>): readonly QuestionPart[] {
  const move = (cutAt: number) => asItsKeySays({ ...whatIf, cutAt });
  return [
    say(sayPage("question.at")),
    { kind: "place", label: sayPage("question.whereMainLine"), at: whatIf.cutAt, ends: true, move },
    say(sayPage("question.walkerDoesShort")),
    choice(sayPage("question.walkerDoes"), whatIf.walker, WALKERS, (walker) => ({ ...whatIf, walker })),
    ...walkerAt(whatIf),
  ];
}

function legFailsBlanks(whatIf: Extract<WhatIf, { kind: "legFails" }>, rig: Rig): readonly QuestionPart[] {
  const leg = `${whatIf.anchor}${whatIf.leg}`;
  return [
    say(sayPage("question.to")),
    choice(sayPage("question.whichLegFails"), leg, legChoices(rig), (one) => ({ ...whatIf, ...readLeg(one) })),
    say(sayPage("question.walkerDoesShort")),
    choice(sayPage("question.walkerDoes"), whatIf.walker, WALKERS_AT_A_LEG, (walker) => ({ ...whatIf, walker })),
    ...walkerAt(whatIf),
  ];
}
