/** The entries of a wear record: what each one is called, which fields it has, and how it reads in a sentence. */

import { sayRecord } from "@secondline/words/page/record";
import type { WrittenEntry } from "../documents/documents.ts";
import { plannedCount } from "../wear/planEdits.ts";

export type EntryFormField = { readonly key: string; readonly label: string; readonly hint?: string } & (
  | { readonly kind: "text" | "quantity"; readonly optional?: boolean }
  | { readonly kind: "count" }
  | { readonly kind: "date"; readonly optional: true }
  | { readonly kind: "flag" }
  | { readonly kind: "sides" }
  | { readonly kind: "choice"; readonly options: readonly { readonly value: string; readonly label: string }[] }
);

export interface EntryFormKind {
  readonly event: string;
  readonly label: string;
  readonly fields: readonly EntryFormField[];
  /** A new entry of this kind, without its date. */
  readonly fresh: Readonly<Record<string, unknown>>;
  readonly say: (entry: WrittenEntry) => string;
}

const SIDES = [
  { value: "A", label: sayRecord("entryKinds.anchorA") },
  { value: "B", label: sayRecord("entryKinds.anchorB") },
];
const word = (value: unknown): string => (value === undefined ? "…" : String(value));
const from = {
  key: "from",
  label: sayRecord("entryKinds.from"),
  kind: "quantity",
  hint: sayRecord("entryKinds.placeHint"),
} as const;
const to = { key: "to", label: sayRecord("entryKinds.to"), kind: "quantity" } as const;
const at: EntryFormField = {
  key: "at",
  label: sayRecord("entryKinds.middle"),
  kind: "quantity",
  hint: sayRecord("entryKinds.placeHint"),
};
const length: EntryFormField = { key: "length", label: sayRecord("entryKinds.length"), kind: "quantity" };
const sun: EntryFormField = {
  key: "sun",
  label: sayRecord("entryKinds.light"),
  kind: "quantity",
  hint: sayRecord("entryKinds.lightHint"),
};
const wet: EntryFormField = { key: "wet", label: sayRecord("entryKinds.wetFromThisDay"), kind: "flag" };
const falls: EntryFormField = { key: "falls", label: sayRecord("entryKinds.numberFalls"), kind: "count" };

