/**
 * What a sweep changes: a number of the rig's file by its path there, how many connections there are, or how many months it has been
 * used on. Values are kept in the unit that was asked in, so that what a point changes is written as a rigger would write it.
 */
import {
  acceptsNumber,
  type Dimension,
  editDocument,
  type FactValue,
  FIELDS,
  fieldAt,
  parseQuantity,
  partIds,
  partPath,
  pathSteps,
  pathText,
  type Rig,
  valueAt,
} from "@secondline/rig";
import { assessmentFact } from "../assessment/assessmentFacts.ts";

interface KnobBase {
  /** The knob's name as it was asked for. */
  readonly name: string;
  /** Values of the first and the last point, in `unit`. */
  readonly from: number;
  readonly to: number;
  readonly unit: string;
  /** Whole numbers only. */
  readonly whole: boolean;
}

export type Knob =
  | (KnobBase & { readonly kind: "field"; readonly path: string; readonly dimension: Dimension })
  /** So many copies of the first connection, evenly spaced. */
  | (KnobBase & { readonly kind: "connections" })
  /** Months from the day that counts, at the present rate of use. */
  | (KnobBase & { readonly kind: "months" });

export const KNOB_FAULTS = [
  "form",
  "unknown",
  "notNumber",
  "absent",
  "value",
  "reversed",
  "empty",
  "whole",
  "noConnection",
  "noDay",
  "range",
] as const;

/** Why a text asks for no range, as a fact. */
export interface KnobFault {
  readonly kind: (typeof KNOB_FAULTS)[number];
  readonly text: string;
  /** Path, nearest paths, the fault of a value; by kind. */
  readonly about: FactValue;
  /** The value that is wrong, where it is one of the two alone. */
  readonly end?: "from" | "to";
}

export type KnobReading =
  | { readonly ok: true; readonly knob: Knob }
  | { readonly ok: false; readonly fault: KnobFault };

const FORM = /^\s*([A-Za-z][\w.[\]]*)\s*=\s*(\S.*?)\s*\.\.\s*(\S.*?)\s*$/;
const NUMBER = /^[+\-\u2212]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
/** Beyond this no rig is thought of. */
const MOST_CONNECTIONS = 100;
const MOST_MONTHS = 240;

/** What a range is read against. */
export interface KnobContext {
  readonly rig: Rig;
  readonly document: unknown;
  /** A day was given. */
  readonly dated: boolean;
}

/** Reads `PATH=FROM..TO`. The unit may stand behind the second value alone. */
export function readKnob(text: string, context: KnobContext): KnobReading {
  const no = (kind: KnobFault["kind"], about: FactValue = "", end?: KnobFault["end"]): KnobReading => ({
    ok: false,
    fault: { kind, text, about, ...(end ? { end } : {}) },
  });
  const [, name, first, last] = FORM.exec(text) ?? [];
  if (name === undefined || first === undefined || last === undefined) return no("form");
  if (name === "connections" || name === "months") return counted(name, first, last, context, no);
  const path = pathOf(name, context);
  const field = path === undefined ? undefined : fieldAt(path);
  if (path === undefined || !field) return no("unknown", similar(name));
  if (field.kind !== "quantity") return no("notNumber", { brought: field.label });
  if (!isThere(context.document, path)) return no("absent", path);
  const { dimension } = field;
  const unit = last.replace(NUMBER, "").trim();
  const one = parseQuantity(unit === "" ? 1 : `1 ${unit}`, dimension);
  const read = (end: string) =>
    parseQuantity(/^[\d.eE+\-\u2212]+$/.test(end) && acceptsNumber(dimension) ? Number(end) : end, dimension);
  const start = read(NUMBER.exec(first)?.[0] === first ? `${first} ${unit}`.trim() : first);
  const stop = read(last);
  // A unit behind the second value is that of both: the second one is wrong, though neither can be read.
  if (!stop.ok) return no("value", stop.message, "to");
  if (!start.ok) return no("value", start.message, "from");
  if (!one.ok) return no("value", one.message);
  const inUnit = (value: number) => Number((value / one.value).toPrecision(12));
  const [from, to] = [inUnit(start.value), inUnit(stop.value)];
  const knob: Knob = { kind: "field", name, path, dimension, from, to, unit, whole: dimension === "count" };
  return ordered(knob, no);
}

const plainNumber = (example: string): FactValue => assessmentFact("expected.plainNumberRange", { example });

type No = (kind: KnobFault["kind"], about?: FactValue, end?: KnobFault["end"]) => KnobReading;

