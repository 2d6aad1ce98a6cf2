/**
 * The rig at rest: turns a model into a statics problem, with starting shapes from catenaries, and reads the answer back.
 */
import { GRAVITY } from "../constants.ts";
import { type Line, runIndexAt } from "../line/line.ts";
import { coordinateAt } from "../line/lineWeights.ts";
import { anchorOf, chordDirection, type Model } from "../line/model.ts";
import { tensionAt, tensionCurve } from "../line/tensionCurve.ts";
import { hypot } from "../portable/index.ts";
import type { LegRest, Legs } from "../rigging/legs.ts";
import { findEquilibrium } from "./equilibrium.ts";
import { hangBackup } from "./hangBackup.ts";
import { type Numbering, numberPoints, pointName } from "./numbering.ts";
import type { Contact, Spring, StaticsProblem, StaticsResult, Strut } from "./staticsProblem.ts";

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
const FIXED_ANCHOR_STIFFNESS = 1e9;
/** A contact about as soft as a slack line is across itself [N/m]. */
const SOFT_CONTACT_STIFFNESS = 300;
/** How far the easing is taken, as a share of the largest tension [-]. */
const EASED_FORCE_SHARE = 1e-4;

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
  const xiMain = coordinateAt(main.fractions, main.fractions[model.start]!);
  const contacts: Contact[] = hangs
    ? [{ ...onRing, stiffness: contact.main, points: points.main, xi: xiMain, slides: false }]
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
    const soft = { ...onBackup, stiffness: Math.min(SOFT_CONTACT_STIFFNESS, contact.backup) };
    settle({ contacts: [...contacts, soft] }, EASED_FORCE_SHARE);
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
    worst: pointName(model, points, last.worst),
    main: mainNow,
    backup: pick(points.backup),
    ring: pick([points.ring]),
    masters: { A: pick([points.masters.A]), B: pick([points.masters.B]) },
    xiMain,
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
function tensionOf(line: Line, e: number, positions: Float64Array): number {
  const run = line.runs[runIndexAt(line, e)]!;
  const i = 3 * e;
  const now = hypot(
    positions[i + 3]! - positions[i]!,
    positions[i + 4]! - positions[i + 1]!,
    positions[i + 5]! - positions[i + 2]!,
  );
  return line.lengths[e]! > 0 ? tensionAt(run.curve, now / line.lengths[e]! - 1) : 0;
}

const addTo = (loads: Float64Array, point: number, load: number): void => {
  loads[point] = loads[point]! + load;
};

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
    const elements = Array.from({ length: run.last - run.first }, (_, k) => run.first + k);
    return elements
      .filter((e) => line.lengths[e]! > 0)
      .map((e) => ({ p: points[e]!, q: points[e + 1]!, length: line.lengths[e]!, curve: run.curve }));
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
          ...across.map((direction) => ({ point, at, direction, stiffness: FIXED_ANCHOR_STIFFNESS })),
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
