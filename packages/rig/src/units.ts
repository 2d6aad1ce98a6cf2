/**
 * Quantities as people write them: a number and a unit ("2.5 kN", "540 lbf", "4 %"). The number is read here, strictly;
 * the unit is looked up by mathjs's unit reader. The expression evaluator of mathjs is not even loaded.
 */
import { createUnitClass, type UnitClass } from "mathjs";
import type { FactValue } from "./fact.ts";
import { visibleText } from "./hiddenCharacters.ts";
import { nearest } from "./nearest.ts";
import { fact, guessed, type RigFact } from "./rigFacts.ts";

/** What a number measures. `share` is written in per cent, `position` as 0 to 1 or in per cent, the last two are bare. */
export type Dimension =
  | "length"
  | "force"
  | "mass"
  | "massPerLength"
  | "angle"
  | "time"
  | "stiffness"
  | "share"
  | "position"
  | "ratio"
  | "count";

export type ReadQuantity =
  | { readonly ok: true /** SI value. */; readonly value: number }
  | { readonly ok: false; readonly got: FactValue; readonly expected: FactValue; readonly message: RigFact };

interface DimensionWords {
  readonly example: string;
  /** Units offered when one is unknown; the first is used to suggest a fix for a bare number. */
  readonly units: readonly string[];
  /** Powers of mass, length, time, angle. */
  readonly powers?: readonly [number, number, number, number];
}

const DIMENSION_WORDS: Readonly<Record<Dimension, DimensionWords>> = {
  length: {
    example: "60 m",
    units: ["m", "cm", "mm", "km", "ft", "feet", "in", "inch", "yd"],
    powers: [0, 1, 0, 0],
  },
  force: {
    example: "2.5 kN",
    units: ["kN", "N", "daN", "kgf", "lbf", "kip"],
    powers: [1, 1, -2, 0],
  },
  mass: { example: "80 kg", units: ["kg", "g", "lb", "lbs", "oz"], powers: [1, 0, 0, 0] },
  massPerLength: {
    example: "0.06 kg/m",
    units: ["kg/m", "g/m", "lb/ft", "oz/ft"],
    powers: [1, -1, 0, 0],
  },
  angle: { example: "40 deg", units: ["deg", "rad"], powers: [0, 0, 0, 1] },
  time: {
    example: "14 months",
    units: ["months", "month", "years", "year", "weeks", "week", "days", "day", "hours", "hour", "h", "s", "ms"],
    powers: [0, 0, 1, 0],
  },
  stiffness: { example: "800 kN/m", units: ["kN/m", "N/m", "MN/m"], powers: [1, 0, -2, 0] },
  share: { example: "4 %", units: ["%"] },
  position: { example: "0.5", units: ["%"] },
  ratio: { example: "0.15", units: [] },
  count: { example: "12", units: [] },
};

/** Units that are offered for a dimension, the usual one first. */
export const unitsOf = (dimension: Dimension): readonly string[] => DIMENSION_WORDS[dimension].units;

/** What a value of a dimension looks like, for messages and hints. */
export const expectedOf = (dimension: Dimension): RigFact => fact(`expected.${dimension}`, {});

/** What a dimension is called. */
const nounOf = (dimension: Dimension): RigFact => fact(`noun.${dimension}`, {});

/** An example of a value as it is typed, for an empty field. */
export function exampleText(dimension: Dimension): string {
  return DIMENSION_WORDS[dimension].example;
}

/** True where a bare JSON number is allowed. */
export function acceptsNumber(dimension: Dimension): boolean {
  return dimension === "position" || dimension === "ratio" || dimension === "count";
}

let unitClass: UnitClass | undefined;
/** mathjs's unit table over plain numbers. Made on first use, so that a program that reads no units does not pay for it. */
function units(): UnitClass {
  unitClass ??= createUnitClass({
    config: { number: "number", predictable: false },
    addScalar: (a: number, b: number) => a + b,
    subtractScalar: (a: number, b: number) => a - b,
    multiplyScalar: (a: number, b: number) => a * b,
    divideScalar: (a: number, b: number) => a / b,
    pow: (a: number, b: number) => a ** b,
    abs: Math.abs,
    fix: Math.trunc,
    round: Math.round,
    equal: (a: number, b: number) => a === b,
    isNumeric: (x: unknown) => typeof x === "number",
    format: String,
    number: Number,
    // mathjs wants these classes for number types and units (degC, the imaginary unit) that no field here accepts.
    Complex: { I: null },
    BigNumber: class {},
    Fraction: class {},
  });
  return unitClass;
}