function counted(
  name: "connections" | "months",
  first: string,
  last: string,
  { document, dated }: KnobContext,
  no: No,
): KnobReading {
  const plain = /^(\d+(?:\.\d+)?)(?:\s*months?)?$/;
  const read = (text: string) =>
    Number((name === "months" ? plain : /^(\d+(?:\.\d+)?)$/).exec(text)?.[1] ?? Number.NaN);
  const [from, to] = [read(first), read(last)];
  if (Number.isNaN(from) || Number.isNaN(to))
    return no("value", plainNumber(`${name}=0..${name === "months" ? 24 : 5}`), Number.isNaN(from) ? "from" : "to");
  const most = name === "months" ? MOST_MONTHS : MOST_CONNECTIONS;
  if (Math.max(from, to) > most) return no("range", String(most));
  if (name === "months" && !dated) return no("noDay");
  if (name === "connections" && firstConnection(document) === undefined) return no("noConnection");
  return ordered({ kind: name, name, from, to, unit: "", whole: name === "connections" }, no);
}

function ordered(knob: Knob, no: No): KnobReading {
  if (knob.from === knob.to) return no("empty");
  if (knob.from > knob.to)
    return no("reversed", `${knob.name}=${knobText(knob, knob.to)}..${knobText(knob, knob.from)}`);
  if (knob.whole && !(Number.isInteger(knob.from) && Number.isInteger(knob.to))) return no("whole");
  return { ok: true, knob };
}

/** The path in the file: as typed, or of a part by its id: `connection.1.at`. */
function pathOf(name: string, { rig }: KnobContext): string | undefined {
  if (known(name)) return name;
  const part = partIds(rig)
    .filter((id) => name.startsWith(`${id}.`))
    .sort((a, b) => b.length - a.length)[0];
  if (part === undefined) return undefined;
  const path = `${partPath(rig, part)}${name.slice(part.length)}`;
  return known(path) ? path : undefined;
}

function known(path: string): boolean {
  try {
    pathSteps(path);
    return fieldAt(path) !== undefined;
  } catch {
    return false;
  }
}

/** Every item of a list, and every group, on the way to the field is in the file. */
function isThere(document: unknown, path: string): boolean {
  const steps = pathSteps(path);
  return steps.every((_, i) => i === 0 || typeof valueAt(document, pathText(steps.slice(0, i))) === "object");
}

const MOST_SIMILAR = 4;

/** Paths of numbers that have a word of the asked one in them. */
function similar(name: string): string {
  const words = name
    .toLowerCase()
    .split(/[.[\]]+/)
    .filter((word) => word.length > 2);
  const paths = Object.entries(FIELDS).flatMap(([path, field]) => (field.kind === "quantity" ? [path] : []));
  const score = (path: string) => words.filter((word) => path.toLowerCase().includes(word)).length;
  const near = paths.filter((path) => score(path) > 0).sort((a, b) => score(b) - score(a) || a.length - b.length);
  const shown = near.length > 0 ? near : ["backup.slack", "main.pretension", "leash.length", "walker.mass", "span"];
  return [...shown.slice(0, MOST_SIMILAR), "connections", "months"].join(", ");
}

/** Each value stands for itself, and none lies between two. */
export const isApart = ({ kind }: Knob): boolean => kind === "connections";

export const firstConnection = (document: unknown): unknown => valueAt(document, "backup.connections[0]");

/** Values of the points, evenly spaced, in the knob's unit. */
export function knobValues({ from, to, whole }: Knob, count: number): readonly number[] {
  const even = Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
  if (!whole) return even.map((value) => Number(value.toPrecision(6)));
  return [...new Set(even.map(Math.round))];
}

/** "9.4 %", "2.5 kN", "3". */
export function knobText({ unit }: Pick<Knob, "unit">, value: number): string {
  const number = String(Number(value.toPrecision(6)));
  return unit === "" ? number : `${number} ${unit}`;
}

/** The document with the value in it; months change nothing that is written. Throws nothing: what does not fit is told when it is read. */
export function withValue(document: unknown, knob: Knob, value: number): unknown {
  switch (knob.kind) {
    case "months":
      return document;
    case "connections": {
      const first = firstConnection(document) as object;
      const places = Array.from({ length: value }, (_, i) => Number(((i + 1) / (value + 1)).toPrecision(6)));
      return editDocument(
        document,
        "backup.connections",
        places.map((at) => ({ ...first, at })),
      );
    }
    case "field":
      return editDocument(document, knob.path, knob.unit === "" ? value : knobText(knob, value));
  }
}
