/**
 * A made-up recording for pictures and tests of the sandbox only: a coarse position-based rope, not the engine. Its
 * forces are of a believable size and no more; nothing may be concluded from them.
 */
import {
  type EnergyLedger,
  LEDGER,
  type LedgerEntry,
  type Peak,
  type Problem,
  type Recording,
  type RunEvent,
  SIGNALS,
  type SignalName,
} from "@secondline/engine";
import type { AnchorPart, LineStock, Rig } from "@secondline/rig";

const SPAN = 60;
const MAIN = 121;
const BACKUP = 127;
const AT = 0.4;
const CONNECTION = 0.5;
const RATE = 2000;
const FRAME_RATE = 200;
const DURATION = 4;
const CUT_TIME = 1.6;
const LETGO = 0.3;
const WALKER = 80;
const LEASH = 1.4;
const TIE_IN = 1.0;
const G = 9.80665;

interface Rod {
  readonly a: number;
  readonly b: number;
  readonly length: number;
  /** [m/N] */
  readonly compliance: number;
  parted: boolean;
  force: number;
}
interface World {
  readonly p: Float64Array;
  readonly before: Float64Array;
  readonly inverseMass: Float64Array;
  readonly rods: Rod[];
  readonly ring: number;
  readonly walker: number;
  readonly leash: Rod;
}

const made = new Map<number, Recording>();

/**
 * Falls off a 60 m line at 40 %, is caught; then the main line fails at A and the connected backup catches. Made once for all files of
 * tests in a process, which only read it.
 */
export function syntheticRecording({ slack = 0.05 }: { readonly slack?: number } = {}): Recording {
  const recording = made.get(slack) ?? fallAndCatch(slack);
  made.set(slack, recording);
  return recording;
}

function fallAndCatch(slack: number): Recording {
  const world = build(slack);
  for (let i = 0; i < 6 * RATE; i++) step(world, i < 4 * RATE ? 0.9985 : 0.99, WALKER * G, true);
  for (let i = 0; i < world.p.length; i++) world.before[i] = world.p[i]!;
  return record(world, slack);
}

function build(slack: number): World {
  const count = MAIN + BACKUP + 2;
  const p = new Float64Array(count * 3);
  const inverseMass = new Float64Array(count).fill(1 / 0.035);
  const rods: Rod[] = [];
  const rod = (a: number, b: number, length: number, compliance: number) => {
    rods.push({ a, b, length, compliance, parted: false, force: 0 });
  };
  for (let i = 0; i < MAIN; i++) p.set([(SPAN * i) / (MAIN - 1), 0, -0.02 * i * (1 - i / (MAIN - 1))], 3 * i);
  const natural = (SPAN / (MAIN - 1)) * (1 - 0.0165);
  for (let i = 0; i + 1 < MAIN; i++) rod(i, i + 1, natural, natural / 190000);
  for (let i = 0; i < BACKUP; i++) {
    const s = i / (BACKUP - 1);
    p.set([SPAN * s, 0, -0.3 - 10 * s * Math.abs(CONNECTION - s)], 3 * (MAIN + i));
  }
  const backupLength = (SPAN * (1 + slack)) / (BACKUP - 1);
  for (let i = 0; i + 1 < BACKUP; i++) rod(MAIN + i, MAIN + i + 1, backupLength, backupLength / 500000);
  for (const fixed of [0, MAIN - 1, MAIN, MAIN + BACKUP - 1]) inverseMass[fixed] = 0;
  p.set([0, 0, 0, SPAN, 0, 0], 0);
  p.set([SPAN, 0, 0], 3 * (MAIN - 1));
  p.set([0, 0, 0], 3 * MAIN);
  p.set([SPAN, 0, 0], 3 * (MAIN + BACKUP - 1));
  const ring = MAIN + BACKUP;
  inverseMass[ring] = 1 / 0.3;
  inverseMass[ring + 1] = 1 / WALKER;
  const onMain = Math.round(AT * (MAIN - 1));
  const onBackup = MAIN + Math.round(AT * (BACKUP - 1));
  rod(Math.round(CONNECTION * (MAIN - 1)), MAIN + Math.round(CONNECTION * (BACKUP - 1)), 0, 1e-7);
  rod(ring, onMain, 0, 1e-7);
  rod(ring, onBackup, 0.02, 1e-7);
  p.set([p[3 * onMain]!, 0, p[3 * onMain + 2]!], 3 * ring);
  rod(ring, ring + 1, LEASH, LEASH / 26000);
  return { p, before: p.slice(), inverseMass, rods, ring, walker: ring + 1, leash: rods[rods.length - 1]! };
}

