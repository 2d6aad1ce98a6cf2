/** Faults of the schema told as issues: where, what was got, what was expected, and a sentence. */
import type * as z from "zod";
import type { Field } from "./field.ts";
import type { FaultParams } from "./fieldSchemas.ts";
import { FIELDS, fieldAt } from "./fields.ts";
import { groupName } from "./groups.ts";
import { nearest } from "./nearest.ts";
import { pathText, valueAt } from "./path.ts";
import { RETIRED_WORDS } from "./retiredWords.ts";
import type { RigIssue } from "./rig.ts";
import { describeValue, expectedText, parseQuantity } from "./units.ts";

type Fault = z.core.$ZodIssue;

/** Issues of a fault; one for each unknown key. */
export function issuesOf(fault: Fault, document: unknown): RigIssue[] {
  const path = pathText(fault.path);
  const value = valueAt(document, fault.path);
  if (fault.code === "unrecognized_keys")
    return fault.keys.map((key) => unknownKey(path, key, valueAt(document, [...fault.path, key])));
  if (fault.code === "custom") {
    const { got, expected } = fault.params as FaultParams;
    return [{ path, got, expected, message: fault.message }];
  }
  if (value === undefined) return [missing(path)];
  if (fault.code === "too_small" || fault.code === "too_big") return [wrongCount(path, value, fault)];
  return [wrongKind(path, value)];
}

/** The issue of a field, group or list that is not there. */
export function missing(path: string): RigIssue {
  const expected = expectedAt(path);
  const name = fieldAt(path)?.label ?? groupName(path) ?? path;
  return { path, got: "nothing", expected, message: `${name}: this is missing; ${expected} is needed here.` };
}

const LIST_NAMES: ReadonlySet<string> = new Set(
  Object.keys(FIELDS).flatMap((path) => [...path.matchAll(/(\w+)\[\]/g)].map((match) => match[1]!)),
);

function expectedAt(path: string): string {
  const field = fieldAt(path);
  if (field) return expectedOf(field);
  if (/(?:ground|curve|branches)\[\d+\]$/.test(path)) return "a pair of values";
  const name = /(\w+)$/.exec(path)?.[1] ?? "";
  return LIST_NAMES.has(name) ? "a list in [ ]" : "a group in { }";
}

function expectedOf(field: Field): string {
  switch (field.kind) {
    case "quantity":
      return expectedText(field.dimension);
    case "choice":
      return `one of ${field.options.map((option) => `"${option.value}"`).join(", ")}`;
    case "flag":
      return "true or false";
    case "basis":
      return 'a basis such as "published: EN 959:2018"';
    case "stock":
      return "the id of a webbing or rope";
    case "text":
      return "a text";
  }
}

function wrongKind(path: string, value: unknown): RigIssue {
  const field = fieldAt(path);
  const got = describeValue(value);
  const expected = expectedAt(path);
  const name = field?.label ?? groupName(path) ?? path;
  if (field?.kind === "quantity") {
    const read = parseQuantity(value, field.dimension);
    if (!read.ok) return { path, got, expected: read.expected, message: `${name}: ${read.message}` };
    return { path, got, expected, message: `${name}: ${got} is a text; write the number without quotes.` };
  }
  const renamed = typeof value === "string" ? RETIRED_WORDS.get(value) : undefined;
  if (renamed !== undefined) {
    const message = `${name}: ${got} is written "${renamed}" now. Replace the word; nothing else of it has changed.`;
    return { path, got, expected: `"${renamed}"`, message };
  }
  if (field?.kind === "choice" && typeof value === "string") {
    const guess = nearest(
      value,
      field.options.map((option) => option.value),
    );
    const hint = guess ? ` Did you mean "${guess}"?` : "";
    return { path, got, expected, message: `${name}: ${got} is not known; it is ${expected}.${hint}` };
  }
  return { path, got, expected, message: `${name}: ${expected} is needed here, not ${got}.` };
}

function wrongCount(path: string, value: unknown, fault: Extract<Fault, { code: "too_small" | "too_big" }>): RigIssue {
  const few = fault.code === "too_small";
  const limit = Number(few ? fault.minimum : fault.maximum);
  const [one, many] = typeof value === "string" ? ["character", "characters"] : ["entry", "entries"];
  const counted = (count: number) => `${count} ${count === 1 ? one : many}`;
  const size = typeof value === "string" || Array.isArray(value) ? value.length : 0;
  const name = fieldAt(path)?.label ?? groupName(path) ?? path;
  const expected = `at ${few ? "least" : "most"} ${counted(limit)}`;
  return { path, got: counted(size), expected, message: `${name}: ${expected}, not ${size}.` };
}

/** Keys that the format has in the group at a path. */
function knownKeys(group: string): string[] {
  const pattern = group.replace(/\[\d+\]/g, "[]");
  const prefix = pattern === "" ? "" : `${pattern}.`;
  const below = Object.keys(FIELDS).filter((path) => path.startsWith(prefix));
  return [...new Set(below.map((path) => path.slice(prefix.length).split(/[.[]/)[0]!))];
}

function unknownKey(group: string, key: string, value: unknown): RigIssue {
  const path = group === "" ? key : `${group}.${key}`;
  const keys = knownKeys(group);
  const where = group === "" ? "a rig" : `"${groupName(group) ?? group}"`;
  const got = `"${key}": ${describeValue(value)}`;
  if (keys.includes(key)) {
    return { path, got, expected: "nothing here", message: `"${key}" does not belong to this kind of ${where}.` };
  }
  const guess = nearest(key, keys);
  const hint = guess ? ` Did you mean "${guess}"?` : "";
  const expected = guess ? `"${guess}"` : `one of ${keys.join(", ")}`;
  return { path, got, expected, message: `There is no "${key}" in ${where}.${hint}` };
}