interface KnownUnit {
  readonly factor: number;
  readonly powers: readonly number[];
}
const known = new Map<string, KnownUnit | undefined>();
const MOST_KNOWN_UNITS = 500;

/** SI factor and dimension of a unit, or undefined when there is no such unit. */
function lookUp(unit: string): KnownUnit | undefined {
  if (known.has(unit)) return known.get(unit);
  let found: KnownUnit | undefined;
  try {
    const { value, dimensions: d } = units().parse(`1 ${unit}`);
    const others = (d[3] ?? 0) + (d[4] ?? 0) + (d[5] ?? 0) + (d[6] ?? 0) + (d[8] ?? 0);
    if (typeof value === "number" && Number.isFinite(value) && others === 0) {
      found = { factor: value, powers: [d[0] ?? 0, d[1] ?? 0, d[2] ?? 0, d[7] ?? 0] };
    }
  } catch {
    found = undefined;
  }
  if (known.size < MOST_KNOWN_UNITS) known.set(unit, found);
  return found;
}

const NUMBER_PATTERN = /^[+\-\u2212]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/;
const UNIT_PATTERN = /^[A-Za-z%°µ][A-Za-z0-9 /*^()%°µ-]*$/;
/** A longer text is quoted only up to here [letters]. */
const LONGEST_QUANTITY = 60;

function refuse(dimension: Dimension, got: FactValue, message: RigFact): ReadQuantity {
  return { ok: false, got, expected: expectedOf(dimension), message };
}

/** A value as it appears in a message: short, quoted when it is text. */
export function describeValue(value: unknown): FactValue {
  if (value === undefined) return fact("got.nothing", {});
  if (typeof value === "string") {
    return `"${visibleText(value.length > LONGEST_QUANTITY ? `${value.slice(0, LONGEST_QUANTITY)}…` : value)}"`;
  }
  if (typeof value === "number" || typeof value === "boolean" || value === null) return String(value);
  return Array.isArray(value) ? fact("got.list", { count: value.length }) : fact("got.group", {});
}

/**
 * Reads one quantity in SI units. `value` is what stands in the document or what was typed into a field; a bare number is
 * accepted only where the dimension has no unit. Never throws; a fault is returned as data.
 */
export function parseQuantity(value: unknown, dimension: Dimension): ReadQuantity {
  const got = describeValue(value);
  const expected = expectedOf(dimension);
  if (typeof value === "number") return bareNumber(value, dimension, got);
  if (typeof value !== "string") {
    return refuse(dimension, got, fact("quantity.needed", { expected, got }));
  }
  const text = value.trim();
  if (text === "") return refuse(dimension, got, fact("quantity.empty", { expected }));
  if (text.length > LONGEST_QUANTITY) return refuse(dimension, got, fact("quantity.long", { expected }));
  const digits = NUMBER_PATTERN.exec(text)?.[0];
  if (digits === undefined) {
    return refuse(dimension, got, fact("quantity.noNumber", { got, expected }));
  }
  const rest = text.slice(digits.length).trim();
  if (/^,\s*\d/.test(rest)) {
    return refuse(dimension, got, fact("quantity.comma", { got }));
  }
  const number = Number(digits.replace("\u2212", "-"));
  if (!Number.isFinite(number)) return refuse(dimension, got, fact("number.tooLarge", { got }));
  if (tooSmall(number, digits)) return refuse(dimension, got, fact("number.tooSmall", { got }));
  return withUnit(number, rest, dimension, got);
}

/** Least number that is held with all its digits [-]. */
const LEAST_NORMAL = 2 ** -1022;

/** True for a number that was written as other than 0 but is held as 0 or with digits missing. */
export function tooSmall(number: number, written: string): boolean {
  if (number === 0) return /[1-9]/.test(written.split(/[eE]/)[0]!);
  return Math.abs(number) < LEAST_NORMAL;
}

/** Whether a bare number may be a share of all as well as per cent: half of the sun is not half a per cent of it. */
export const mayBeOfAll = (number: number, dimension: Dimension): boolean =>
  dimension === "share" && Math.abs(number) <= 1;

function bareNumber(number: number, dimension: Dimension, got: FactValue): ReadQuantity {
  if (!Number.isFinite(number)) return refuse(dimension, got, fact("number.infinite", { got }));
  if (!acceptsNumber(dimension)) {
    const { example: usual, units } = DIMENSION_WORDS[dimension];
    const example = mayBeOfAll(number, dimension) ? usual : `${number} ${units[0]}`;
    return refuse(dimension, got, fact("quantity.noUnit", { got, noun: nounOf(dimension), example }));
  }
  if (dimension === "count" && !Number.isInteger(number)) {
    return refuse(dimension, got, fact("number.notWhole", { got }));
  }
  return { ok: true, value: number };
}

function withUnit(number: number, unit: string, dimension: Dimension, got: FactValue): ReadQuantity {
  const expected = expectedOf(dimension);
  if (unit === "") return bareNumber(number, dimension, got);
  if (unit === "%") {
    if (dimension === "share" || dimension === "position") return { ok: true, value: number / 100 };
    return refuse(dimension, got, fact("quantity.percent", { got, expected }));
  }
  const { powers, units: offered } = DIMENSION_WORDS[dimension];
  if (!powers) return refuse(dimension, got, fact("quantity.unitTooMuch", { got, expected }));
  const found = UNIT_PATTERN.test(unit) ? lookUp(unit.replace(/^°$/, "deg")) : undefined;
  if (!found) {
    const hint = guessed(nearest(unit, offered));
    return refuse(dimension, got, fact("quantity.unitUnknown", { unit, expected }, hint));
  }
  if (found.powers.some((p, i) => p !== powers[i])) {
    const kind = dimensionOf(found.powers);
    const is = kind
      ? fact("quantity.otherDimension", { got, noun: nounOf(kind), expected })
      : fact("quantity.otherMeasure", { unit, expected });
    return refuse(dimension, got, is);
  }
  const value = number * found.factor;
  if (!Number.isFinite(value)) return refuse(dimension, got, fact("number.tooLarge", { got }));
  return { ok: true, value };
}

function dimensionOf(powers: readonly number[]): Dimension | undefined {
  const all = Object.keys(DIMENSION_WORDS) as Dimension[];
  return all.find((d) => DIMENSION_WORDS[d].powers?.every((p, i) => p === powers[i]));
}

/** Seconds in a month, a twelfth of a year of 365.25 days, as mathjs has it [s]. */
export const MONTH_SECONDS = (365.25 * 86400) / 12;
/** Seconds in a year of 365.25 days [s]. */
export const YEAR_SECONDS = 365.25 * 86400;

/** Unit that suits a size, from the smallest value on that it is used for. */
const UNIT_FROM_SIZE: Partial<Record<Dimension, readonly (readonly [from: number, unit: string])[]>> = {
  length: [
    [0.1, "m"],
    [0, "mm"],
  ],
  force: [
    [1000, "kN"],
    [0, "N"],
  ],
  mass: [
    [1, "kg"],
    [0, "g"],
  ],
  time: [
    [2 * YEAR_SECONDS, "years"],
    [0.5 * MONTH_SECONDS, "months"],
    [0.5 * 86400, "days"],
    [0.1, "s"],
    [0, "ms"],
  ],
};

function unitFor(value: number, dimension: Dimension): string {
  const usual = DIMENSION_WORDS[dimension].units[0] ?? "";
  if (value === 0) return usual;
  return UNIT_FROM_SIZE[dimension]?.find(([from]) => Math.abs(value) >= from)?.[1] ?? usual;
}

/**
 * The SI value as text in the unit that `like` is written in ("2.5 kN" stays in kN, "540 lbf" in lbf), or in a unit that
 * suits its size; `digits` significant digits at most. For sliders: the file keeps the user's unit.
 */
export function quantityText(value: number, dimension: Dimension, like?: string, digits = 6): string {
  const short = (x: number) => String(Number(x.toPrecision(digits)));
  if (acceptsNumber(dimension) && !like?.includes("%")) return short(value);
  if (dimension === "share" || dimension === "position") return `${short(value * 100)} %`;
  const own = like === undefined ? "" : like.trim().replace(NUMBER_PATTERN, "").trim();
  const usable = own !== "" && parseQuantity(`1 ${own}`, dimension).ok;
  const unit = usable ? own : unitFor(value, dimension);
  const factor = lookUp(unit.replace(/^°$/, "deg"))?.factor ?? 1;
  return `${short(value / factor)} ${unit}`;
}
