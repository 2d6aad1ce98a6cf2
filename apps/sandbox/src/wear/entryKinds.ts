/** The entries of a wear record: what each one is called, which fields it has, and how it reads in a sentence. */
import type { WrittenEntry } from "@secondline/workbench";

export type EntryField = { readonly key: string; readonly label: string; readonly hint?: string } & (
  | { readonly kind: "text" | "quantity"; readonly optional?: boolean }
  | { readonly kind: "count" }
  | { readonly kind: "date"; readonly optional: true }
  | { readonly kind: "flag" }
  | { readonly kind: "sides" }
  | { readonly kind: "choice"; readonly options: readonly { readonly value: string; readonly label: string }[] }
);

export interface EntryKind {
  readonly event: string;
  readonly label: string;
  readonly fields: readonly EntryField[];
  /** A new entry of this kind, without its date. */
  readonly fresh: Readonly<Record<string, unknown>>;
  readonly say: (entry: WrittenEntry) => string;
}

const SIDES = [
  { value: "A", label: "Anchor A" },
  { value: "B", label: "Anchor B" },
];
const word = (value: unknown): string => (value === undefined ? "…" : String(value));
const from = { key: "from", label: "From", kind: "quantity", hint: "Metres from the marked end" } as const;
const to = { key: "to", label: "To", kind: "quantity" } as const;
const at: EntryField = { key: "at", label: "Middle at", kind: "quantity", hint: "Metres from the marked end" };
const length: EntryField = { key: "length", label: "Length", kind: "quantity" };
const sun: EntryField = {
  key: "sun",
  label: "Share of the light",
  kind: "quantity",
  hint: "100 % hangs in full light, 0 % in deep shade",
};
const wet: EntryField = { key: "wet", label: "Wet from this day on", kind: "flag" };
const falls: EntryField = { key: "falls", label: "Number of falls", kind: "count" };

const placement: readonly EntryField[] = [
  { key: "rig", label: "Rig", kind: "text", hint: "The id in the rig's own file, or its name where it has none" },
  {
    key: "line",
    label: "Line",
    kind: "choice",
    options: [
      { value: "main", label: "Main line" },
      { value: "backup", label: "Backup" },
    ],
  },
  { key: "section", label: "Section, 0 at anchor A", kind: "count" },
  { key: "markedEnd", label: "Marked end points to", kind: "choice", options: SIDES },
  { key: "from", label: "Loaded from", kind: "quantity", hint: "Metres from the marked end" },
  { key: "to", label: "Loaded to", kind: "quantity" },
  { key: "clampedAt", label: "Ends in a weblock", kind: "sides" },
  sun,
  { key: "tension", label: "Tension it hangs with", kind: "quantity", optional: true },
];
const freshPlacement = {
  rig: "",
  line: "main",
  markedEnd: "A",
  from: "1 m",
  to: "50 m",
  clampedAt: ["A", "B"],
  sun: "100 %",
};
const stretchWords = (e: WrittenEntry) => `${word(e.from)} to ${word(e.to)}`;
const lineWords = (e: WrittenEntry) => (e.line === "backup" ? "backup" : "main line");

/** What webbing and other parts share. */
const WEATHER: readonly EntryKind[] = [
  {
    event: "shade",
    label: "Light or shade changed",
    fields: [sun],
    fresh: { sun: "50 %" },
    say: (e) => `Light now ${word(e.sun)}`,
  },
  {
    event: "wet",
    label: "Wet or dry",
    fields: [wet],
    fresh: { wet: true },
    say: (e) => (e.wet === true ? "Wet" : "Dry again"),
  },
];

const note: EntryField = { key: "note", label: "Note", kind: "text", optional: true };
const noted = (e: WrittenEntry): string => (e.note === undefined ? "" : `: ${word(e.note)}`);

const JUDGEMENTS = [
  { value: "sound", label: "Sound" },
  { value: "doubtful", label: "Doubtful, holds less" },
  { value: "unfit", label: "Unfit, comes down" },
];
const JUDGEMENT: readonly EntryField[] = [
  { key: "by", label: "Looked at by", kind: "text" },
  { key: "found", label: "What was found", kind: "text" },
  { key: "judgement", label: "Judged", kind: "choice", options: JUDGEMENTS },
  {
    key: "factor",
    label: "Factor on the strength",
    kind: "quantity",
    optional: true,
    hint: "Of what is doubtful, 0.01 to 1. Left empty, a cautious one is taken",
  },
];
const freshJudgement = { by: "", found: "", judgement: "sound" };
const judgedWords = (e: WrittenEntry) => `Inspected by ${word(e.by || undefined)}: ${word(e.judgement)}`;

