/** What a field is, and the fields that many parts have in common. Limits and ranges are in SI units. */
import { acceptsNumber, type Dimension, exampleText, quantityText, YEAR_SECONDS } from "./units.ts";

interface FieldBase {
  readonly label: string;
  readonly help: string;
}
/** A number, with a unit in the text unless the dimension has none. */
export interface QuantityField extends FieldBase {
  readonly kind: "quantity";
  readonly dimension: Dimension;
  /** Smallest and largest value accepted. */
  readonly limits: readonly [number, number];
  /** Range that is usual: for a slider. */
  readonly natural?: readonly [number, number];
  /** Why nothing below the limits can be, when that says more than the limits do. */
  readonly tooLow?: string;
  /** Taken when the field is left out, as it would be typed. */
  readonly fallback?: string | number;
}
export interface ChoiceField extends FieldBase {
  readonly kind: "choice";
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** What leaving it out amounts to. */
  readonly fallback?: string;
}
export interface TextField extends FieldBase {
  readonly kind: "text";
  readonly longest: number;
}
export interface FlagField extends FieldBase {
  readonly kind: "flag";
}
/** Where a number comes from: "published: EN 959:2018". */
export interface BasisField extends FieldBase {
  readonly kind: "basis";
}
/** The id of a webbing or rope: one of the document's own stocks or a built-in one. */
export interface StockField extends FieldBase {
  readonly kind: "stock";
}
export type Field = QuantityField | ChoiceField | TextField | FlagField | BasisField | StockField;
export type FieldTable = Readonly<Record<string, Field>>;

export const BASIS_HELP =
  "Where the number comes from: published, tested, common practice, from memory or assumed, then a colon and the source.";

/** Fields of a part's rated strength, at `prefix`. */
export function ratedFields(prefix: string, what: string, natural: readonly [number, number]): FieldTable {
  return {
    [`${prefix}.strength`]: {
      kind: "quantity",
      label: "Rated strength",
      dimension: "force",
      limits: [10, 2e6],
      natural,
      help: `What ${what} holds as new.`,
    },
    [`${prefix}.basis`]: { kind: "basis", label: "Basis", help: BASIS_HELP },
  };
}

/** Fields of what has happened to a part, at `prefix`. */
export function conditionFields(prefix: string): FieldTable {
  return {
    [`${prefix}.outside`]: {
      kind: "quantity",
      label: "Time outside",
      dimension: "time",
      limits: [0, 50 * YEAR_SECONDS],
      natural: [0, 3 * YEAR_SECONDS],
      help: "How long it has been in the open, all seasons together. Leave it out only when nobody knows.",
    },
    [`${prefix}.sun`]: {
      kind: "quantity",
      label: "Sun",
      dimension: "share",
      limits: [0, 1],
      natural: [0, 1],
      help: "Share of the daylight that falls on it: 0 % in deep shade, 100 % in full sun, which is taken when it is left out.",
    },
    [`${prefix}.age`]: {
      kind: "quantity",
      label: "Age",
      dimension: "time",
      limits: [0, 50 * YEAR_SECONDS],
      natural: [0, 10 * YEAR_SECONDS],
      help: "Time since it was made. Leave it out only when nobody knows.",
    },
    [`${prefix}.wet`]: {
      kind: "flag",
      label: "Wet when loaded",
      help: "Polyamide holds less when it is wet. Say no for a part that is never loaded wet; left out, it counts as wet.",
    },
  };
}

/** Fields of what its owner thinks of a part, at `prefix`. */
export function ownFields(prefix: string): FieldTable {
  return {
    [`${prefix}.own.factor`]: {
      kind: "quantity",
      label: "Own factor",
      dimension: "ratio",
      limits: [0.01, 1.5],
      natural: [0.3, 1],
      help: "Your own factor on the strength of this part: below 1 when you doubt it. Above 1 raises it, and every result says so. Left out beside a reason, the cautious factor for an unknown part is taken.",
    },
    [`${prefix}.own.reason`]: {
      kind: "text",
      label: "Why",
      longest: 200,
      help: "Why you doubt this part, or how you know better; shown with every result that rests on it.",
    },
  };
}

/** Knots known by name, for the leash and for a line's end. */
export const KNOTS = [
  { value: "figureEight", label: "Figure-eight loop" },
  { value: "barrel", label: "Barrel knot" },
  { value: "bowline", label: "Bowline" },
  { value: "overhand", label: "Overhand" },
  { value: "butterfly", label: "Butterfly" },
  { value: "doubleFisherman", label: "Double fisherman" },
  { value: "waterKnot", label: "Water knot" },
  { value: "unknown", label: "Some other knot" },
] as const;

/** A value as it could be typed into a field: its default, or one from its usual range. */
export function fieldExample(field: QuantityField): string | number {
  if (field.fallback !== undefined) return field.fallback;
  if (!field.natural)
    return acceptsNumber(field.dimension) ? Number(exampleText(field.dimension)) : exampleText(field.dimension);
  const middle = (field.natural[0] + field.natural[1]) / 2;
  const text = quantityText(middle, field.dimension, undefined, 2);
  return acceptsNumber(field.dimension) ? Number(text) : text;
}
