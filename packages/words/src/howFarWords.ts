/** Words of sweeps on the page: the sentences of the terminal, and names for the page's choices. */

import type { FactValue, Rig } from "@secondline/rig";
import { type Knob, type KnobFault, knobText, type LimitKind, type SweepWhat, type Swept } from "@secondline/scenarios";
import { createSweepWords, isWarned, placeText, saySweep, stretchTexts } from "./createSweepWords.ts";
import { tellFault } from "./faultWords.ts";
import { HOW_FAR_ENGLISH, type HowFarKey } from "./howFarEnglish.ts";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { listed } from "./lists.ts";
import { lowered, partName } from "./partNames.ts";
import { valueNames } from "./valueNames.ts";

export { changeText, timeText } from "./createSweepWords.ts";
export type { HowFarKey } from "./howFarEnglish.ts";

export const sayHowFar = (key: HowFarKey, values: Values = {}): string => filled(HOW_FAR_ENGLISH[key], values);

/** The reason why a question cannot be asked: its range, its number of values, its limit, or the rig. */
export type HowFarFault =
  | (KnobFault & { readonly example: string })
  | { readonly kind: "points" | "pointsOfCounted"; readonly least: number; readonly most: number }
  | { readonly kind: "limit"; readonly about: FactValue }
  | { readonly kind: "same" | "limitNumber" | "issues" };

export type HowFarWords = ReturnType<typeof createHowFarWords>;

export function createHowFarWords(language: Language) {
  const number = (rig: Rig, { kind, name }: Pick<Knob, "kind" | "name">): string =>
    kind === "field" ? valueNames(sayIn(language), rig, [name]) : sayHowFar(`number.${kind}`);
  return {
    say: sayHowFar,
    sweep: createSweepWords(language),
    fault: faultText,
    /** "Backup: slack", "Span". */
    number,
    what: (rig: Rig, what: SweepWhat): string =>
      what.kind === "load"
        ? sayHowFar("what.load", { part: partName(sayIn(language), rig, what.part) })
        : sayHowFar(`what.${what.kind}`),
    limitName: (kind: LimitKind): string => sayHowFar(`limit.${kind}`),
    head: (rig: Rig, { what, knobs: [first, second] }: Swept): string => {
      const told = createSweepWords(language).what(rig, what);
      const name = (knob: Knob) => lowered(number(rig, knob));
      return second
        ? sayHowFar("head.two", { what: told, first: name(first!), second: name(second) })
        : sayHowFar("head.one", { what: told, name: name(first!) });
    },
    region: regionText,
    /** Number of what-ifs drawn, of those looked at, and the number of draws. */
    drawn: ({ looked, events, draws, runs }: Swept): string =>
      saySweep(looked > events.length ? "drawn.found" : "drawn.chosen", { drawn: events.length, looked, draws, runs }),
    /** "9.375 %": a value that was run, as it is told everywhere. */
    point: (knob: Knob, value: number): string => pointText(value, knob),
    /** "9.4 % slack and 3 connections". */
    at(knobs: readonly Knob[], values: readonly number[]): string {
      const [first, second] = knobs.map((knob, k) => placeText(knob, pointText(values[k]!)));
      return second === undefined ? first! : sayHowFar("at.two", { first: first!, second });
    },
  };
}

/** A point between two others may have endless digits; four tell it from its neighbours. */
const pointText = (value: number, knob: Pick<Knob, "unit"> = { unit: "" }): string =>
  knobText(knob, Number(value.toPrecision(4)));

function faultText(fault: HowFarFault): string {
  switch (fault.kind) {
    case "points":
    case "pointsOfCounted":
      return sayHowFar(`fault.${fault.kind}`, { least: fault.least, most: fault.most });
    case "limit":
      return sayHowFar("fault.limit", { about: tellFault(fault.about) });
    case "same":
    case "limitNumber":
    case "issues":
      return sayHowFar(`fault.${fault.kind}`);
    default:
      return sayHowFar(`fault.${fault.kind}`, { about: tellFault(fault.about), example: fault.example });
  }
}

/** The stretches of the number in which the limit is kept, or the number of pairs that keep it. */
function regionText(swept: Swept): string {
  const { knobs, points, region, limits, kept } = swept;
  const all = (text: string) => (isWarned(swept) ? saySweep("throughout.apart", { text }) : text);
  const [knob] = knobs as readonly [Knob];
  if (knobs.length > 1) {
    if (!region) return sayHowFar("range.noLimit");
    const sure = region.states.filter((state) => state === "keeps").length;
    if (sure === points.length) return all(sayHowFar("map.all"));
    return region.outline.some((row) => row.kept.length > 0)
      ? sayHowFar("map.some", { count: sure, of: points.length })
      : sayHowFar("map.none");
  }
  if (limits.length === 0 || !kept) return sayHowFar("range.noLimit");
  const stretches = stretchTexts(knob, kept);
  if (stretches.length === 0) return sayHowFar("range.keptNowhere");
  if (covers(knob, kept)) return all(sayHowFar("range.keptAll", stretches[0]!));
  return sayHowFar("range.kept", {
    list: listed(
      stretches.map((one) => sayHowFar("range.stretch", one)),
      "semicolon",
    ),
  });
}

const covers = (knob: Knob, kept: readonly { readonly from: number; readonly to: number }[]): boolean =>
  kept[0]!.from === knob.from && kept.at(-1)!.to === knob.to;

/** The words of English. */
export const howFarWords = createHowFarWords(english);