/** What no factor is known for: it asks for an inspection. */
const STORM: EntryKind = {
  event: "storm",
  label: "Storm or long flutter",
  fields: [{ key: "until", label: "Until", kind: "date", optional: true, hint: "The last day of it" }, note],
  fresh: {},
  say: (e) => `Storm or long flutter${e.until === undefined ? "" : ` until ${word(e.until)}`}${noted(e)}`,
};

const HARD_FALL = "A fall beyond plan";
const hardNote: EntryField = { ...note, hint: "Harder than a leash fall of one walker, or caught by the backup" };
const hardWords = (e: WrittenEntry) => `${HARD_FALL}${e.from === undefined ? "" : `, ${stretchWords(e)}`}${noted(e)}`;

const within: EntryField = { key: "within", label: "Good to within", kind: "quantity", optional: true };
const walker = { key: "walker", label: "Mass of the walker on it", kind: "quantity" } as const;
const walkerAt: EntryField = {
  key: "at",
  label: "The walker's place",
  kind: "quantity",
  optional: true,
  hint: "Share of the span from anchor A: 0.5 is the middle",
};

const DAMAGE = [
  { value: "abrasion", label: "Abrasion" },
  { value: "heat", label: "Glazed by heat" },
  { value: "cut", label: "Cut" },
];

export const WEBBING_KINDS: readonly EntryKind[] = [
  {
    event: "rigged",
    label: "Rigged",
    fields: placement,
    fresh: freshPlacement,
    say: (e) => `Rigged as ${lineWords(e)} of ${word(e.rig)}, loaded ${stretchWords(e)}`,
  },
  {
    event: "moved",
    label: "Moved to another place",
    fields: placement,
    fresh: freshPlacement,
    say: (e) => `Moved to the ${lineWords(e)} of ${word(e.rig)}, loaded ${stretchWords(e)}`,
  },
  { event: "takenDown", label: "Taken down", fields: [], fresh: {}, say: () => "Taken down" },
  {
    event: "retensioned",
    label: "Re-tensioned",
    fields: [
      { key: "end", label: "At", kind: "choice", options: SIDES },
      { key: "pulled", label: "Pulled out of the span", kind: "quantity", hint: "Negative when let in" },
    ],
    fresh: { end: "A", pulled: "0.1 m" },
    say: (e) => `Re-tensioned at ${word(e.end)}, ${word(e.pulled)} pulled out`,
  },
  {
    event: "falls",
    label: "Falls",
    fields: [from, to, falls],
    fresh: { from: "20 m", to: "30 m", falls: 10 },
    say: (e) => `${word(e.falls)} falls, ${stretchWords(e)}`,
  },
  ...WEATHER,
  {
    event: "damage",
    label: "Damage seen",
    fields: [
      { key: "kind", label: "Kind", kind: "choice", options: DAMAGE },
      from,
      to,
      { key: "depth", label: "Share of the width", kind: "quantity", hint: "How much of the width is gone or glazed" },
    ],
    fresh: { kind: "abrasion", from: "10 m", to: "10.2 m", depth: "5 %" },
    say: (e) =>
      `${DAMAGE.find((d) => d.value === e.kind)?.label ?? word(e.kind)}, ${stretchWords(e)}, ${word(e.depth)} of the width`,
  },
  {
    event: "clamped",
    label: "Clamped somewhere else",
    fields: [
      at,
      length,
      {
        key: "until",
        label: "Until",
        kind: "date",
        optional: true,
        hint: "Leave empty while it is still in the clamp",
      },
      { key: "load", label: "Load in the clamp", kind: "quantity", optional: true },
    ],
    fresh: { at: "10 m", length: "0.15 m" },
    say: (e) => `Clamped at ${word(e.at)}${e.until === undefined ? "" : ` until ${word(e.until)}`}`,
  },
  {
    event: "sewn",
    label: "Sewn",
    fields: [at, length],
    fresh: { at: "10 m", length: "0.3 m" },
    say: (e) => `Sewn at ${word(e.at)}`,
  },
  {
    event: "cutToLength",
    label: "Cut to length",
    fields: [
      { ...from, label: "Kept from" },
      { ...to, label: "Kept to" },
    ],
    fresh: { from: "0 m", to: "50 m" },
    say: (e) => `Cut: ${stretchWords(e)} kept`,
  },
  STORM,
  {
    event: "edgeContact",
    label: "Contact with an edge",
    fields: [from, to, note],
    fresh: { from: "1 m", to: "1.5 m" },
    say: (e) => `Contact with an edge, ${stretchWords(e)}${noted(e)}`,
  },
  {
    event: "hotRing",
    label: "A ring ran hot",
    fields: [from, to, note],
    fresh: { from: "20 m", to: "30 m" },
    say: (e) => `A ring ran hot, ${stretchWords(e)}${noted(e)}`,
  },
  {
    event: "hardFall",
    label: HARD_FALL,
    fields: [
      { ...from, optional: true, hint: "Metres from the marked end. Empty: all of it is in doubt" },
      { ...to, optional: true },
      hardNote,
    ],
    fresh: {},
    say: hardWords,
  },
  {
    event: "tensionReading",
    label: "Tension read",
    fields: [
      { key: "tension", label: "Tension", kind: "quantity" },
      within,
      { ...walker, optional: true, hint: "Empty: nobody was on the line" },
      walkerAt,
      note,
    ],
    fresh: { tension: "3 kN" },
    say: (e) =>
      `Tension read: ${word(e.tension)}${e.walker === undefined ? "" : ` under ${word(e.walker)}`}${noted(e)}`,
  },
  {
    event: "sagReading",
    label: "Sag read",
    fields: [
      {
        key: "sag",
        label: "Sag",
        kind: "quantity",
        hint: "Below the straight line between the anchors, where the walker is",
      },
      within,
      walker,
      walkerAt,
      note,
    ],
    fresh: { sag: "1 m", walker: "80 kg" },
    say: (e) => `Sag read: ${word(e.sag)} under ${word(e.walker)}${noted(e)}`,
  },
  {
    event: "inspected",
    label: "Inspected",
    fields: [
      ...JUDGEMENT,
      { ...from, optional: true, hint: "Metres from the marked end. Empty: all of it was looked at" },
      { ...to, optional: true },
    ],
    fresh: freshJudgement,
    say: judgedWords,
  },
];

