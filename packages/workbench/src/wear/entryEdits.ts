/** Changes to a written record. All pure; what does not change is shared. */
import { editDocument } from "@secondline/rig";
import type { WrittenEntry, WrittenRecord } from "../documents/documents.ts";
import { metreText } from "../metres.ts";
import { dayOf, isoOf } from "./days.ts";
import { placeOf } from "./place.ts";

/** A webbing or another part of the record. */
export interface Owner {
  readonly list: "webbings" | "parts";
  readonly index: number;
}

export const ownerPath = ({ list, index }: Owner): string => `${list}[${index}]`;

export function entriesOf(record: WrittenRecord, { list, index }: Owner): readonly WrittenEntry[] {
  return record[list]?.[index]?.entries ?? [];
}

/** The record with other entries, in order of date as the format wants them, and where each one went. */
function withEntries(record: WrittenRecord, owner: Owner, entries: readonly WrittenEntry[]) {
  // Stable: entries of one day keep the order in which they were written. Dates still being typed stay where they are.
  const readable = entries.every((entry) => dayOf(entry.date) !== undefined);
  const sorted = readable ? entries.toSorted((a, b) => a.date.localeCompare(b.date)) : entries;
  return { record: editDocument(record, `${ownerPath(owner)}.entries`, sorted), sorted };
}

export interface Edited {
  readonly record: WrittenRecord;
  /** Where the changed entry stands now. */
  readonly entry: number;
}

export function replaceEntry(record: WrittenRecord, owner: Owner, at: number, entry: WrittenEntry): Edited {
  const { record: next, sorted } = withEntries(record, owner, entriesOf(record, owner).with(at, entry));
  return { record: next, entry: sorted.indexOf(entry) };
}

export function addEntry(record: WrittenRecord, owner: Owner, entry: WrittenEntry): Edited {
  const { record: next, sorted } = withEntries(record, owner, [...entriesOf(record, owner), entry]);
  return { record: next, entry: sorted.indexOf(entry) };
}

export function removeEntry(record: WrittenRecord, owner: Owner, at: number): WrittenRecord {
  return withEntries(record, owner, entriesOf(record, owner).toSpliced(at, 1)).record;
}

/** One field; `undefined` takes it out. */
export function setField(entry: WrittenEntry, key: string, value: unknown): WrittenEntry {
  const { [key]: _, ...rest } = entry;
  return (value === undefined ? rest : { ...entry, [key]: value }) as WrittenEntry;
}

export type GrippedPart = "whole" | "from" | "to";

/** An entry with its place moved by so many metres, kept on the webbing of `length` and at least 1 cm long. */
export function movePlace(entry: WrittenEntry, by: number, length: number, grip: GrippedPart): WrittenEntry {
  const place = placeOf(entry);
  if (!place) return entry;
  const { from, to } = place;
  const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);
  if (entry.at !== undefined) {
    const half = (to - from) / 2;
    return { ...entry, at: metreText(clamp(from + half + by, 0, length)) };
  }
  if (grip === "from") return { ...entry, from: metreText(clamp(from + by, 0, to - 0.01)) };
  if (grip === "to") return { ...entry, to: metreText(clamp(to + by, from + 0.01, length)) };
  const shift = clamp(by, -from, length - to);
  return { ...entry, from: metreText(from + shift), to: metreText(to + shift) };
}

/** An entry so many days later; one with an end of its own keeps its duration. */
export function moveDate(entry: WrittenEntry, days: number): WrittenEntry {
  const day = dayOf(entry.date);
  if (day === undefined) return entry;
  const until = dayOf(entry.until);
  return { ...entry, date: isoOf(day + days), ...(until === undefined ? {} : { until: isoOf(until + days) }) };
}

/** An id that no webbing of the record has. */
export function freeId(record: WrittenRecord): string {
  const taken = new Set((record.webbings ?? []).map((webbing) => webbing.id));
  for (let n = taken.size + 1; ; n += 1) if (!taken.has(`webbing-${n}`)) return `webbing-${n}`;
}