const placement: readonly EntryFormField[] = [
  { key: "rig", label: sayRecord("entryKinds.rig"), kind: "text", hint: sayRecord("entryKinds.rigHint") },
  {
    key: "line",
    label: sayRecord("entryKinds.line"),
    kind: "choice",
    options: [
      { value: "main", label: sayRecord("entryKinds.mainLine") },
      { value: "backup", label: sayRecord("entryKinds.backup") },
    ],
  },
  { key: "section", label: sayRecord("entryKinds.sectionNumber"), kind: "count" },
  { key: "markedEnd", label: sayRecord("entryKinds.markedEndPoints"), kind: "choice", options: SIDES },
  {
    key: "from",
    label: sayRecord("entryKinds.loadedFrom"),
    kind: "quantity",
    hint: sayRecord("entryKinds.placeHint"),
  },
  { key: "to", label: sayRecord("entryKinds.loadedTo"), kind: "quantity" },
  { key: "clampedAt", label: sayRecord("entryKinds.endsWeblock"), kind: "sides" },
  sun,
  { key: "tension", label: sayRecord("entryKinds.standingTension"), kind: "quantity", optional: true },
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
const stretchWords = (e: WrittenEntry) => sayRecord("entryKinds.stretch", { from: word(e.from), to: word(e.to) });
const lineWords = (e: WrittenEntry) =>
  sayRecord(e.line === "backup" ? "entryKinds.theBackup" : "entryKinds.theMainLine");

/** What webbing and other parts share. */
const WEATHER: readonly EntryFormKind[] = [
  {
    event: "shade",
    label: sayRecord("entryKinds.lightOrShade"),
    fields: [sun],
    fresh: { sun: "50 %" },
    say: (e) => sayRecord("entryKinds.lightNow", { share: word(e.sun) }),
  },
  {
    event: "wet",
    label: sayRecord("entryKinds.wetOrDry"),
    fields: [wet],
    fresh: { wet: true },
    say: (e) => (e.wet === true ? sayRecord("entryKinds.wet") : sayRecord("entryKinds.dryAgain")),
  },
];

const note: EntryFormField = { key: "note", label: sayRecord("entryKinds.note"), kind: "text", optional: true };
/** An entry with its note. */
const noted = (e: WrittenEntry, entry: string): string =>
  e.note === undefined ? entry : sayRecord("entryKinds.noted", { entry, note: word(e.note) });

const JUDGEMENTS = [
  { value: "sound", label: sayRecord("entryKinds.sound") },
  { value: "doubtful", label: sayRecord("entryKinds.doubtful") },
  { value: "unfit", label: sayRecord("entryKinds.unfit") },
];
const JUDGEMENT: readonly EntryFormField[] = [
  { key: "by", label: sayRecord("entryKinds.inspector"), kind: "text" },
  { key: "found", label: sayRecord("entryKinds.finding"), kind: "text" },
  { key: "judgement", label: sayRecord("entryKinds.judged"), kind: "choice", options: JUDGEMENTS },
  {
    key: "factor",
    label: sayRecord("entryKinds.factorStrength"),
    kind: "quantity",
    optional: true,
    hint: sayRecord("entryKinds.factorHint"),
  },
];
const freshJudgement = { by: "", found: "", judgement: "sound" };
/** "sound", "doubtful", "unfit"; anything else as it was written. */
export const judgementWords = (judgement: unknown): string =>
  judgement === "sound" || judgement === "doubtful" || judgement === "unfit"
    ? sayRecord(`entryKinds.judged.${judgement}`)
    : String(judgement ?? sayRecord("entryKinds.judged.none"));
const judgedWords = (e: WrittenEntry) =>
  sayRecord("entryKinds.inspectedBy", {
    who: word(e.by || undefined),
    found: judgementWords(e.judgement ?? word(e.judgement)),
  });

/** What no factor is known for: it asks for an inspection. */
const STORM: EntryFormKind = {
  event: "storm",
  label: sayRecord("entryKinds.stormOrLong"),
  fields: [
    {
      key: "until",
      label: sayRecord("entryKinds.until"),
      kind: "date",
      optional: true,
      hint: sayRecord("entryKinds.stormUntilHint"),
    },
    note,
  ],
  fresh: {},
  say: (e) =>
    noted(
      e,
      e.until === undefined
        ? sayRecord("entryKinds.stormOrLong")
        : sayRecord("entryKinds.stormUntil", { day: word(e.until) }),
    ),
};

const HARD_FALL = sayRecord("entryKinds.fallBeyondPlan");
const hardNote: EntryFormField = { ...note, hint: sayRecord("entryKinds.hardFallHint") };
const hardWords = (e: WrittenEntry) =>
  noted(
    e,
    e.from === undefined ? HARD_FALL : sayRecord("entryKinds.fallBeyondPlanAlong", { stretch: stretchWords(e) }),
  );

const within: EntryFormField = {
  key: "within",
  label: sayRecord("entryKinds.goodWithin"),
  kind: "quantity",
  optional: true,
};
const walker = { key: "walker", label: sayRecord("entryKinds.walkersMass"), kind: "quantity" } as const;
const walkerAt: EntryFormField = {
  key: "at",
  label: sayRecord("entryKinds.walkersPlace"),
  kind: "quantity",
  optional: true,
  hint: sayRecord("entryKinds.walkersPlaceHint"),
};

const DAMAGE = [
  { value: "abrasion", label: sayRecord("entryKinds.abrasion") },
  { value: "heat", label: sayRecord("entryKinds.glazedHeat") },
  { value: "cut", label: sayRecord("entryKinds.cut") },
];

export const WEBBING_KINDS: readonly EntryFormKind[] = [
  {
    event: "rigged",
    label: sayRecord("entryKinds.rigged"),
    fields: placement,
    fresh: freshPlacement,
    say: (e) =>
      sayRecord("entryKinds.riggedLoaded", { line: lineWords(e), rig: word(e.rig), stretch: stretchWords(e) }),
  },
  {
    event: "moved",
    label: sayRecord("entryKinds.moved"),
    fields: placement,
    fresh: freshPlacement,
    say: (e) => sayRecord("entryKinds.movedLoaded", { line: lineWords(e), rig: word(e.rig), stretch: stretchWords(e) }),
  },
  {
    event: "takenDown",
    label: sayRecord("entryKinds.takenDown"),
    fields: [],
    fresh: {},
    say: () => sayRecord("entryKinds.takenDown"),
  },
  {
    event: "retensioned",
    label: sayRecord("entryKinds.retensioned"),
    fields: [
      { key: "end", label: sayRecord("entryKinds.at"), kind: "choice", options: SIDES },
      {
        key: "pulled",
        label: sayRecord("entryKinds.pulledOut"),
        kind: "quantity",
        hint: sayRecord("entryKinds.pulledOutHint"),
      },
    ],
    fresh: { end: "A", pulled: "0.1 m" },
    say: (e) => sayRecord("entryKinds.retensionedBy", { place: word(e.end), length: word(e.pulled) }),
  },
  {
    event: "falls",
    label: sayRecord("entryKinds.falls"),
    fields: [from, to, falls],
    fresh: { from: "20 m", to: "30 m", falls: 10 },
    say: (e) => sayRecord("entryKinds.fallsAlong", { count: word(e.falls), stretch: stretchWords(e) }),
  },
  ...WEATHER,
  {
    event: "damage",
    label: sayRecord("entryKinds.damageSeen"),
    fields: [
      { key: "kind", label: sayRecord("entryKinds.kind"), kind: "choice", options: DAMAGE },
      from,
      to,
      {
        key: "depth",
        label: sayRecord("entryKinds.damageDepth"),
        kind: "quantity",
        hint: sayRecord("entryKinds.damageDepthHint"),
      },
    ],
    fresh: { kind: "abrasion", from: "10 m", to: "10.2 m", depth: "5 %" },
    say: (e) =>
      sayRecord("entryKinds.damageAlong", {
        kind: DAMAGE.find((d) => d.value === e.kind)?.label ?? word(e.kind),
        stretch: stretchWords(e),
        share: word(e.depth),
      }),
  },
  {
    event: "clamped",
    label: sayRecord("entryKinds.clampedElsewhere"),
    fields: [
      at,
      length,
      {
        key: "until",
        label: sayRecord("entryKinds.until"),
        kind: "date",
        optional: true,
        hint: sayRecord("entryKinds.clampedUntilHint"),
      },
      { key: "load", label: sayRecord("entryKinds.loadClamp"), kind: "quantity", optional: true },
    ],
    fresh: { at: "10 m", length: "0.15 m" },
    say: (e) =>
      e.until === undefined
        ? sayRecord("entryKinds.clampedAt", { place: word(e.at) })
        : sayRecord("entryKinds.clampedUntil", { place: word(e.at), day: word(e.until) }),
  },
  {
    event: "sewn",
    label: sayRecord("entryKinds.sewn"),
    fields: [at, length],
    fresh: { at: "10 m", length: "0.3 m" },
    say: (e) => sayRecord("entryKinds.sewnAt", { place: word(e.at) }),
  },
  {
    event: "cutToLength",
    label: sayRecord("entryKinds.cutLength"),
    fields: [
      { ...from, label: sayRecord("entryKinds.keptFrom") },
      { ...to, label: sayRecord("entryKinds.keptTo") },
    ],
    fresh: { from: "0 m", to: "50 m" },
    say: (e) => sayRecord("entryKinds.cutKept", { stretch: stretchWords(e) }),
  },
  STORM,
  {
    event: "edgeContact",
    label: sayRecord("entryKinds.contactEdge"),
    fields: [from, to, note],
    fresh: { from: "1 m", to: "1.5 m" },
    say: (e) => noted(e, sayRecord("entryKinds.contactEdgeAlong", { stretch: stretchWords(e) })),
  },
  {
    event: "hotRing",
    label: sayRecord("entryKinds.ringRanHot"),
    fields: [from, to, note],
    fresh: { from: "20 m", to: "30 m" },
    say: (e) => noted(e, sayRecord("entryKinds.ringRanHotAlong", { stretch: stretchWords(e) })),
  },
  {
    event: "hardFall",
    label: HARD_FALL,
    fields: [
      { ...from, optional: true, hint: sayRecord("entryKinds.doubtfulStretchHint") },
      { ...to, optional: true },
      hardNote,
    ],
    fresh: {},
    say: hardWords,
  },
  {
    event: "tensionReading",
    label: sayRecord("entryKinds.tensionRead"),
    fields: [
      { key: "tension", label: sayRecord("entryKinds.tension"), kind: "quantity" },
      within,
      { ...walker, optional: true, hint: sayRecord("entryKinds.tensionMassHint") },
      walkerAt,
      note,
    ],
    fresh: { tension: "3 kN" },
    say: (e) =>
      noted(
        e,
        e.walker === undefined
          ? sayRecord("entryKinds.tensionReadOf", { tension: word(e.tension) })
          : sayRecord("entryKinds.tensionReadUnder", { tension: word(e.tension), load: word(e.walker) }),
      ),
  },
  {
    event: "sagReading",
    label: sayRecord("entryKinds.sagRead"),
    fields: [
      {
        key: "sag",
        label: sayRecord("entryKinds.sag"),
        kind: "quantity",
        hint: sayRecord("entryKinds.sagHint"),
      },
      within,
      walker,
      walkerAt,
      note,
    ],
    fresh: { sag: "1 m", walker: "80 kg" },
    say: (e) => noted(e, sayRecord("entryKinds.sagReadUnder", { sag: word(e.sag), load: word(e.walker) })),
  },
  {
    event: "inspected",
    label: sayRecord("entryKinds.inspected"),
    fields: [
      ...JUDGEMENT,
      { ...from, optional: true, hint: sayRecord("entryKinds.inspectedStretchHint") },
      { ...to, optional: true },
    ],
    fresh: freshJudgement,
    say: judgedWords,
  },
];

export const PART_KINDS: readonly EntryFormKind[] = [
  {
    event: "putUp",
    label: sayRecord("entryKinds.putUp"),
    fields: [sun],
    fresh: { sun: "100 %" },
    say: (e) => sayRecord("entryKinds.putUpLight", { share: word(e.sun ?? "100 %") }),
  },
  {
    event: "takenDown",
    label: sayRecord("entryKinds.takenDown"),
    fields: [],
    fresh: {},
    say: () => sayRecord("entryKinds.takenDown"),
  },
  {
    event: "falls",
    label: sayRecord("entryKinds.falls"),
    fields: [falls],
    fresh: { falls: 10 },
    say: (e) => sayRecord("entryKinds.fallsTaken", { count: word(e.falls) }),
  },
  ...WEATHER,
  {
    event: "replaced",
    label: sayRecord("entryKinds.replaced"),
    fields: [
      {
        key: "made",
        label: sayRecord("ownerChoice.madeOn"),
        kind: "date",
        optional: true,
        hint: sayRecord("entryKinds.replacedMadeHint"),
      },
    ],
    fresh: {},
    say: (e) =>
      e.made === undefined
        ? sayRecord("entryKinds.replaced")
        : sayRecord("entryKinds.replacedMade", { made: word(e.made) }),
  },
  STORM,
  {
    event: "edgeContact",
    label: sayRecord("entryKinds.contactEdge"),
    fields: [note],
    fresh: {},
    say: (e) => noted(e, sayRecord("entryKinds.contactEdge")),
  },
  {
    event: "ranHot",
    label: sayRecord("entryKinds.ranHot"),
    fields: [note],
    fresh: {},
    say: (e) => noted(e, sayRecord("entryKinds.ranHot")),
  },
  { event: "hardFall", label: HARD_FALL, fields: [hardNote], fresh: {}, say: hardWords },
  {
    event: "inspected",
    label: sayRecord("entryKinds.inspected"),
    fields: JUDGEMENT,
    fresh: freshJudgement,
    say: judgedWords,
  },
];

/** Fields of a new entry. Where a rig is asked for, it is most often the open one. */
export function freshFields(kinds: readonly EntryFormKind[], event: string, rigName: string): Record<string, unknown> {
  const fresh = kinds.find((kind) => kind.event === event)?.fresh ?? {};
  return { ...fresh, ...(fresh.rig === "" ? { rig: rigName } : {}) };
}

export function entryWords(kinds: readonly EntryFormKind[], entry: WrittenEntry): string {
  return kinds.find((kind) => kind.event === entry.event)?.say(entry) ?? `Unknown entry "${entry.event}"`;
}

/** The same day as another kind of entry; fields that both have keep what was typed. */
export function asKind(
  entry: WrittenEntry,
  kinds: readonly EntryFormKind[],
  event: string,
  rigName: string,
): WrittenEntry {
  const fresh = freshFields(kinds, event, rigName);
  const kept = Object.fromEntries(
    Object.keys(fresh).flatMap((key) => (entry[key] === undefined || key === "kind" ? [] : [[key, entry[key]]])),
  );
  return { date: entry.date, event, ...fresh, ...kept };
}

/** What an entry holds when `text` stands in the field: a number as a number, and nothing at all where it may be left empty. */
export function fieldValue(field: EntryFormField, text: string): unknown {
  switch (field.kind) {
    case "count":
      return plannedCount(text);
    case "date":
    case "quantity":
      return text === "" ? undefined : text;
    case "text":
      return text === "" && field.optional ? undefined : text;
    default:
      return text;
  }
}
