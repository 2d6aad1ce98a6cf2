/** The form of a sweep, field by field in the order in which it is filled in: which number, over which range, what is looked at, how closely. */
import type { Rig } from "@secondline/rig";
import { howFarWords as words } from "@secondline/words/howFar";
import { limitKind, whatsOf, whatText, withNumber } from "./choices.ts";
import { faultsAt, numberOptions } from "./formWords.ts";
import type { SweepNumber } from "./numbers.ts";
import type { HowFarAsked, HowFarReading } from "./question.ts";

const { say } = words;
const NO_NUMBER = "";

interface Named {
  /** Tells it from the other fields. */
  readonly name: string;
  readonly label: string;
  readonly value: string;
  /** What is asked with another value. */
  readonly ask: (value: string) => Partial<HowFarAsked>;
}

export interface HowFarChoice extends Named {
  readonly kind: "choice";
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

export interface HowFarText extends Named {
  readonly kind: "text";
  readonly messages: readonly string[];
  readonly hint?: string;
  /** What holds where nothing is typed. */
  readonly placeholder?: string;
}

export type HowFarField =
  | HowFarChoice
  | HowFarText
  /** Both ends of a range, side by side. */
  | { readonly kind: "range"; readonly name: string; readonly ends: readonly HowFarText[] }
  | { readonly kind: "hint"; readonly name: string; readonly text: string };

interface Form {
  readonly asked: HowFarAsked;
  readonly rig: Rig;
  /** What can be swept in this rig. */
  readonly numbers: readonly SweepNumber[];
  readonly reading: HowFarReading;
}

export function howFarFields(form: Form): readonly HowFarField[] {
  const { asked, rig, numbers, reading } = form;
  const [first, second] = asked.ranges;
  const named = numberOptions(rig, numbers);
  const others = named.filter(({ value }) => value !== first?.name);
  return [
    numberChoice(form, 0, named),
    ...(first ? [rangeOf(form, 0)] : []),
    numberChoice(form, 1, [{ value: NO_NUMBER, label: say("field.none") }, ...others]),
    ...(second ? [rangeOf(form, 1)] : []),
    {
      kind: "choice",
      name: "what",
      label: say("field.what"),
      value: whatText(asked.what),
      options: whatsOf(rig).map((what) => ({ value: whatText(what), label: words.what(rig, what) })),
      ask: (text) => ({ what: whatsOf(rig).find((one) => whatText(one) === text) ?? asked.what, limit: "" }),
    },
    {
      kind: "text",
      name: "limit",
      label: say("field.limit"),
      value: asked.limit,
      hint: say("field.limitHint", { example: say(`limit.${limitKind(asked.what)}`) }),
      messages: faultsAt(reading, "limit"),
      ask: (limit) => ({ limit }),
    },
    {
      kind: "choice",
      name: "effort",
      label: say("field.effort"),
      value: asked.effort,
      options: (["quick", "full"] as const).map((value) => ({ value, label: say(`effort.${value}`) })),
      ask: (effort) => ({ effort: effort === "full" ? "full" : "quick" }),
    },
    { kind: "hint", name: "effortHint", text: say(`effort.${asked.effort}Hint`) },
    {
      kind: "text",
      name: "points",
      label: say(second ? "field.pointsOfTwo" : "field.points"),
      value: asked.points,
      placeholder: reading.ok ? reading.question.points.counts.join(" × ") : "",
      messages: faultsAt(reading, "points"),
      ask: (points) => ({ points }),
    },
  ];
}

function numberChoice({ asked, numbers }: Form, place: 0 | 1, options: HowFarChoice["options"]): HowFarChoice {
  const at = place === 0 ? "first" : "second";
  const ask = (name: string) => ({
    ranges: withNumber(
      asked.ranges,
      place,
      numbers.find((one) => one.name === name),
    ),
  });
  return {
    kind: "choice",
    name: at,
    label: say(`field.${at}`),
    value: asked.ranges[place]?.name ?? NO_NUMBER,
    options,
    ask,
  };
}

function rangeOf({ asked, numbers, reading }: Form, place: 0 | 1): HowFarField {
  const at = place === 0 ? "first" : "second";
  const range = asked.ranges[place]!;
  const now = numbers.find(({ name }) => name === range.name)?.now;
  const end = (which: "from" | "to"): HowFarText => ({
    kind: "text",
    name: `${at} ${which}`,
    label: say(`field.${which}`),
    value: range[which],
    messages: faultsAt(reading, at, which),
    ...(which === "to" && now !== undefined ? { hint: say("field.now", { value: now }) } : {}),
    ask: (text) => ({ ranges: asked.ranges.map((one, i) => (i === place ? { ...one, [which]: text } : one)) }),
  });
  return { kind: "range", name: place === 0 ? "firstRange" : "secondRange", ends: [end("from"), end("to")] };
}