/** One step; the feet carry `footForce` from the line at the ring. */
function step(world: World, keep: number, footForce: number, held: boolean): void {
  const { p, before, inverseMass, rods, ring, walker } = world;
  const dt = 1 / RATE;
  for (let i = 0; i < inverseMass.length; i++) {
    if (inverseMass[i] === 0) continue;
    for (let c = 0; c < 3; c++) {
      const k = 3 * i + c;
      const v = (p[k]! - before[k]!) * keep;
      before[k] = p[k]!;
      let acceleration = c === 2 ? -G : 0;
      if (c === 2 && i === ring) acceleration -= footForce * inverseMass[ring]!;
      if (c === 2 && i === walker) acceleration += footForce / WALKER;
      p[k] = p[k]! + v + acceleration * dt * dt;
    }
  }
  if (held) {
    p.set([p[3 * ring]!, 0.3, p[3 * ring + 2]! + TIE_IN], 3 * walker);
    before.set(p.subarray(3 * walker, 3 * walker + 3), 3 * walker);
  }
  for (const rod of rods) rod.force = 0;
  for (let pass = 0; pass < 14; pass++) for (const rod of rods) solve(rod, p, inverseMass, dt);
}

/** Extended position-based constraint that only pulls (Macklin et al. 2016), written for this test only. */
function solve(rod: Rod, p: Float64Array, inverseMass: Float64Array, dt: number): void {
  if (rod.parted) return;
  const i = 3 * rod.a;
  const j = 3 * rod.b;
  const x = p[j]! - p[i]!;
  const y = p[j + 1]! - p[i + 1]!;
  const z = p[j + 2]! - p[i + 2]!;
  const length = Math.sqrt(x * x + y * y + z * z);
  if (length < 1e-9) return;
  const w = inverseMass[rod.a]! + inverseMass[rod.b]! + rod.compliance / (dt * dt);
  const wanted = (length - rod.length - (rod.compliance / (dt * dt)) * rod.force * dt * dt) / w;
  const total = Math.max(rod.force * dt * dt + wanted, 0);
  const change = total - rod.force * dt * dt;
  rod.force = total / (dt * dt);
  const a = (inverseMass[rod.a]! * change) / length;
  const b = (inverseMass[rod.b]! * change) / length;
  p[i] = p[i]! + a * x;
  p[i + 1] = p[i + 1]! + a * y;
  p[i + 2] = p[i + 2]! + a * z;
  p[j] = p[j]! - b * x;
  p[j + 1] = p[j + 1]! - b * y;
  p[j + 2] = p[j + 2]! - b * z;
}

function record(world: World, slack: number): Recording {
  const { p, rods, ring, walker } = world;
  const steps = DURATION * RATE;
  const frames = DURATION * FRAME_RATE + 1;
  const stride = (MAIN + BACKUP + 2) * 3;
  const elements = MAIN + BACKUP - 2;
  const positions = new Float32Array(frames * stride);
  const tensions = new Float32Array(frames * elements);
  const signals = Object.fromEntries(SIGNALS.map((s) => [s, new Float32Array(steps + 1)])) as Record<
    SignalName,
    Float32Array
  >;
  const height = new Float32Array(steps + 1);
  const start = p[3 * walker + 2]!;
  const point: [number, number, number] = [p[3 * ring]!, 0, p[3 * ring + 2]!];
  const events: RunEvent[] = [{ time: 0, kind: "letGo", part: "walker" }];
  let smooth = rods.map((r) => r.force);
  for (let s = 0; s <= steps; s++) {
    const time = s / RATE;
    if (s % (RATE / FRAME_RATE) === 0) {
      const f = s / (RATE / FRAME_RATE);
      positions.set(p, f * stride);
      for (let e = 0; e < elements; e++) tensions[f * elements + e] = rods[e]!.parted ? Number.NaN : smooth[e]!;
    }
    const force = (e: number) => (rods[e]!.parted ? 0 : smooth[e]!);
    signals.mainA[s] = force(0);
    signals.mainB[s] = force(MAIN - 2);
    signals.backupA[s] = force(MAIN - 1);
    signals.backupB[s] = force(elements - 1);
    signals.leash[s] = force(rods.length - 1);
    height[s] = p[3 * walker + 2]!;
    if (events.length === 1 && signals.leash[s]! > 50) events.push({ time, kind: "leashTaut", part: "leash" });
    if (time >= CUT_TIME && !rods[0]!.parted) {
      rods[0]!.parted = true;
      events.push({ time, kind: "cut", part: "main", at: 0, value: force(1), position: [0.3, 0, -0.05] });
    }
    step(world, 0.9995, Math.max(0, 1 - time / LETGO) * WALKER * G, false);
    smooth = smooth.map((v, e) => v + 0.06 * (rods[e]!.force - v));
  }
  const peaks = Object.fromEntries(SIGNALS.map((s) => [s, peakOf(signals[s])])) as Record<SignalName, Peak>;
  const lowestAt = height.reduce((best, z, i) => (z < height[best]! ? i : best), 0);
  events.push({ time: lowestAt / RATE, kind: "lowest", part: "walker" });
  return {
    problem: problem(slack),
    accuracy: "quick",
    mesh: { elements, size: 0.5, step: 1 / RATE, steps },
    standing: { tension: signals.mainA[0]!, sag: -point[2], point },
    duration: DURATION,
    rate: RATE,
    signals,
    peaks,
    walkerHeight: height,
    walker: { start, lowest: height[lowestAt]!, drop: start - height[lowestAt]!, lowestTime: lowestAt / RATE },
    connections: [{ at: CONNECTION, tape: false, peak: 2500, time: 2, parted: false }],
    legs: [],
    elementPeaks: { main: noPeaks(), backup: noPeaks() },
    events,
    energy: noEnergy(),
    frames: {
      rate: FRAME_RATE,
      count: frames,
      mainNodes: MAIN,
      backupNodes: BACKUP,
      positions,
      tensions,
      fractions: Float32Array.from([...even(MAIN), ...even(BACKUP)]),
      ringAt: new Float32Array(2 * frames).fill(AT),
    },
  };
}

