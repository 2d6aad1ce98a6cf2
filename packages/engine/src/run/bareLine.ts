/**
 * One line by itself, with masses on it and ends that are fixed, free or moved: for checks against theory, for benches and for
 * whoever wants the line without the rig. It runs on the same kernels as a whole rig.
 */
import { GRAVITY } from "../constants.ts";
import type { LineKernel } from "../kernel/lineKernel.ts";
import { fastestKernel } from "../kernel/lineKernelWasm.ts";
import { COLUMN, HEAD, RUN } from "../kernel/lineLayout.ts";
import { endOf, type Line, loadLine, plainLine, stepLimit } from "../line/line.ts";
import { stretchEnergy } from "../line/lineEnergy.ts";
import { tensionAt } from "../line/tensionCurve.ts";
import { hypot } from "../portable/index.ts";
import type { LineMake } from "../problem.ts";
import { hangChain, type LinePiece } from "../statics/hangPieces.ts";

export type PointInSpace = readonly [x: number, y: number, z: number];

export interface BareLineOptions {
  readonly make: LineMake;
  /** Natural length [m]. */
  readonly length: number;
  readonly elements: number;
  /** Masses on nodes besides the line's own [kg]. */
  readonly masses?: readonly { readonly node: number; readonly mass: number }[];
  /** Whether gravity acts; it does by default. */
  readonly weightless?: boolean;
  /** The step as a share of the longest stable step; 0.5 by default. */
  readonly stepShare?: number;
  /** Step to use instead [s]. */
  readonly step?: number;
  readonly kernel?: (size: number) => LineKernel;
}

interface End {
  readonly node: number;
  readonly element: number;
  readonly sign: number;
  /** Mass when the end is free [kg]; undefined: the end moves as told. */
  mass: number | undefined;
  /** Velocity it is moved at [m/s], or force on it when it is free [N]. */
  readonly told: Float64Array;
}

/** Share of the stable step that is taken by default. */
const STEP_SHARE = 0.5;

/** A line by itself: lay or hang it, hold or free its ends, and step it. SI throughout. */
export class BareLine {
  readonly nodes: number;
  readonly elements: number;
  /** [s] */
  readonly step: number;
  /** Work that stretching the line took so far [J]. */
  get stretchWork(): number {
    return this.#m[this.#line.head + HEAD.work]!;
  }
  time = 0;
  readonly #line: Line;
  readonly #kernel: LineKernel;
  readonly #extra: Float64Array;
  readonly #lift: number;
  readonly #ends: { readonly first: End; readonly last: End };

