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

const descriptions: (() => void)[] = [];

/** What editors and the published schema are told of a field; worked out only when somebody writes the schema. */
function described<T extends z.ZodType>(schema: T, about: () => z.core.GlobalMeta): T {
  descriptions.push(() => z.globalRegistry.add(schema, about()));
  return schema;
}

/** Hangs the descriptions of all fields on their schemas. */
export function describeFields(): void {
  for (const describe of descriptions.splice(0)) describe();
}

const titled = ({ label, help }: Field) => ({ title: label, description: help });

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
  return { read, about: () => aboutQuantity(f), dimension: f.dimension };
}

/** A quantity with a unit: text. */
export function measured(path: string) {
  const { read, about } = quantity(path);
  return described(z.string(), () => ({ ...about(), pattern: QUANTITY_PATTERN })).transform(read);
}
/** A place along a line: 0 to 1, or per cent. */
export function position(path: string) {
  const { read, about } = quantity(path);
  return described(z.union([z.number(), z.string()]), about).transform(read);
}
/** A number without a unit. */
export function bare(path: string) {
  const { read, about, dimension } = quantity(path);
  if (!acceptsNumber(dimension)) throw new Error(`${path} has a unit`);
  return described(z.number(), about).transform(read);
}
export function text(path: string) {
  const f = field(path, "text");
  return described(z.string().max(f.longest), () => titled(f));
}
export function flag(path: string) {
  const f = field(path, "flag");
  return described(z.boolean(), () => titled(f));
}
export function choice<T extends string>(path: string) {
  const f: ChoiceField = field(path, "choice");
  const values = f.options.map((option) => option.value) as [T, ...T[]];
  return described(z.enum(values), () => ({
    ...titled(f),
    ...(f.fallback === undefined ? {} : { default: f.fallback }),
  }));
}
export function stockId(path: string) {
  const f = field(path, "stock");
  return described(z.string().min(1), () => titled(f));
}
export function basis(path: string) {
  const f = field(path, "basis");
  return described(z.string(), () => ({ ...titled(f), pattern: BASIS_PATTERN })).transform((value, ctx): Basis => {
    const read = parseBasis(value);
    if (read) return read;
    const expected = fact("expected.basisKinds", { list: { list: BASIS_KINDS } });
    const params: RigFaultParams = { got: describeValue(value), expected, message: fact("basisKinds", { expected }) };
    ctx.addIssue({ code: "custom", params });
    return z.NEVER;
  });
}
