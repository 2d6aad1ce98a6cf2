/**
 * Span and rise from what can be measured between two anchors: a line of sight with its level part, a line of sight with its
 * angle, or three lengths to a mark straight below anchor A. Plain trigonometry in the upright plane through both anchors.
 */
import { fieldAt, parseQuantity, quantityText, type RigFact } from "@secondline/rig";
import { metreText } from "../metres.ts";

export const MEASURED_WAYS = ["angle", "level", "plumb"] as const;
export type MeasuredWay = (typeof MEASURED_WAYS)[number];

/** What is asked: `sight` from anchor to anchor, `mark` from the mark below A to B, `plumb` from A down to the mark. */
export type MeasuredField = "sight" | "angle" | "level" | "side" | "plumb" | "mark";

/** What each way asks, in its order. `side`: "higher" or "lower", which of a level part alone nobody can tell. */
export const MEASURED_FIELDS: Readonly<Record<MeasuredWay, readonly MeasuredField[]>> = {
  angle: ["sight", "angle"],
  level: ["sight", "level", "side"],
  plumb: ["sight", "plumb", "mark"],
};
export const SIDES = ["higher", "lower"] as const;

export type MeasuredTexts = Readonly<Partial<Record<MeasuredField, string>>>;

export type MeasuredFault =
  /** It cannot be read; told in the words of the reader of quantities. */
  | { readonly kind: "unread"; readonly at: MeasuredField; readonly message: RigFact }
  | {
      readonly kind: "notPositive" | "levelLonger" | "steep" | "side" | "noTriangle" | "outside";
      readonly at: MeasuredField;
      readonly values: Readonly<Record<string, string>>;
    };

export interface SpanAndRise {
  /** [m] */
  readonly span: number;
  readonly rise: number;
}

export type MeasuredReading =
  | {
      readonly ok: true;
      readonly placed: SpanAndRise;
      /** Span and rise as one would type them, to the centimetre. */
      readonly texts: { readonly span: string; readonly rise: string };
      /** How far span and rise move at most when every length is off by `LENGTH_ERROR` and the angle by `ANGLE_ERROR` [m]. */
      readonly error: SpanAndRise;
      readonly doubts: readonly ("steep" | "loose")[];
    }
  | {
      readonly ok: false;
      readonly faults: readonly MeasuredFault[];
      /** Something is not typed yet: nothing is wrong by that. */
      readonly isWaiting: boolean;
    };

/** A length read from a tape or a rangefinder, and an angle from a clinometer, are easily off by so much [m, rad]; assumed. */
export const LENGTH_ERROR = 0.1;
export const ANGLE_ERROR = Math.PI / 360;
/** A line so steep is unusual [rad]. */
const STEEP_ANGLE = Math.PI / 9;
/** An angle of sight beyond this is no highline [rad]. */
const STEEPEST_ANGLE = (60 * Math.PI) / 180;
/** Rise that is not known better than this share of the span is doubtful [-]. */
const LOOSE_RISE_SHARE = 0.02;

type Numbers = Readonly<Partial<Record<MeasuredField, number>>>;

/** Reads what was typed; every fault at once, each at its field. */
export function readMeasured(way: MeasuredWay, texts: MeasuredTexts): MeasuredReading {
  const faults: MeasuredFault[] = [];
  const numbers: Partial<Record<MeasuredField, number>> = {};
  let isWaiting = false;
  for (const at of MEASURED_FIELDS[way]) {
    const text = texts[at]?.trim() ?? "";
    if (at === "side") readSide(text || "higher", numbers, faults);
    else if (text === "") isWaiting = true;
    else readNumber(at, text, numbers, faults);
  }
  if (faults.length > 0 || isWaiting) return { ok: false, faults, isWaiting };
  const placed = placedBy(way, numbers);
  const fault = placed === undefined ? unclosed(way, numbers) : outOfLimits(placed);
  if (fault || !placed) return { ok: false, faults: fault ? [fault] : [], isWaiting: false };
  const error = errorOf(way, numbers, placed);
  const steep = Math.abs(placed.rise) > Math.tan(STEEP_ANGLE) * placed.span;
  const loose = error.rise > LOOSE_RISE_SHARE * placed.span;
  return {
    ok: true,
    placed,
    texts: { span: metreText(placed.span), rise: metreText(placed.rise) },
    error,
    doubts: [...(steep ? (["steep"] as const) : []), ...(loose ? (["loose"] as const) : [])],
  };
}