  constructor({ make, length, elements, masses, weightless, stepShare, step, kernel }: BareLineOptions) {
    this.#line = plainLine(make, length, elements);
    this.nodes = this.#line.nodes;
    this.elements = this.#line.elements;
    this.step = step ?? (stepShare ?? STEP_SHARE) * stepLimit(this.#line);
    this.#lift = weightless ? GRAVITY * this.step : 0;
    this.#kernel = (kernel ?? fastestKernel)(endOf(this.#line));
    loadLine(this.#line, this.#kernel, this.step);
    this.#extra = new Float64Array(this.nodes);
    for (const { node, mass } of masses ?? []) this.#extra[node] = mass;
    const { base, pitch } = this.#line;
    for (let i = 0; i < this.nodes; i++) this.#m[base + COLUMN.IM * pitch + i] = 1 / this.massOf(i);
    const end = (node: number, element: number, sign: number): End => ({
      node,
      element,
      sign,
      mass: undefined,
      told: new Float64Array(3),
    });
    this.#ends = { first: end(0, 0, 1), last: end(this.nodes - 1, this.elements - 1, -1) };
    this.lay([0, 0, 0], [length, 0, 0]);
  }

  get #m(): Float64Array {
    return this.#kernel.memory;
  }
  /** Mass of a node with what is on it [kg]. */
  massOf(node: number): number {
    return this.#line.masses[node]! + this.#extra[node]!;
  }
  position(node: number): PointInSpace {
    return this.#read(0, node);
  }
  velocity(node: number): PointInSpace {
    return this.#read(COLUMN.VX, node);
  }
  /** Tension of an element in the last step [N]. */
  tension(element: number): number {
    return Math.max(0, this.#m[this.#line.base + COLUMN.T * this.#line.pitch + element]!);
  }
  /** Energy held in stretch [J]. */
  stored(): number {
    return stretchEnergy(this.#line, this.#m);
  }
  /** Momentum of all nodes [kg·m/s]. */
  momentum(): PointInSpace {
    const sum: [number, number, number] = [0, 0, 0];
    for (let i = 0; i < this.nodes; i++) {
      const v = this.velocity(i);
      for (let c = 0; c < 3; c++) sum[c] = sum[c]! + this.massOf(i) * v[c]!;
    }
    return sum;
  }

  place(node: number, [x, y, z]: PointInSpace): void {
    this.#write(0, node, x, y, z);
  }
  push(node: number, [x, y, z]: PointInSpace): void {
    this.#write(COLUMN.VX, node, x, y, z);
  }
  /** Lays the nodes evenly from one place to another, at rest and relaxed. */
  lay(from: PointInSpace, to: PointInSpace): void {
    for (let i = 0; i < this.nodes; i++) {
      const f = i / this.elements;
      this.place(i, [
        from[0] + f * (to[0] - from[0]),
        from[1] + f * (to[1] - from[1]),
        from[2] + f * (to[2] - from[2]),
      ]);
      this.push(i, [0, 0, 0]);
    }
    this.relax();
  }
  /** Hangs the line from the origin to a point `across` and `up` from it; returns the first element's pull [N]. */
  hang(across: number, up: number): { readonly along: number; readonly up: number } {
    const chain = hangChain(across, up, this.#pieces());
    if (!chain) throw new Error("the line finds no rest between these points");
    const points = [[0, 0], ...chain.joints, [across, up]] as const;
    for (const [i, [x, z]] of points.entries()) {
      this.place(i, [x, 0, z]);
      this.push(i, [0, 0, 0]);
    }
    this.relax();
    return { along: chain.along, up: chain.up };
  }
  #pieces(): LinePiece[] {
    const { runs, lengths } = this.#line;
    return runs.flatMap(({ first, last, curve, material }) =>
      Array.from(lengths.subarray(first, last), (length) => ({ length, curve, mass: material.mass })),
    );
  }

  /** Sets every branch to rest (q = 0) at the present shape. */
  relax(): void {
    const { base, pitch, runs, runsAt, runPitch, lengths } = this.#line;
    const m = this.#m;
    for (const [k, run] of runs.entries()) {
      for (let e = run.first; e < run.last; e++) {
        const now = this.#span(e) / lengths[e]! - 1;
        const strain = Math.max(0, now);
        m[base + COLUMN.E * pitch + e] = now;
        m[base + COLUMN.T * pitch + e] = tensionAt(run.curve, strain);
        for (let b = 0; b < run.material.branches.length; b++) {
          m[base + (COLUMN.R + b) * pitch + e] = -m[runsAt + k * runPitch + RUN.stiffness + b]! * strain;
        }
      }
    }
  }

  /** Moves an end at a velocity from now on; a fixed end is moved at none. */
  moveEnd(end: "first" | "last", velocity: PointInSpace): void {
    this.#ends[end].mass = undefined;
    this.#ends[end].told.set(velocity);
  }
  /** Lets go of an end, with a force on it. */
  freeEnd(end: "first" | "last", force: PointInSpace = [0, 0, 0]): void {
    this.#ends[end].mass = this.massOf(this.#ends[end].node);
    this.#ends[end].told.set(force);
  }

  advance(steps: number): void {
    const { base, pitch, head, nodes } = this.#line;
    const m = this.#m;
    const VZ = base + COLUMN.VZ * pitch;
    for (let k = 0; k < steps; k++) {
      if (this.#lift > 0) for (let i = 1; i < nodes - 1; i++) m[VZ + i] = m[VZ + i]! + this.#lift;
      this.#kernel.step(head);
      this.#moveEnd(this.#ends.first);
      this.#moveEnd(this.#ends.last);
      this.time += this.step;
    }
  }

  #moveEnd({ node, element, sign, mass, told }: End): void {
    const { base, pitch, head } = this.#line;
    const m = this.#m;
    for (let c = 0; c < 3; c++) {
      const V = base + (COLUMN.VX + c) * pitch + node;
      const X = base + c * pitch + node;
      if (mass === undefined) m[V] = told[c]!;
      else {
        const pull = sign * m[head + (element === 0 ? HEAD.firstPull : HEAD.lastPull) + c]!;
        const fall = c === 2 && this.#lift === 0 ? GRAVITY : 0;
        m[V] = m[V]! + this.step * ((pull + told[c]!) / mass - fall);
      }
      m[X] = m[X]! + this.step * m[V]!;
    }
  }

  #span(element: number): number {
    const [p, q] = [this.position(element), this.position(element + 1)];
    return hypot(q[0] - p[0], q[1] - p[1], q[2] - p[2]);
  }
  #read(column: number, node: number): PointInSpace {
    const { base, pitch } = this.#line;
    const at = base + column * pitch + node;
    return [this.#m[at]!, this.#m[at + pitch]!, this.#m[at + 2 * pitch]!];
  }
  #write(column: number, node: number, x: number, y: number, z: number): void {
    const { base, pitch } = this.#line;
    const at = base + column * pitch + node;
    this.#m[at] = x;
    this.#m[at + pitch] = y;
    this.#m[at + 2 * pitch] = z;
  }
}
