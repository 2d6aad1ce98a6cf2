/**
 * The rig at rest: turns a model into a statics problem, with starting shapes from catenaries, and reads the answer back.
 */
import { bayTension } from "../catenary.ts";
import { GRAVITY } from "../constants.ts";
import { anchorOf, chordDirection, type Line, type Model } from "../model.ts";
import { tensionAt, tensionCurve } from "../tensionCurve.ts";
import {
  type Contact,
  findEquilibrium,
  type Spring,
  type StaticsProblem,
  type StaticsResult,
  type Strut,
} from "./equilibrium.ts";
import { hangPieces } from "./hangPieces.ts";
import type { LegRest, Legs } from "./legs.ts";

/** What hangs on the line. */
export type Loading =
  /** Nothing: the bare rig, no ring. */
  | "bare"
  /** Walker and ring weigh on the one node where the walker is. */
  | "onNode"
  /** The walker hangs from the ring, which acts on the line as it does in motion. */
  | "onRing"
  /** The walker stands on the node; the ring hangs on the line as it does in motion. */
  | "standing";

export interface Rest {
  readonly ok: boolean;
  readonly iterations: number;
  /** Largest unbalanced force [N] and where it is, in words. */
  readonly residual: number;
  readonly worst: string;
  /** xyz of every node [m]. */
  readonly main: Float64Array;
  readonly backup: Float64Array;
  readonly ring: Float64Array;
  readonly masters: { readonly A: Float64Array; readonly B: Float64Array };
  /** Ring's node coordinate on each line. */
  readonly xiMain: number;
  readonly xiBackup: number;
  /** Tension of the main line's first element [N]. */
  readonly tension: number;
}

/** Stiffness that stands for a fixed direction of an elastic anchor [N/m]. */
const HELD = 1e9;
/** A contact about as soft as a slack line is across itself [N/m]. */
const SOFT = 300;
/** How far the easing is taken, as a share of the largest tension [-]. */
const EASED = 1e-4;

/** Which point each node is; joined nodes share one. Rock points of the legs come last. */
interface Numbering {
  readonly main: readonly number[];
  readonly backup: readonly number[];
  readonly ring: number;
  readonly masters: { readonly A: number; readonly B: number };
  readonly rocks: { readonly A: readonly number[]; readonly B: readonly number[] };
  readonly count: number;
}

/** Equilibrium under a loading. `contact` is the stiffness of the ring against the lines [N/m]. */
export function restOf(model: Model, loading: Loading, contact: { main: number; backup: number }, legs: Legs): Rest {
  const { problem, main, backup } = model;
  const points = numberPoints(model, legs);
  const statics = emptyStatics(points);
  const { positions, fixed } = statics;
  loadPoints(model, loading, points, statics.loads);
  const springs = holdEnds(model, points, statics, legs);
  const struts = [...legStruts(legs, points), ...strutsOf(main, points.main)];
  layStraight(main, points.main, problem.span, problem.rise, positions);
  putRingUnderNode(model, points, positions);
  const onRing = { ring: points.ring, clearance: problem.ring.clearance };
  const hangs = loading === "onRing" || loading === "standing";
  // With the load on the node the ring is out of the way: the backup hangs from its anchors and joints alone.
  if (!hangs) fixed[points.ring] = true;
  const contacts: Contact[] = hangs
    ? [{ ...onRing, stiffness: contact.main, points: points.main, xi: model.start, slides: false }]
    : [];
  let iterations = 0;
  const settle = (parts: Partial<StaticsProblem>, balanced?: number) => {
    const found = findEquilibrium({ ...statics, struts, springs, contacts, ...parts }, balanced);
    iterations += found.iterations;
    return found;
  };
  let xiBackup = 0;
  if (backup) {
    // First without the backup, held where it is; then it is hung between the points that were found.
    const own = new Set(points.main);
    settle({ fixed: fixed.map((is, p) => is || (points.backup.includes(p) && !own.has(p))) });
    xiBackup = hangBackup(model, backup, points, positions, hangs);
    struts.push(...strutsOf(backup, points.backup));
  }
  let last: StaticsResult;
  if (backup && hangs) {
    const onBackup = { ...onRing, stiffness: contact.backup, points: points.backup, xi: xiBackup, slides: true };
    // The backup's kink at the ring is first eased in on a soft contact: the hard one meets a shape that is nearly right.
    const soft = { ...onBackup, stiffness: Math.min(SOFT, contact.backup) };
    settle({ contacts: [...contacts, soft] }, EASED);
    const hard = { ...onBackup, xi: soft.xi };
    last = settle({ contacts: [...contacts, hard] });
    xiBackup = hard.xi;
  } else last = settle({});
  const pick = (nodes: readonly number[]) =>
    Float64Array.from(nodes.flatMap((p) => [...positions.subarray(3 * p, 3 * p + 3)]));
  const mainNow = pick(points.main);
  return {
    ok: last.ok,
    iterations,
    residual: last.residual,
    worst: nameOf(model, points, last.worst),
    main: mainNow,
    backup: pick(points.backup),
    ring: pick([points.ring]),
    masters: { A: pick([points.masters.A]), B: pick([points.masters.B]) },
    xiMain: model.start,
    xiBackup,
    tension: tensionOf(main, 0, mainNow),
  };
}

