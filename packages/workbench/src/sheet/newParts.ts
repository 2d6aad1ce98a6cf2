/** Parts as the sheet puts them into a rig's document, and what another kind makes of a part that is there. */
import { valueAt } from "@secondline/rig";

/** A group of a document, as it is written. */
export type Written = Readonly<Record<string, unknown>>;

const NO_SOURCE = "assumed: entered without a source";
/** Strengths that a new part begins with; nobody has confirmed them. */
export const NEW_CONNECTION: Written = { strength: "12 kN", basis: NO_SOURCE };
export const NEW_TAPE: Written = { strength: "300 N", basis: NO_SOURCE };
export const NEW_ANCHOR_PART: Written = { strength: "20 kN", basis: NO_SOURCE };

/** More connections than this nobody ties; the document itself takes more. */
export const MOST_CONNECTIONS = 30;

/** What a section of webbing is made of; of one that says nothing, what a new one is. */
export const stockOf = (section: unknown): unknown =>
  (section as { stock?: unknown } | undefined)?.stock ?? "polyester-webbing-25";

/** A backup of the main line's own webbing and ends, to start from. */
export function backupLikeMain(document: unknown): unknown {
  const main = valueAt(document, "main") as { sections?: unknown[]; endA?: unknown; endB?: unknown };
  return { slack: "5 %", sections: [{ stock: stockOf(main.sections?.[0]) }], endA: main.endA, endB: main.endB };
}

/** The backup with its slack or with its length, which a document holds in place of one another; `span` [m]. */
export function withSlackOrLength(backup: Written, way: "slack" | "length", span: number): Written {
  const { slack: _slack, length: _length, ...rest } = backup;
  return { ...rest, [way]: way === "slack" ? "5 %" : `${Number((span * 1.05).toFixed(1))} m` };
}

/** So many places, as far from one another as from the anchors [-]. */
export const evenPlaces = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => Number(((i + 1) / (count + 1)).toFixed(4)));

/** The middle of the widest gap between these places and the anchors [-]. */
export function freePlace(places: readonly number[]): number {
  const sorted = [0, ...places.toSorted((a, b) => a - b), 1];
  const gaps = sorted.slice(1).map((to, i) => ({ width: to - sorted[i]!, middle: (to + sorted[i]!) / 2 }));
  const [widest] = gaps.toSorted((a, b) => b.width - a.width);
  return Number(widest!.middle.toFixed(4));
}

/**
 * The end of a line as another kind of end: it keeps what that kind has too. A knot has the strength of its webbing. What another device
 * was rated for says nothing of this one, so nobody vouches for the number that is left.
 */
export function endOfKind(end: Written, kind: string): Written {
  if (kind === end.kind) return end;
  const { knot: _knot, slipLoad: _slipLoad, clamped: _clamped, strength, basis: _basis, ...common } = end;
  if (kind === "knot") return { ...common, kind, knot: "unknown" };
  return { ...common, kind, ...(strength === undefined ? {} : { strength, basis: NO_SOURCE }) };
}

/** What a kind of wear begins with when it is chosen; fields that the kinds share are kept. */
const WEAR_STARTS: Readonly<Record<string, Written>> = {
  clampMark: { at: "2 m", length: "10 cm", clamped: "1 month" },
  fallZone: { from: "10 m", to: "20 m", falls: 20 },
  stitching: { at: "2 m", length: "20 cm" },
  abrasion: { from: "2 m", to: "2.2 m", depth: "5 %" },
  heat: { from: "2 m", to: "2.2 m", depth: "5 %" },
  cut: { at: "2 m", depth: "10 %" },
};

/** What is written of each kind of wear. */
export const WEAR_FIELDS: Readonly<Record<string, readonly string[]>> = {
  ...Object.fromEntries(Object.entries(WEAR_STARTS).map(([kind, start]) => [kind, Object.keys(start)])),
  clampMark: ["at", "length", "clamped", "load"],
};

/** A worn place as another kind of wear. */
export function wearOfKind(wear: Written, kind: string): Written {
  const start = WEAR_STARTS[kind] ?? {};
  return { kind, ...Object.fromEntries(Object.entries(start).map(([name, value]) => [name, wear[name] ?? value])) };
}

/** A new part of an anchor is like the last one, without the last one's own judgement and without how it is rigged. */
export function likeLast(items: readonly unknown[]): Written {
  const { own: _own, rigged: _rigged, ...like } = (items.at(-1) ?? {}) as Written;
  return like;
}

/** A part of an anchor as another kind: a sling says how it is rigged, another kind takes that out again. */
export function anchorPartOfKind(part: Written, kind: string): Written {
  const { rigged: _, ...other } = part;
  return { ...(kind === "sling" ? part : other), kind };
}
