/** Which numbers of a rig can be swept, and a range to begin with: around what the rig has, within what is usual. */
import {
  acceptsNumber,
  type Dimension,
  fieldAt,
  isGroup,
  parseQuantity,
  type QuantityField,
  quantityText,
  type Rig,
  valueAt,
} from "@secondline/rig";
import type { Knob } from "@secondline/scenarios";

/** A number to choose, with the ends of a range as they would be typed. */
export interface SweepNumber {
  /** Name of the knob: a path in the rig's file, `connections` or `months`. */
  readonly name: string;
  readonly kind: Knob["kind"];
  /** The rig's own value, if it has one. */
  readonly now?: string;
  readonly from: string;
  readonly to: string;
}

/** Asked about most, in this order. */
const ASKED_MOST = ["backup.slack", "connections", "main.pretension", "leash.length", "walker.mass", "span"] as const;
/** Never swept: what is required is no property of the rig, and the ground is one shape, not single numbers. */
const NEVER_SWEPT = /^(?:required|ground|stocks|unconfirmed)|\.own\.|\.basis$/;
const MORE_CONNECTIONS = 3;
const LEAST_CONNECTIONS_END = 5;
const MONTHS_RANGE = { from: "0", to: "24" };

/** First the numbers that people ask about most, then every other number of the file. `dated`: months can count from a known day. */
export function sweepNumbers(document: unknown, dated: boolean): readonly SweepNumber[] {
  const paths = numberPaths(document, "");
  const fields = paths.filter((path) => !NEVER_SWEPT.test(path)).flatMap((path) => fieldNumber(document, path) ?? []);
  const connections = connectionsOf(document);
  const all: readonly SweepNumber[] = [
    ...fields,
    ...(connections > 0 ? [connectionsNumber(connections)] : []),
    ...(dated ? [{ name: "months", kind: "months", ...MONTHS_RANGE } as const] : []),
  ];
  const rank = ({ name }: SweepNumber) => {
    const place = (ASKED_MOST as readonly string[]).indexOf(name);
    return place >= 0 ? place : name === "months" ? ASKED_MOST.length : ASKED_MOST.length + 1;
  };
  return all
    .map((one, i) => ({ one, i }))
    .sort((a, b) => rank(a.one) - rank(b.one) || a.i - b.i)
    .map(({ one }) => one);
}

const connectionsOf = (document: unknown): number => {
  const list = valueAt(document, "backup.connections");
  return Array.isArray(list) ? list.length : 0;
};

const connectionsNumber = (count: number): SweepNumber => ({
  name: "connections",
  kind: "connections",
  now: String(count),
  from: "0",
  to: String(Math.max(LEAST_CONNECTIONS_END, count + MORE_CONNECTIONS)),
});

function numberPaths(value: unknown, path: string): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((one, i) => numberPaths(one, `${path}[${i}]`));
  if (isGroup(value))
    return Object.entries(value).flatMap(([key, one]) => numberPaths(one, path === "" ? key : `${path}.${key}`));
  return path !== "" && fieldOf(path) ? [path] : [];
}

function fieldOf(path: string): QuantityField | undefined {
  const field = fieldAt(path);
  return field?.kind === "quantity" ? field : undefined;
}

/** Slack is asked about upwards, to all that is usual: how loose may it be? */
function fieldNumber(document: unknown, path: string): SweepNumber | undefined {
  const field = fieldOf(path)!;
  const written = valueAt(document, path);
  const read = parseQuantity(written, field.dimension);
  if (!read.ok) return undefined;
  const around = rangeAround(read.value, field);
  const [from, to] = path === "backup.slack" ? [around[0], Math.max(around[1], field.natural?.[1] ?? 0)] : around;
  const unit = unitOf(String(written));
  const text = (value: number) => asTyped(value, field.dimension, unit);
  return { name: path, kind: "field", now: String(written), from: text(from), to: text(to) };
}

/** From half to twice the rig's own value, within the usual range; without a value of its own, the whole usual range [SI]. */
function rangeAround(value: number, { natural, limits, dimension }: QuantityField): readonly [number, number] {
  const usual = natural ?? limits;
  if (dimension === "count") return [Math.max(limits[0], Math.floor(value / 2)), Math.max(Math.ceil(2 * value), 5)];
  if (value === 0) return usual;
  const [a, b] = value > 0 ? [value / 2, 2 * value] : [2 * value, value / 2];
  const low = Math.max(limits[0], Math.min(value, Math.max(a, usual[0])));
  const high = Math.min(limits[1], Math.max(value, Math.min(b, usual[1])));
  return low < high ? [low, high] : usual;
}

const unitOf = (text: string): string => /^[\s\d.eE+\-\u2212]*(.*?)\s*$/.exec(text)?.[1] ?? "";

/** A value in the rig's own unit, with two digits. */
function asTyped(value: number, dimension: Dimension, unit: string): string {
  if (unit === "")
    return acceptsNumber(dimension) ? String(Number(value.toPrecision(2))) : quantityText(value, dimension);
  const one = parseQuantity(`1 ${unit}`, dimension);
  return one.ok ? `${Number((value / one.value).toPrecision(2))} ${unit}` : quantityText(value, dimension);
}

/** Whether the rig has what a preset asks about. */
export const canLoosen = (rig: Rig): boolean => rig.backup !== undefined;
export const canDisconnect = ({ backup }: Rig): boolean =>
  backup?.connections.some(({ kind }) => kind !== "tape") ?? false;