function loadPoints(
  { problem, main, backup, start }: Model,
  loading: Loading,
  points: Numbering,
  loads: Float64Array,
): void {
  for (let i = 0; i < main.nodes; i++) addTo(loads, points.main[i]!, main.masses[i]! * GRAVITY);
  for (let j = 0; backup && j < backup.nodes; j++) addTo(loads, points.backup[j]!, backup.masses[j]! * GRAVITY);
  const walker = problem.walker.mass * GRAVITY;
  const ring = problem.ring.mass * GRAVITY;
  if (loading === "onNode") addTo(loads, points.main[start]!, walker + ring);
  if (loading === "standing") addTo(loads, points.main[start]!, walker);
  if (loading === "standing") addTo(loads, points.ring, ring);
  if (loading === "onRing") addTo(loads, points.ring, walker + ring);
}

function putRingUnderNode({ problem, start }: Model, points: Numbering, positions: Float64Array): void {
  const node = points.main[start]!;
  positions.copyWithin(3 * points.ring, 3 * node, 3 * node + 3);
  positions[3 * points.ring + 2] = positions[3 * points.ring + 2]! - problem.ring.clearance;
}

/** Slow-pull tension of element e of a line at given node positions [N]. */
export function tensionOf(line: Line, e: number, positions: Float64Array): number {
  const run = line.runs.find(({ first, last }) => e >= first && e < last)!;
  const i = 3 * e;
  const now = Math.hypot(
    positions[i + 3]! - positions[i]!,
    positions[i + 4]! - positions[i + 1]!,
    positions[i + 5]! - positions[i + 2]!,
  );
  return line.lengths[e]! > 0 ? tensionAt(run.curve, now / line.lengths[e]! - 1) : 0;
}

const addTo = (loads: Float64Array, point: number, load: number): void => {
  loads[point] = loads[point]! + load;
};

/** Points in order of fraction, so that coupled ones are close. */
function numberPoints(model: Model, legs: Legs): Numbering {
  const { main, backup } = model;
  const joined = new Map(model.joints.map((joint) => [joint.backup, joint.main]));
  const mainPoints = new Array<number>(main.nodes);
  const backupPoints = new Array<number>(backup?.nodes ?? 0);
  const ringAt = main.fractions[model.start]!;
  let next = 1;
  let ring = -1;
  let j = 0;
  const takeBackup = (below: number) => {
    for (; backup && j < backup.nodes && backup.fractions[j]! < below; j++)
      if (!joined.has(j)) backupPoints[j] = next++;
  };
  for (let i = 0; i < main.nodes; i++) {
    takeBackup(main.fractions[i]!);
    if (ring < 0 && main.fractions[i]! >= ringAt) ring = next++;
    mainPoints[i] = main.seam >= 0 && i === main.seam + 1 ? mainPoints[i - 1]! : next++;
  }
  takeBackup(2);
  const masters = { A: 0, B: next++ };
  for (const [b, m] of joined) backupPoints[b] = mainPoints[m]!;
  if (legs.A.length > 0) {
    mainPoints[0] = masters.A;
    if (backup) backupPoints[0] = masters.A;
  }
  if (legs.B.length > 0) {
    mainPoints[main.nodes - 1] = masters.B;
    if (backup) backupPoints[backup.nodes - 1] = masters.B;
  }
  const rocks = { A: legs.A.map(() => next++), B: legs.B.map(() => next++) };
  return { main: mainPoints, backup: backupPoints, ring, masters, rocks, count: next };
}

