/** Phrases of events in words. */
import type { Rig } from "@secondline/rig";
import { type EventBase, type Phrase, type PhraseValue, titleOf } from "@secondline/scenarios";
import { broughtIn } from "./broughtEnglish.ts";
import { filled, type Language, sayIn } from "./language.ts";
import { capital, lowered, partName } from "./partNames.ts";
import { length, seconds } from "./quantity.ts";

/** A phrase in a language; in English if the language lacks the key. */
export function phraseText(language: Language, rig: Rig, { key, english, values }: Phrase): string {
  const sentence = language.phrases?.[key] ?? broughtIn(english);
  const texts = Object.entries(values).map(([name, value]) => [name, valueText(language, rig, value)]);
  return capital(filled(sentence, Object.fromEntries(texts)));
}

function valueText(language: Language, rig: Rig, value: PhraseValue): string | number {
  if ("count" in value) return value.count;
  if ("seconds" in value) return seconds(value.seconds);
  if ("name" in value) return value.name;
  if ("part" in value) return partName(sayIn(language), rig, value.part);
  if ("phrase" in value) return lowered(phraseText(language, rig, value.phrase));
  return whereText(language, value.place, value.span);
}

/** One line that names an event: "Main line fails at anchor A, walker hanging in the middle". */
export const eventTitle = (language: Language, rig: Rig, event: EventBase): string =>
  phraseText(language, rig, titleOf(event, rig));

/** "in the middle", "at anchor A", "6 m from anchor B". `span` [m]. */
export function whereText(language: Language, at: number, span: number): string {
  const say = sayIn(language);
  if (Math.abs(at - 0.5) < 1e-6) return say("place.inMiddle");
  if (at <= 0 || at >= 1) return say("place.atAnchor", { anchor: at <= 0 ? "A" : "B" });
  const near = (at < 0.5 ? at : 1 - at) * span;
  const distance = length(near < 10 ? Number(near.toFixed(1)) : Math.round(near));
  return say("place.from", { distance, anchor: at < 0.5 ? "A" : "B" });
}
