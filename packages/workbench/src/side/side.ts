/** A rig's document seen from the side: the points that a hand can move in a drawing. */
import { parseQuantity, valueAt } from "@secondline/rig";

/** Distance from anchor A and height against it [m]. */
export type Point = readonly [x: number, z: number];

export interface Site {
  /** [m] */
  readonly span: number;
  readonly rise: number;
}

export interface SideView {
  readonly site: Site;
  /** The ground from A to B; empty where the document gives none. */
  readonly points: readonly Point[];
  /** Where the connections are, as the document lists them [m from A]. */
  readonly connections: readonly number[];
}

const lengthOf = (value: unknown): number | undefined => {
  const read = parseQuantity(value, "length");
  return read.ok ? read.value : undefined;
};

/** Undefined while a needed value cannot be read: then nothing can be drawn. */
export function sideOf(document: unknown): SideView | undefined {
  const [span, rise] = [lengthOf(valueAt(document, "span")), lengthOf(valueAt(document, "rise") ?? "0 m")];
  if (span === undefined || !(span > 0) || rise === undefined) return undefined;
  const points = listAt(document, "ground").map((point): Point | undefined => {
    const [x, z] = Array.isArray(point) ? point.map(lengthOf) : [];
    return x === undefined || z === undefined ? undefined : [x, z];
  });
  const connections = listAt(document, "backup.connections").map((part) => {
    const read = parseQuantity((part as { at?: unknown } | null)?.at, "position");
    return read.ok ? read.value * span : undefined;
  });
  if (!isWhole(points) || !isWhole(connections)) return undefined;
  return { site: { span, rise }, points, connections };
}

function listAt(document: unknown, path: string): readonly unknown[] {
  const list = valueAt(document, path);
  return Array.isArray(list) ? list : [];
}

const isWhole = <T>(list: readonly (T | undefined)[]): list is readonly T[] => !list.includes(undefined);