function emptyStatics(points: Numbering): StaticsProblem & { fixed: boolean[] } {
  // A number nobody uses (a master without legs, an end that became a master) stays fixed and is never read.
  const used = new Set([...points.main, ...points.backup, points.ring]);
  return {
    positions: new Float64Array(3 * points.count),
    fixed: Array.from({ length: points.count }, (_, p) => !used.has(p)),
    loads: new Float64Array(points.count),
    struts: [],
    springs: [],
    contacts: [],
  };
}

function strutsOf(line: Line, points: readonly number[]): Strut[] {
  return line.runs.flatMap((run) => {
    if (run.elementLength === 0) return [];
    const elements = Array.from({ length: run.last - run.first }, (_, k) => run.first + k);
    return elements.map((e) => ({ p: points[e]!, q: points[e + 1]!, length: line.lengths[e]!, curve: run.curve }));
  });
}

function legStruts(legs: Legs, points: Numbering): Strut[] {
  const strut = (end: "A" | "B") => (rest: LegRest, k: number) => ({
    p: points.masters[end],
    q: points.rocks[end][k]!,
    length: rest.length,
    curve: tensionCurve([
      [0, 0],
      [1, rest.leg.stiffness * rest.length],
    ]),
  });
  return [...legs.A.map(strut("A")), ...legs.B.map(strut("B"))];
}

/** Fixes line ends, or holds them by a spring along the chord; places masters and rocks. */
function holdEnds(
  model: Model,
  points: Numbering,
  statics: { positions: Float64Array; fixed: boolean[] },
  legs: Legs,
): Spring[] {
  const { problem, main, backup } = model;
  const springs: Spring[] = [];
  const [ux, , uz] = chordDirection(problem);
  for (const end of ["A", "B"] as const) {
    const at: [number, number, number] = end === "A" ? [0, 0, 0] : [problem.span, 0, problem.rise];
    for (const [k, rest] of legs[end].entries()) statics.positions.set(rest.rock, 3 * points.rocks[end][k]!);
    statics.positions.set(at, 3 * points.masters[end]);
    if (legs[end].length > 0) continue;
    const node = (line: Line) => (end === "A" ? 0 : line.nodes - 1);
    const held = [points.main[node(main)]!, ...(backup ? [points.backup[node(backup)]!] : [])];
    const { stiffness } = anchorOf(problem, end);
    for (const point of held) {
      statics.positions.set(at, 3 * point);
      if (stiffness === undefined) statics.fixed[point] = true;
      else {
        const across = [
          [0, 1, 0],
          [-uz, 0, ux],
        ] as const;
        springs.push(
          { point, at, direction: [ux, 0, uz], stiffness },
          ...across.map((direction) => ({ point, at, direction, stiffness: HELD })),
        );
      }
    }
  }
  return springs;
}

function layStraight(line: Line, points: readonly number[], span: number, rise: number, positions: Float64Array): void {
  for (let i = 1; i < line.nodes - 1; i++) {
    const f = line.fractions[i]!;
    positions.set([f * span, 0, f * rise], 3 * points[i]!);
  }
}

/** Hangs the backup in catenaries between ends, joints and ring; returns the ring's node coordinate on it. */
function hangBackup(
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
  const across = Math.max(Math.hypot(dx, dy), 1e-6);
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
  return line.runs.find(({ first, last }) => e >= first && e < last)!;
}

/** A bay through the ring: its length is shared so that both sides pull alike. */
function hangThroughRing(backup: Line, points: Numbering, positions: Float64Array, from: number, to: number): number {
  const [left, right, ring] = [points.backup[from]!, points.backup[to]!, points.ring];
  const span = (a: number, b: number) => {
    const d = [0, 1, 2].map((c) => positions[3 * b + c]! - positions[3 * a + c]!) as [number, number, number];
    return { across: Math.max(Math.hypot(d[0], d[1]), 1e-6), up: d[2], chord: Math.hypot(...d) };
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
export function nodeCoordinate(line: Line, fraction: number): number {
  const { fractions } = line;
  let e = 0;
  while (e < line.elements - 1 && fractions[e + 1]! < fraction) e++;
  const width = fractions[e + 1]! - fractions[e]!;
  return e + (width > 0 ? (fraction - fractions[e]!) / width : 0);
}

function nameOf({ main, backup }: Model, points: Numbering, point: number): string {
  const place = (line: Line, i: number) =>
    `${line.name === "main" ? "main line" : "backup"} at ${line.fractions[i]!.toFixed(3)} of its length`;
  const onMain = points.main.indexOf(point);
  if (onMain >= 0) return place(main, onMain);
  const onBackup = points.backup.indexOf(point);
  return backup && onBackup >= 0 ? place(backup, onBackup) : "ring";
}
