/**
 * Which part of a rig is meant, in one vocabulary: strengths, loads, wear records, judgements, sentences and the fields of the
 * document all name a part by its id. Names for people are made of it elsewhere.
 */
import type { Rig } from "./rig.ts";

export type AnchorName = "A" | "B";
export type LineName = "main" | "backup";
export type LineEndId = "endA" | "endB" | "backup.endA" | "backup.endB";
export type AnchorPartId = `anchor${AnchorName}.${"hardware" | "points"}.${number}`;
export type PartId =
  | "harness"
  | "leash"
  | "ring"
  | `ring.${number}`
  | LineName
  | `connection.${number}`
  | LineEndId
  | AnchorPartId;

/** A part id taken apart. `index` counts from 0, in the order of the rig. */
export type PartRef =
  | { readonly kind: "harness" | "leash" }
  | { readonly kind: "ring" | "connection"; readonly index: number }
  | { readonly kind: "webbing"; readonly line: LineName }
  | { readonly kind: "end"; readonly line: LineName; readonly end: AnchorName }
  | { readonly kind: "hardware" | "point"; readonly anchor: AnchorName; readonly index: number };

const INDEX_PATTERN = "(0|[1-9]\\d{0,2})";
const RING_ID = new RegExp(`^ring(?:\\.${INDEX_PATTERN})?$`);
const CONNECTION_ID = new RegExp(`^connection\\.${INDEX_PATTERN}$`);
const END_ID = /^(backup\.)?end([AB])$/;
const ANCHOR_ID = new RegExp(`^anchor([AB])\\.(hardware|points)\\.${INDEX_PATTERN}$`);

/** Takes a part id apart; undefined when the text is none. Whether a rig has such a part is another question: `hasPart`. */
export function partRef(id: string): PartRef | undefined {
  if (id === "harness" || id === "leash") return { kind: id };
  if (id === "main" || id === "backup") return { kind: "webbing", line: id };
  const ring = RING_ID.exec(id);
  if (ring) return { kind: "ring", index: Number(ring[1] ?? 0) };
  const connection = CONNECTION_ID.exec(id);
  if (connection) return { kind: "connection", index: Number(connection[1]) };
  const end = END_ID.exec(id);
  if (end) return { kind: "end", line: end[1] === undefined ? "main" : "backup", end: end[2] as AnchorName };
  const anchor = ANCHOR_ID.exec(id);
  if (!anchor) return undefined;
  const kind = anchor[2] === "points" ? "point" : "hardware";
  return { kind, anchor: anchor[1] as AnchorName, index: Number(anchor[3]) };
}

export const isPartId = (text: string): text is PartId => partRef(text) !== undefined;

/** Every part of a rig in the order of the load's way, from harness to rock; tapes count as connections. */
export function partIds(rig: Rig): readonly PartId[] {
  const rings = rig.rings.map((_, i): PartId => (rig.rings.length === 1 ? "ring" : `ring.${i}`));
  const backup: readonly PartId[] = rig.backup
    ? [...rig.backup.connections.map((_, i): PartId => `connection.${i}`), "backup"]
    : [];
  const ends: readonly PartId[] = rig.backup ? ["endA", "endB", "backup.endA", "backup.endB"] : ["endA", "endB"];
  const anchor = (name: AnchorName): readonly PartId[] => {
    const side = name === "A" ? rig.anchorA : rig.anchorB;
    return [
      ...side.hardware.map((_, i): PartId => `anchor${name}.hardware.${i}`),
      ...side.points.map((_, i): PartId => `anchor${name}.points.${i}`),
    ];
  };
  return ["harness", "leash", ...rings, "main", ...backup, ...ends, ...anchor("A"), ...anchor("B")];
}

/** Tapes carry the slack backup and are made to part: no verdict is on them. */
export function isTape(rig: Rig, id: PartId): boolean {
  const ref = partRef(id);
  return ref?.kind === "connection" && rig.backup?.connections[ref.index]?.kind === "tape";
}

/** Where a part is written in the rig document: "leash", "backup.tapes[2]", "anchorA.points[0]". */
export function partPath(rig: Rig, id: PartId): string {
  const ref = partRef(id)!;
  switch (ref.kind) {
    case "harness":
    case "leash":
      return ref.kind;
    case "ring":
      return `rings[${ref.index}]`;
    case "webbing":
      return `${ref.line}.sections`;
    case "end":
      return `${ref.line}.end${ref.end}`;
    case "connection": {
      // The document has connections and tapes in lists of their own; the rig has the tapes after the connections.
      const before = rig.backup!.connections.slice(0, ref.index).filter((one) => one.kind === "connection").length;
      const tape = rig.backup!.connections[ref.index]?.kind === "tape";
      return tape ? `backup.tapes[${ref.index - before}]` : `backup.connections[${before}]`;
    }
    case "hardware":
      return `anchor${ref.anchor}.hardware[${ref.index}]`;
    case "point":
      return `anchor${ref.anchor}.points[${ref.index}]`;
  }
}

/** The part that a field of the rig document belongs to; undefined for fields of the rig as a whole. */
export function partOfPath(rig: Rig, path: string): PartId | undefined {
  const inside = (prefix: string) => path === prefix || path.startsWith(`${prefix}.`) || path.startsWith(`${prefix}[`);
  return partIds(rig).find((id) => inside(partPath(rig, id)));
}
