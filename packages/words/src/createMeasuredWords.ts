/** Words of a load cell's recording beside the model, in a file of their own because only the terminal needs them. */
import type { Rig } from "@secondline/rig";
import type { Accuracy, Among, MeasuredComparison, RecordingNote, WhatIf } from "@secondline/scenarios";
import { generalCautions } from "./cautionWords.ts";
import { english, filled, type Language, type Values } from "./language.ts";
import { MEASURED_ENGLISH, type MeasuredKey } from "./measuredEnglish.ts";
import { eventTitle } from "./phrases.ts";
import { kilonewtons, number, rounded, seconds } from "./quantity.ts";

export const sayMeasured = (key: MeasuredKey, values: Values = {}): string => filled(MEASURED_ENGLISH[key], values);

export interface MeasuredRow {
  readonly name: string;
  readonly measured: string;
  readonly median: string;
  readonly band: string;
  readonly place: string;
}

/** A measured force is rounded to the nearest. */
const force = (newton: number) => `${kilonewtons(newton, "nearest")} kN`;
const impulse = (newtonSecond: number) => `${rounded(newtonSecond / 1000, 2, "nearest")} kN·s`;
const moment = (second: number) => seconds(second, 3);

export function createMeasuredWords(language: Language) {
  return {
    say: sayMeasured,
    head: (rig: Rig, event: WhatIf, comparison: MeasuredComparison, accuracy: Accuracy) =>
      headTexts(language, rig, event, comparison, accuracy),
    rows: ({ peak, impulse: whole }: MeasuredComparison): readonly MeasuredRow[] => [
      row("peak", peak, force),
      ...(whole === undefined ? [] : [row("impulse", whole, impulse)]),
    ],
    notes: (comparison: MeasuredComparison) => noteTexts(comparison),
    note: noteText,
    cautions: () => generalCautions(language),
  };
}

function headTexts(
  language: Language,
  rig: Rig,
  event: WhatIf,
  { fall, draws, alignment, failed, notes }: MeasuredComparison,
  accuracy: Accuracy,
): readonly string[] {
  const { channel, source, rate, duration, filtered, mass } = fall;
  const isSlow = notes.some(({ kind }) => kind === "slow");
  const filter = filtered ? "filter.done" : isSlow ? "filter.none" : "filter.here";
  return [
    sayMeasured("head", { event: eventTitle(language, rig, event), channel: sayMeasured(`channel.${channel}`) }),
    sayMeasured("source", {
      source,
      duration: seconds(duration),
      rate: Math.round(rate),
      filter: sayMeasured(filter),
    }),
    ...(fall.synthetic ? [sayMeasured("synthetic")] : []),
    sayMeasured("model", {
      draws,
      mesh: sayMeasured(`mesh.${accuracy}`),
      mass: mass === undefined ? "" : sayMeasured("mass", { mass: `${mass} kg` }),
    }),
    ...(failed.length > 0 ? [sayMeasured("failed", { count: failed.length })] : []),
    sayMeasured("alignment", {
      at: moment(alignment.at),
      spread: moment(alignment.spread),
      off: force(alignment.off),
    }),
  ];
}

function row(name: "peak" | "impulse", among: Among, shown: (value: number) => string): MeasuredRow {
  const { measured, atLeast, median, low, high, below, draws, place } = among;
  return {
    name: sayMeasured(`name.${name}`),
    measured: sayMeasured(atLeast ? "measured.atLeast" : "measured.exact", { value: shown(measured) }),
    median: shown(median),
    band: `${shown(low)} – ${shown(high)}`,
    place: sayMeasured(`place.${place}`, { below, draws: draws.length }),
  };
}

/** So many faults of a recording are told one by one; a file full of gaps has thousands [-]. */
const MOST_NOTES = 12;

function noteTexts({ notes, inCatch, elsewhere, impulse: whole }: MeasuredComparison): readonly string[] {
  const isOfMany = ({ kind }: RecordingNote) => kind === "gap" || kind === "overload";
  const inIt = new Set(inCatch);
  // What bears on the catch comes first: a sentence below speaks of it.
  const rank = (note: RecordingNote) => (isOfMany(note) ? (inIt.has(note) ? 1 : 2) : 0);
  const told = notes.toSorted((a, b) => rank(a) - rank(b)).slice(0, MOST_NOTES);
  return [
    ...told.map(noteText),
    ...(notes.length > MOST_NOTES ? [sayMeasured("note.more", { count: notes.length - MOST_NOTES })] : []),
    ...(elsewhere === undefined
      ? []
      : [sayMeasured("use.elsewhere", { force: force(elsewhere.force), at: moment(elsewhere.at) })]),
    ...(inCatch.length > 0 ? [sayMeasured("use.part")] : []),
    ...(whole === undefined ? [sayMeasured("use.noImpulse")] : inCatch.length > 0 ? [] : [sayMeasured("use.all")]),
    sayMeasured("one"),
  ];
}

function noteText(note: RecordingNote): string {
  switch (note.kind) {
    case "gap":
      return sayMeasured("note.gap", { from: moment(note.from), to: moment(note.to) });
    case "saturated":
      return sayMeasured("note.saturated", { force: force(note.force), from: moment(note.from), to: moment(note.to) });
    case "overload":
      return sayMeasured("note.overload", { from: moment(note.from), to: moment(note.to) });
    case "negative":
      return sayMeasured("note.negative", { samples: note.samples, least: force(note.least) });
    case "slow":
      return sayMeasured("note.slow", { rate: Math.round(note.rate) });
    case "begins":
      return sayMeasured("note.begins", { at: moment(note.at) });
    case "uneven":
      return sayMeasured("note.uneven", { least: milliseconds(note.least), most: milliseconds(note.most) });
    case "reversed":
      return sayMeasured("note.reversed");
  }
}

const milliseconds = (second: number) => `${number(Number((1000 * second).toPrecision(2)))} ms`;

/** The words of English. */
export const measuredWords = createMeasuredWords(english);
