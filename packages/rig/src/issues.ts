/** Faults of the schema as issues: where, what was got, what was expected, and what is wrong. */
import type * as z from "zod";
import type { FactValue } from "./fact.ts";
import type { Field } from "./field.ts";
import type { RigFaultParams } from "./fieldSchemas.ts";
import { FIELDS, fieldAt } from "./fields.ts";
import { groupName } from "./groups.ts";
import { nearest } from "./nearest.ts";
import { pathText, valueAt } from "./path.ts";
import { RETIRED_WORDS } from "./retiredWords.ts";
import type { RigIssue } from "./rig.ts";
import { fact, guessed, type RigFact } from "./rigFacts.ts";
import { describeValue, expectedOf as expectedQuantity, parseQuantity } from "./units.ts";

type Fault = z.core.$ZodIssue;

/** Issues of a fault; one for each unknown key. */
export function issuesOf(fault: Fault, document: unknown): RigIssue[] {
  const path = pathText(fault.path);
  const value = valueAt(document, fault.path);
  if (fault.code === "unrecognized_keys")
    return fault.keys.map((key) => unknownKey(path, key, valueAt(document, [...fault.path, key])));
  if (fault.code === "custom") {
    return [{ path, ...(fault.params as RigFaultParams) }];
  }
  if (value === undefined) return [missing(path)];
  if (fault.code === "too_small" || fault.code === "too_big") return [wrongCount(path, value, fault)];
  return [wrongKind(path, value)];
}

/** The issue of a field, group or list that is not there. */
export function missing(path: string): RigIssue {
  const expected = expectedAt(path);
  return { path, got: fact("got.nothing", {}), expected, message: fact("missing", { name: nameAt(path), expected }) };
}

/** What the field, group or list at a path is called. */
function nameAt(path: string): FactValue {
  const name = fieldAt(path)?.label ?? groupName(path);
  return name === undefined ? path : { brought: name };
}

const LIST_NAMES: ReadonlySet<string> = new Set(
  Object.keys(FIELDS).flatMap((path) => [...path.matchAll(/(\w+)\[\]/g)].map((match) => match[1]!)),
);

function expectedAt(path: string): RigFact {
  const field = fieldAt(path);
  if (field) return expectedOf(field);
  if (/(?:ground|curve|branches)\[\d+\]$/.test(path)) return fact("expected.pair", {});
  const name = /(\w+)$/.exec(path)?.[1] ?? "";
  return fact(LIST_NAMES.has(name) ? "expected.list" : "expected.group", {});
}

function expectedOf(field: Field): RigFact {
  switch (field.kind) {
    case "quantity":
      return expectedQuantity(field.dimension);
    case "choice":
      return fact("expected.oneOf", { list: { list: field.options.map(({ value }) => `"${value}"`) } });
    case "flag":
      return fact("expected.flag", {});
    case "basis":
      return fact("expected.basisField", {});
    case "stock":
      return fact("expected.stock", {});
    case "text":
      return fact("expected.text", {});
  }
}

function wrongKind(path: string, value: unknown): RigIssue {
  const field = fieldAt(path);
  const got = describeValue(value);
  const expected = expectedAt(path);
  const name = nameAt(path);
  if (field?.kind === "quantity") {
    const read = parseQuantity(value, field.dimension);
    if (!read.ok) return { path, got, expected: read.expected, message: fact("named", { name, fault: read.message }) };
    return { path, got, expected, message: fact("numberAsText", { name, got }) };
  }
  const renamed = typeof value === "string" ? RETIRED_WORDS.get(value) : undefined;
  if (renamed !== undefined) {
    return { path, got, expected: `"${renamed}"`, message: fact("renamed", { name, got, now: renamed }) };
  }
  if (field?.kind === "choice" && typeof value === "string") {
    const guess = nearest(
      value,
      field.options.map((option) => option.value),
    );
    return { path, got, expected, message: fact("unknownChoice", { name, got, expected }, guessed(guess)) };
  }
  return { path, got, expected, message: fact("needed", { name, expected, got }) };
}

function wrongCount(path: string, value: unknown, fault: Extract<Fault, { code: "too_small" | "too_big" }>): RigIssue {
  const few = fault.code === "too_small";
  const count = Number(few ? fault.minimum : fault.maximum);
  const of = typeof value === "string" ? "Characters" : "Entries";
  const size = typeof value === "string" || Array.isArray(value) ? value.length : 0;
  const expected = fact(few ? `expected.atLeast${of}` : `expected.atMost${of}`, { count });
  const got = fact(typeof value === "string" ? "got.characters" : "got.entries", { count: size });
  return { path, got, expected, message: fact("wrongCount", { name: nameAt(path), expected, size }) };
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
  const whole = group === "";
  const where = { key, group: nameAt(group) };
  const got = fact("got.key", { key, value: describeValue(value) });
  if (keys.includes(key)) {
    const message = whole ? fact("key.otherKindOfRig", { key }) : fact("key.otherKind", where);
    return { path, got, expected: fact("expected.nothing", {}), message };
  }
  const guess = nearest(key, keys);
  const expected = guess ? `"${guess}"` : fact("expected.oneOf", { list: { list: keys } });
  const hint = guessed(guess);
  return {
    path,
    got,
    expected,
    message: whole ? fact("key.unknownInRig", { key }, hint) : fact("key.unknown", where, hint),
  };
}
