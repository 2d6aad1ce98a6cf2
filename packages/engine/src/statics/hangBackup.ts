/** A first shape of the backup: catenaries between ends, joints and ring. */
import { bayTension } from "../line/catenary.ts";
import { type Line, runIndexAt } from "../line/line.ts";
import type { Model } from "../line/model.ts";
import { hypot } from "../portable/index.ts";
import { hangPieces } from "./hangPieces.ts";
import type { Numbering } from "./numbering.ts";

/** Hangs the backup in catenaries between ends, joints and ring; returns the ring's node coordinate on it. */
export function hangBackup(
  model: Model,
  backup: Line,
  points: Numbering,
  positions: Float64Array,
  throughRing: boolean,
): number {
  const held = [0, ...model.joints.map((joint) => joint.backup), backup.nodes - 1].sort((a, b) => a - b);
  const ringFraction = model.main.fractions[model.start]!;
  let xi = 0;
  for (let k = 0; k + 1 < held.length; k++) {
    const [from, to] = [held[k]!, held[k + 1]!];
    if (from === to) continue;
    const inBay =
      throughRing &&
      backup.fractions[from]! <= ringFraction &&
      (ringFraction < backup.fractions[to]! || to === backup.nodes - 1);
    if (!inBay)
      hangBay(
        backup,
        points,
        positions,
        points.backup[from]!,
        points.backup[to]!,
        backup.fractions[from]!,
        backup.fractions[to]!,
      );
    else xi = hangThroughRing(backup, points, positions, from, to);
  }
  return xi;
}

/** Nodes strictly between two fractions of the backup, hung between two points. */
function hangBay(
  backup: Line,
  points: Numbering,
  positions: Float64Array,
  p: number,
  q: number,
  f0: number,
  f1: number,
): void {
  const [dx, dy, dz] = [0, 1, 2].map((c) => positions[3 * q + c]! - positions[3 * p + c]!) as [number, number, number];
  const across = Math.max(hypot(dx, dy), 1e-6);
  const nodes = Array.from({ length: backup.nodes }, (_, i) => i).filter(
    (i) => backup.fractions[i]! > f0 + 1e-12 && backup.fractions[i]! < f1 - 1e-12,
  );
  const marks = [f0, ...nodes.map((i) => backup.fractions[i]!), f1];
  const pieces = marks.slice(1).map((to, k) => {
    const from = marks[k]!;
    const run = runAt(backup, 0.5 * (from + to));
    return { length: (to - from) * backup.naturalLength, curve: run.curve, mass: run.material.mass };
  });
  for (const [k, [x, z]] of hangPieces(across, dz, pieces).entries()) {
    const place = [positions[3 * p]! + (x * dx) / across, positions[3 * p + 1]! + (x * dy) / across];
    positions.set([...place, positions[3 * p + 2]! + z], 3 * points.backup[nodes[k]!]!);
  }
}

function runAt(line: Line, fraction: number): Line["runs"][number] {
  const e = Math.min(Math.floor(nodeCoordinate(line, fraction)), line.elements - 1);
  return line.runs[runIndexAt(line, e)]!;
}

/** A bay through the ring: its length is shared so that both sides pull alike. */
function hangThroughRing(backup: Line, points: Numbering, positions: Float64Array, from: number, to: number): number {
  const [left, right, ring] = [points.backup[from]!, points.backup[to]!, points.ring];
  const span = (a: number, b: number) => {
    const d = [0, 1, 2].map((c) => positions[3 * b + c]! - positions[3 * a + c]!) as [number, number, number];
    return { across: Math.max(hypot(d[0], d[1]), 1e-6), up: d[2], chord: hypot(...d) };
  };
  const [one, two] = [span(left, ring), span(ring, right)];
  const [f0, f1] = [backup.fractions[from]!, backup.fractions[to]!];
  const length = (f1 - f0) * backup.naturalLength;
  let share = one.chord / (one.chord + two.chord);
  if (length > one.chord + two.chord) {
    let [low, high] = [one.chord / length, 1 - two.chord / length];
    for (let i = 0; i < 60; i++) {
      share = 0.5 * (low + high);
      const pulls =
        bayTension(one.across, one.up, share * length) > bayTension(two.across, two.up, (1 - share) * length);
      if (pulls) low = share;
      else high = share;
    }
  }
  const middle = f0 + share * (f1 - f0);
  hangBay(backup, points, positions, left, ring, f0, middle);
  hangBay(backup, points, positions, ring, right, middle, f1);
  return nodeCoordinate(backup, middle);
}

/** Continuous node coordinate of a fraction. */
function nodeCoordinate(line: Line, fraction: number): number {
  const { fractions } = line;
  let e = 0;
  while (e < line.elements - 1 && fractions[e + 1]! < fraction) e++;
  const width = fractions[e + 1]! - fractions[e]!;
  return e + (width > 0 ? (fraction - fractions[e]!) / width : 0);
}