function even(nodes: number): number[] {
  return Array.from({ length: nodes }, (_, i) => i / (nodes - 1));
}

function peakOf(signal: Float32Array): Peak {
  const at = signal.reduce((best, v, i) => (v > signal[best]! ? i : best), 0);
  return { raw: signal[at]!, rawTime: at / RATE, cfc60: signal[at]!, cfc60Time: at / RATE };
}

function noPeaks() {
  return { at: new Float32Array(0), peak: new Float32Array(0) };
}

function noEnergy(): EnergyLedger {
  const series = Object.fromEntries(LEDGER.map((e) => [e, new Float32Array(0)])) as Record<LedgerEntry, Float32Array>;
  return { times: new Float32Array(0), series, gain: 0, created: 0, imbalance: 0, moved: 1 };
}

function problem(slack: number): Problem {
  const material = {
    mass: 0.06,
    curve: [
      [0, 0],
      [0.04, 6000],
    ] as const,
    branches: [],
  };
  return {
    name: "made up",
    span: SPAN,
    rise: 0,
    main: { pretension: 2500, material },
    backup: { slack, material, connections: [{ at: CONNECTION }] },
    leash: { length: LEASH, material },
    ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
    walker: { mass: WALKER, at: AT, tieIn: TIE_IN, lateral: 0.3 },
    start: "standing",
    letGo: LETGO,
    cut: { at: 0, time: CUT_TIME },
    duration: DURATION,
  };
}

const assumed = { kind: "assumed", note: "made up for a picture" } as const;
const stock: LineStock = {
  id: "made-up",
  name: "made up",
  fibre: "polyester",
  mass: 0.06,
  width: 0.025,
  curve: [
    [0, 0],
    [0.04, 6000],
  ],
  branches: [],
  rated: { strength: 30000, basis: assumed },
  basis: assumed,
};
const part = (name: string, kind: AnchorPart["kind"]): AnchorPart => ({
  name,
  kind,
  rated: { strength: 25000, basis: assumed },
  condition: {},
});

/** A rig for the recording above. */
export function syntheticRig(): Rig {
  const section = { stock, condition: {}, wear: [] };
  const rated = { strength: 25000, basis: assumed };
  return {
    version: 1,
    name: "Made-up gap",
    notes: "",
    invented: true,
    span: SPAN,
    rise: 0,
    requiredAfterFailure: 1.5,
    requiredClearance: 1,
    ground: [
      [0, -0.6],
      [1.5, -9],
      [4, -14],
      [7, -26],
      [14, -31],
      [24, -37],
      [33, -38.5],
      [41, -35],
      [48, -29],
      [53, -18],
      [57, -11],
      [59, -2.5],
      [60, -0.5],
    ],
    anchorA: {
      points: [part("bolt 1", "bolt"), part("bolt 2", "bolt"), part("bolt 3", "bolt")],
      hardware: [part("sling", "sling")],
      legAngle: 1,
      legLength: 1.6,
    },
    anchorB: {
      points: [part("bolt 1", "bolt"), part("bolt 2", "bolt")],
      hardware: [part("sling", "sling")],
      legAngle: 0.7,
      legLength: 1.4,
    },
    main: {
      pretension: 2500,
      sections: [section],
      endA: { kind: "weblock", rated, bend: 8 },
      endB: { kind: "sewnLoop", rated, bend: 8 },
    },
    backup: {
      slack: 0.05,
      sections: [section],
      endA: { kind: "sewnLoop", rated, bend: 8 },
      endB: { kind: "sewnLoop", rated, bend: 8 },
      connections: [{ at: CONNECTION, kind: "connection", rated }],
    },
    rings: [1, 2].map((i) => ({ name: `ring ${i}`, mass: 0.1, clearance: 0.025, friction: 0.15, rated })),
    leash: {
      stock,
      length: LEASH,
      knots: [
        { kind: "figureEight", where: "ring" },
        { kind: "figureEight", where: "harness" },
      ],
      condition: {},
      falls: 0,
    },
    harness: { rated },
    walker: { mass: WALKER, tieIn: TIE_IN, lateral: 0.3 },
    requiredFactor: { value: 2, basis: assumed },
  };
}