function readSide(text: string, numbers: Partial<Record<MeasuredField, number>>, faults: MeasuredFault[]): void {
  if (text === "higher" || text === "lower") numbers.side = text === "higher" ? 1 : -1;
  else faults.push({ kind: "side", at: "side", values: { got: text } });
}

function readNumber(
  at: MeasuredField,
  text: string,
  numbers: Partial<Record<MeasuredField, number>>,
  faults: MeasuredFault[],
): void {
  const read = parseQuantity(text, at === "angle" ? "angle" : "length");
  if (!read.ok) faults.push({ kind: "unread", at, message: read.message });
  else if (at === "angle" && Math.abs(read.value) > STEEPEST_ANGLE) {
    faults.push({ kind: "steep", at, values: { most: quantityText(STEEPEST_ANGLE, "angle", "60 deg") } });
  } else if (at !== "angle" && !(read.value > 0)) faults.push({ kind: "notPositive", at, values: { got: text } });
  else numbers[at] = read.value;
}

/** Undefined where the lengths do not close to a triangle. */
function placedBy(way: MeasuredWay, { sight, angle, level, side, plumb, mark }: Numbers): SpanAndRise | undefined {
  switch (way) {
    case "angle":
      return { span: sight! * Math.cos(angle!), rise: sight! * Math.sin(angle!) };
    case "level":
      return level! > sight! ? undefined : { span: level!, rise: side! * Math.sqrt(sight! ** 2 - level! ** 2) };
    case "plumb": {
      // A at (0, 0), the mark at (0, −p): s² = x² + z² and m² = x² + (z + p)².
      const rise = (mark! ** 2 - sight! ** 2 - plumb! ** 2) / (2 * plumb!);
      const square = sight! ** 2 - rise ** 2;
      return square > 0 ? { span: Math.sqrt(square), rise } : undefined;
    }
  }
}

function unclosed(way: MeasuredWay, { sight, plumb }: Numbers): MeasuredFault {
  if (way === "level") return { kind: "levelLonger", at: "level", values: { sight: metreText(sight!) } };
  const values = { low: metreText(Math.abs(sight! - plumb!)), high: metreText(sight! + plumb!) };
  return { kind: "noTriangle", at: "mark", values };
}

/** The rig's own limits of what is worked out. */
function outOfLimits({ span, rise }: SpanAndRise): MeasuredFault | undefined {
  for (const [path, value] of [
    ["span", span],
    ["rise", rise],
  ] as const) {
    const field = fieldAt(path);
    if (field?.kind !== "quantity" || !field.limits) continue;
    const [low, high] = field.limits;
    if (value >= low && value <= high) continue;
    return { kind: "outside", at: "sight", values: { span: metreText(span), rise: metreText(rise) } };
  }
  return undefined;
}

/** Largest move over all ways in which what was measured can be off; without bound where it would not close any more. */
function errorOf(way: MeasuredWay, numbers: Numbers, placed: SpanAndRise): SpanAndRise {
  const fields = MEASURED_FIELDS[way].filter((at) => at !== "side");
  let [span, rise] = [0, 0];
  for (let signs = 0; signs < 2 ** fields.length; signs++) {
    const off: Partial<Record<MeasuredField, number>> = { ...numbers };
    fields.forEach((at, i) => {
      const by = at === "angle" ? ANGLE_ERROR : LENGTH_ERROR;
      off[at] = numbers[at]! + (signs & (2 ** i) ? by : -by);
    });
    // A level part that comes out longer than the sight is a level line.
    if (way === "level") off.level = Math.min(off.level!, off.sight!);
    const other = placedBy(way, off);
    span = Math.max(span, other ? Math.abs(other.span - placed.span) : Number.POSITIVE_INFINITY);
    rise = Math.max(rise, other ? Math.abs(other.rise - placed.rise) : Number.POSITIVE_INFINITY);
  }
  return { span, rise };
}
