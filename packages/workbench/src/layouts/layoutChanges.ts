/** What differs between two rig documents, entry by entry, in the words of the rig sheet. */
import { type Field, isGroup, parseQuantity, valueAt } from "@secondline/rig";
import { listed, lowered, materialName } from "@secondline/words";
import { spokenField, spokenGroup } from "@secondline/words/fields";
import { sayLayouts } from "@secondline/words/page/layouts";
import type { WrittenRig } from "../documents/documents.ts";

export interface LayoutChange {
  readonly path: string;
  /** "Backup, Slack". */
  readonly label: string;
  /** The value as typed; "none" if the document has no such entry. */
  readonly before: string;
  readonly after: string;
}

/** Fields that are not compared: they say nothing about the rig itself. */
const FIELDS_NOT_COMPARED = new Set(["name", "id", "notes", "secondline", "invented", "unconfirmed"]);
const NO_VALUE = sayLayouts("layoutChanges.none");

/** Changes from one document to another, in the order of the document. Bases, names and notes are no changes of the rig. */
export function layoutChanges(before: WrittenRig, after: WrittenRig): readonly LayoutChange[] {
  const isOnly = (list: string) => [before, after].every((document) => lengthAt(document, list) === 1);
  const change = (path: string, was: unknown, is: unknown): LayoutChange => ({
    path,
    label: labelOf(path, isOnly),
    before: valueWords(path, was),
    after: valueWords(path, is),
  });
  return compare("", before, after, change).filter(
    ({ path }) => !FIELDS_NOT_COMPARED.has(path.split("[")[0]!) && !/basis$/i.test(path),
  );
}

type Change = (path: string, was: unknown, is: unknown) => LayoutChange;

function compare(path: string, before: unknown, after: unknown, change: Change): readonly LayoutChange[] {
  if (same(path, before, after)) return [];
  if (path === "ground")
    return [
      {
        ...change(path, undefined, undefined),
        before: sayLayouts("layoutChanges.oneGround"),
        after: sayLayouts("layoutChanges.anotherGround"),
      },
    ];
  if (Array.isArray(before) && Array.isArray(after) && before.length === after.length)
    return before.flatMap((one, i) => compare(`${path}[${i}]`, one, after[i], change));
  if (isGroup(before) && isGroup(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...keys].flatMap((key) => compare(path === "" ? key : `${path}.${key}`, before[key], after[key], change));
  }
  return [change(path, before, after)];
}

function lengthAt(document: WrittenRig, path: string): number | undefined {
  const list = valueAt(document, path);
  return Array.isArray(list) ? list.length : undefined;
}

/** Equal as numbers, however they are typed: 2 kN is 2000 N. */
function same(path: string, before: unknown, after: unknown): boolean {
  if (Object.is(before, after)) return true;
  const field = spokenField(path);
  if (field?.kind !== "quantity") return JSON.stringify(before) === JSON.stringify(after);
  const [a, b] = [before, after].map((value) => parseQuantity(value ?? field.fallback, field.dimension));
  return a?.ok === true && b?.ok === true && a.value === b.value;
}

/** Names of the groups on the way and of the entry itself; the number of an item is left out where it is the only one. */
function labelOf(path: string, isOnly: (list: string) => boolean): string {
  const steps = path.split(".");
  const names = steps.flatMap((_, i) => {
    const here = steps.slice(0, i + 1).join(".");
    const [list, item] = /^(.*)\[(\d+)\]$/.exec(here)?.slice(1) ?? [];
    if (list !== undefined) return isOnly(list) ? [] : itemName(list, Number(item) + 1);
    const name = spokenGroup(here);
    return name === undefined || steps[i] === "condition" ? [] : [name];
  });
  const field = spokenField(path);
  const all = [...names, ...(field ? [field.label] : [])];
  return listed(all.map((name, i) => (i === 0 ? name : lowered(name)))) || path;
}

/** Lists whose items have names. */
const LISTS = ["stocks", "points", "hardware", "sections", "wear", "connections", "tapes", "rings", "knots"] as const;

function itemName(list: string, number: number): readonly string[] {
  const known = LISTS.find((one) => one === list.split(".").at(-1));
  return known === undefined ? [] : [sayLayouts(`layoutChanges.item.${known}`, { number })];
}

function valueWords(path: string, value: unknown): string {
  if (value === undefined) return fallbackWords(spokenField(path));
  if (Array.isArray(value)) return value.length === 0 ? NO_VALUE : `${value.length}`;
  if (isGroup(value)) return groupWords(value);
  const field = spokenField(path);
  if (field?.kind === "choice") return field.options.find((one) => one.value === value)?.label ?? String(value);
  if (field?.kind === "stock") return materialName(String(value));
  if (field?.kind === "flag") return sayLayouts(value === true ? "layoutChanges.yes" : "layoutChanges.no");
  return String(value);
}

function fallbackWords(field: Field | undefined): string {
  return field?.kind === "quantity" && field.fallback !== undefined ? String(field.fallback) : NO_VALUE;
}

/** A whole part that came or went: by its name or kind. */
function groupWords(group: Readonly<Record<string, unknown>>): string {
  const name = group.name ?? group.kind;
  return typeof name === "string" ? name : sayLayouts("layoutChanges.somePart");
}
