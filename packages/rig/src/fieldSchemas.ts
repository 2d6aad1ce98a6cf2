/** Schemas of single fields, made from the field table: each checks one value and turns it into SI units. */
import * as z from "zod";
import { BASIS_KINDS, BASIS_PATTERN, parseBasis } from "./basis.ts";
import { type ChoiceField, type Field, fieldExample, type QuantityField } from "./field.ts";
import { FIELDS } from "./fields.ts";
import { checkLimits } from "./limits.ts";
import type { Basis, RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";
import { acceptsNumber, describeValue, parseQuantity, quantityText } from "./units.ts";

// Nothing is evaluated: a page may forbid it, and a check that is only tried breaks its policy.
z.config({ jitless: true });

function field<K extends Field["kind"]>(path: string, kind: K): Extract<Field, { kind: K }> {
  const found = FIELDS[path];
  if (found?.kind !== kind) throw new Error(`The field table has no ${kind} at ${path}`);
  return found as Extract<Field, { kind: K }>;
}

/** What `params` of an issue of ours hold; made into a `RigIssue` in `issues.ts`. */
export type RigFaultParams = Omit<RigIssue, "path">;

/** A number and a unit, for editors that know JSON Schema; which units there are is checked when the file is read. */
const QUANTITY_PATTERN = "^\\s*[+\\-\u2212]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?\\s*[A-Za-z%°µ].*$";

/** What editors and the published schema are told about a quantity. */
function aboutQuantity(f: QuantityField) {
  const [least, most] = f.limits;
  const high = quantityText(most, f.dimension);
  const low = quantityText(least, f.dimension, least === 0 ? high : undefined);
  return {
    title: f.label,
    description: `${f.help} From ${low} to ${high}.`,
    examples: [fieldExample(f)],
    ...(f.fallback === undefined ? {} : { default: f.fallback }),
  };
}

/** A number with its unit, read into SI. */
function quantity(path: string) {
  const f = field(path, "quantity");
  const read = (value: string | number, ctx: z.RefinementCtx): number => {
    const result = parseQuantity(value, f.dimension);
    const fault = result.ok ? checkLimits(result.value, f, value) : result;
    if (result.ok && !fault) return result.value;
    const { got, expected, message } = fault!;
    const said = result.ok ? message : fact("named", { name: { brought: f.label }, fault: message });
    ctx.addIssue({ code: "custom", params: { got, expected, message: said } satisfies RigFaultParams });
    return z.NEVER;
  };
  return { read, about: aboutQuantity(f), dimension: f.dimension };
}

/** A quantity with a unit: text. */
export function measured(path: string) {
  const { read, about } = quantity(path);
  return z
    .string()
    .meta({ ...about, pattern: QUANTITY_PATTERN })
    .transform(read);
}
/** A place along a line: 0 to 1, or per cent. */
export function position(path: string) {
  const { read, about } = quantity(path);
  return z.union([z.number(), z.string()]).meta(about).transform(read);
}
/** A number without a unit. */
export function bare(path: string) {
  const { read, about, dimension } = quantity(path);
  if (!acceptsNumber(dimension)) throw new Error(`${path} has a unit`);
  return z.number().meta(about).transform(read);
}
export function text(path: string) {
  const f = field(path, "text");
  return z.string().max(f.longest).meta({ title: f.label, description: f.help });
}
export function flag(path: string) {
  const f = field(path, "flag");
  return z.boolean().meta({ title: f.label, description: f.help });
}
export function choice<T extends string>(path: string) {
  const f: ChoiceField = field(path, "choice");
  const values = f.options.map((option) => option.value) as [T, ...T[]];
  return z.enum(values).meta({
    title: f.label,
    description: f.help,
    ...(f.fallback === undefined ? {} : { default: f.fallback }),
  });
}
export function stockId(path: string) {
  const f = field(path, "stock");
  return z.string().min(1).meta({ title: f.label, description: f.help });
}
export function basis(path: string) {
  const f = field(path, "basis");
  return z
    .string()
    .meta({ title: f.label, description: f.help, pattern: BASIS_PATTERN })
    .transform((value, ctx): Basis => {
      const read = parseBasis(value);
      if (read) return read;
      const expected = fact("expected.basisKinds", { list: { list: BASIS_KINDS } });
      const params: RigFaultParams = { got: describeValue(value), expected, message: fact("basisKinds", { expected }) };
      ctx.addIssue({ code: "custom", params });
      return z.NEVER;
    });
}
