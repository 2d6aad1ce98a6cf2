/** The entries of a wear record: what each one is called, which fields it has, and how it reads in a sentence. */
import { type Dimension, parseQuantity } from "@secondline/rig";
import type { WrittenEntry } from "./work.ts";

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
const from: EntryField = { key: "from", label: "From", kind: "quantity", hint: "Metres from the marked end" };
const to: EntryField = { key: "to", label: "To", kind: "quantity" };
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
  { key: "rig", label: "Rig", kind: "text", hint: "The name in the rig's own file" },
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
];

/** Fields of a new entry. Where a rig is asked for, it is most often the one in hand. */
export function freshFields(kinds: readonly EntryKind[], event: string, rigName: string): Record<string, unknown> {
  const fresh = kinds.find((kind) => kind.event === event)?.fresh ?? {};
  return { ...fresh, ...(fresh.rig === "" ? { rig: rigName } : {}) };
}

export function entryWords(kinds: readonly EntryKind[], entry: WrittenEntry): string {
  return kinds.find((kind) => kind.event === entry.event)?.say(entry) ?? `Unknown entry "${entry.event}"`;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

const read = (written: unknown, dimension: Dimension = "length"): number | undefined => {
  if (typeof written !== "string" && typeof written !== "number") return undefined;
  const quantity = parseQuantity(written, dimension);
  return quantity.ok ? quantity.value : undefined;
};

/** Where an entry lies on the webbing, as far as what is written can be read [m from the marked end]. */
export function placeOf(entry: WrittenEntry): Stretch | undefined {
  const spot = read(entry.at);
  if (spot !== undefined) {
    const half = (read(entry.length) ?? 0) / 2;
    return { from: spot - half, to: spot + half };
  }
  const [a, b] = [read(entry.from), read(entry.to)];
  return a === undefined || b === undefined ? undefined : { from: a, to: b };
}