export const PART_KINDS: readonly EntryKind[] = [
  {
    event: "putUp",
    label: "Put up",
    fields: [sun],
    fresh: { sun: "100 %" },
    say: (e) => `Put up, light ${word(e.sun ?? "100 %")}`,
  },
  { event: "takenDown", label: "Taken down", fields: [], fresh: {}, say: () => "Taken down" },
  { event: "falls", label: "Falls", fields: [falls], fresh: { falls: 10 }, say: (e) => `${word(e.falls)} falls` },
  ...WEATHER,
  { event: "replaced", label: "Replaced by a new one", fields: [], fresh: {}, say: () => "Replaced by a new one" },
  STORM,
  {
    event: "edgeContact",
    label: "Contact with an edge",
    fields: [note],
    fresh: {},
    say: (e) => `Contact with an edge${noted(e)}`,
  },
  { event: "ranHot", label: "Ran hot", fields: [note], fresh: {}, say: (e) => `Ran hot${noted(e)}` },
  { event: "hardFall", label: HARD_FALL, fields: [hardNote], fresh: {}, say: hardWords },
  { event: "inspected", label: "Inspected", fields: JUDGEMENT, fresh: freshJudgement, say: judgedWords },
];

/** Fields of a new entry. Where a rig is asked for, it is most often the one in hand. */
export function freshFields(kinds: readonly EntryKind[], event: string, rigName: string): Record<string, unknown> {
  const fresh = kinds.find((kind) => kind.event === event)?.fresh ?? {};
  return { ...fresh, ...(fresh.rig === "" ? { rig: rigName } : {}) };
}

export function entryWords(kinds: readonly EntryKind[], entry: WrittenEntry): string {
  return kinds.find((kind) => kind.event === entry.event)?.say(entry) ?? `Unknown entry "${entry.event}"`;
}
