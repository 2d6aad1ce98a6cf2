/** Wear of the rig's file together with that of the record. */
import type { Wear } from "@secondline/rig";
import { wearExtent } from "../parts/webbingWear/wearKinds.ts";
import { laidOver } from "./fallZones.ts";

/** Wear of a section, with the part of the file's damage that counts. */
export interface JoinedWear {
  readonly wear: readonly Wear[];
  /** Damage of the file at places where the record has none of that kind, and its falls if the record has none. */
  readonly kept: readonly (Damage | FallZone)["kind"][];
  /** Damage that is worse in the file than in the record. */
  readonly worse: readonly Damage["kind"][];
}

type Damage = Extract<Wear, { readonly depth: number }>;
type FallZone = Extract<Wear, { kind: "fallZone" }>;

const isDamage = (wear: Wear): wear is Damage => "depth" in wear;
const isFallZone = (wear: Wear): wear is FallZone => wear.kind === "fallZone";

/**
 * The record's wear, and damage of the file: nobody has said that it is gone. Falls of the file count if the record has no
 * entry of falls, not even of 0 falls.
 */
export function withWrittenDamage(
  recorded: readonly Wear[],
  written: readonly Wear[],
  speaksOfFalls: boolean,
): JoinedWear {
  const joined = withDamage(recorded, written);
  const falls = speaksOfFalls ? [] : written.filter(isFallZone);
  return { ...joined, wear: [...joined.wear, ...falls], kept: [...joined.kept, ...falls.map(({ kind }) => kind)] };
}

/** Damage that both have counts once, as the worse of the two. */
function withDamage(recorded: readonly Wear[], written: readonly Wear[]) {
  const wear = [...recorded];
  const kept: Damage["kind"][] = [];
  const worse: Damage["kind"][] = [];
  for (const one of written.filter(isDamage)) {
    const at = wear.findIndex((other) => other.kind === one.kind && overlap(one, other));
    const same = wear[at];
    if (same === undefined || !isDamage(same)) {
      kept.push(one.kind);
      wear.push(one);
      continue;
    }
    if (one.depth > same.depth) worse.push(one.kind);
    wear[at] = worseOf(same, one);
  }
  return { wear, kept, worse };
}

/** All of both: the record's falls are added to the file's, marks stand side by side, and damage that both have counts once, as the worse of the two. */
export function withAllWritten(recorded: readonly Wear[], written: readonly Wear[]): JoinedWear {
  const zones = withFalls(recorded.filter(isFallZone), written.filter(isFallZone));
  const marks = (list: readonly Wear[]) => list.filter((one) => !isFallZone(one) && !isDamage(one));
  const both = [...zones, ...marks(written), ...recorded.filter((one) => !isFallZone(one))];
  return { ...withDamage(both, written), kept: [] };
}

/**
 * The file's zones stay as they are, with the falls of the record added in each. Falls of the record beside them make zones of
 * their own.
 */
function withFalls(recorded: readonly FallZone[], written: readonly FallZone[]): FallZone[] {
  const within = (zone: FallZone) =>
    recorded.flatMap(({ from, to, ...falls }) => {
      const shared = { ...falls, from: Math.max(from, zone.from), to: Math.min(to, zone.to) };
      return shared.from < shared.to ? [shared] : [];
    });
  // Zones of the file without falls only cut the record's zones into pieces.
  const pieces = laidOver([...recorded, ...written.map((zone) => ({ ...zone, falls: 0 }))]);
  const beside = pieces.filter(({ from, to }) => !written.some((zone) => zone.from < to && zone.to > from));
  return [...written.flatMap((zone) => laidOver([zone, ...within(zone)])), ...beside];
}

function overlap(a: Wear, b: Wear): boolean {
  const [[from, to], [start, end]] = [wearExtent(a), wearExtent(b)];
  return from <= end && to >= start;
}

/** A cut stays where the record has it; a stretch takes in both. */
function worseOf(recorded: Damage, written: Damage): Damage {
  const depth = Math.max(recorded.depth, written.depth);
  if (recorded.kind === "cut" || written.kind === "cut") return { ...recorded, depth };
  return { ...recorded, from: Math.min(recorded.from, written.from), to: Math.max(recorded.to, written.to), depth };
}
