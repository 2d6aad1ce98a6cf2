/**
 * The two end nodes of every line, which the kernels leave alone: fixed, on a spring along the chord, on an anchor with legs,
 * or free after a cut. Also the weblock that lets webbing slip at a constant force.
 */
import { GRAVITY } from "../constants.ts";
import { COLUMN, HEAD, RUN } from "../kernel/lineLayout.ts";
import { hypot } from "../portable/index.ts";
import type { Problem } from "../problem.ts";
import { type Line, runIndexAt } from "./line.ts";
import { anchorOf, chordDirection } from "./model.ts";
import { energyAt, slopeAt, tensionAt } from "./tensionCurve.ts";

export type SupportKind = "fixed" | "spring" | "legs" | "free";

/** One end of one line. */
export class EndSupport {
  kind: SupportKind;
  readonly line: Line;
  readonly end: "A" | "B";
  readonly node: number;
  readonly #m: Float64Array;
  readonly #step: number;
  readonly #element: number;
  /** Place of the end element's tension in memory. */
  readonly #tension: number;
  /** Place of the end element's force in memory. */
  readonly #pull: number;
  readonly #sign: number;
  readonly #direction: readonly [number, number, number];
  readonly #stiffness: number;
  readonly #home: readonly [number, number, number];

  constructor(line: Line, end: "A" | "B", problem: Problem, memory: Float64Array, step: number, onLegs: boolean) {
    this.#step = step;
    this.line = line;
    this.end = end;
    this.#m = memory;
    this.node = end === "A" ? 0 : line.nodes - 1;
    this.#element = end === "A" ? 0 : line.elements - 1;
    this.#tension = line.base + COLUMN.T * line.pitch + this.#element;
    this.#pull = line.head + (end === "A" ? HEAD.firstPull : HEAD.lastPull);
    this.#sign = end === "A" ? 1 : -1;
    this.#direction = chordDirection(problem);
    this.#stiffness = anchorOf(problem, end).stiffness ?? 0;
    this.#home = end === "A" ? [0, 0, 0] : [problem.span, 0, problem.rise];
    this.kind = onLegs ? "legs" : this.#stiffness > 0 ? "spring" : "fixed";
    this.#work = this.stored();
    // What is fixed takes any push and does not move: the ring against it would else leave it a speed of its own.
    if (this.kind === "fixed") this.#m[this.#inverseMass] = 0;
  }

  get #inverseMass(): number {
    return this.line.base + COLUMN.IM * this.line.pitch + this.node;
  }

  /** Lets go of the end. */
  release(): void {
    this.kind = "free";
    this.#m[this.#inverseMass] = 1 / this.line.masses[this.node]!;
  }

  /** Load on the anchor [N]; 0 once the end is free, and while the element gives back an impulse that it pulled too long. */
  get load(): number {
    const tension = this.#m[this.#tension]!;
    return tension > 0 && this.kind !== "free" ? tension : 0;
  }

  /** Mass of the end node [kg]. */
  get mass(): number {
    return this.line.masses[this.node]!;
  }
  /** Puts the end node where it is told, at the velocity it is told. */
  place(state: Float64Array): void {
    const { base, pitch } = this.line;
    for (let c = 0; c < 6; c++) this.#m[base + c * pitch + this.node] = state[c]!;
  }

  /** Adds the line's pull on this end to `force`, and the push of a ring beside it: by that its node moves otherwise than `state`, at which it was placed. */
  addForce(force: Float64Array, state: Float64Array): void {
    const m = this.#m;
    const { base, pitch, masses } = this.line;
    const push = masses[this.node]! / this.#step;
    for (let c = 0; c < 3; c++) {
      const pushed = push * (m[base + (COLUMN.VX + c) * pitch + this.node]! - state[3 + c]!);
      force[c] = force[c]! + this.#sign * m[this.#pull + c]! + pushed;
    }
  }

  /** Moves a spring-held or free end by one step. Fixed ends stay; ends on legs follow their anchor. */
  move(): void {
    if (this.kind === "free") this.#fall();
    else if (this.kind === "spring") this.#swing();
  }

  #fall(): void {
    const m = this.#m;
    const step = this.#step;
    const { base, pitch, masses } = this.line;
    for (let c = 0; c < 3; c++) {
      const V = base + (COLUMN.VX + c) * pitch + this.node;
      const weight = c === 2 ? GRAVITY : 0;
      m[V] = m[V]! + step * ((this.#sign * m[this.#pull + c]!) / masses[this.node]! - weight);
      m[base + c * pitch + this.node] = m[base + c * pitch + this.node]! + step * m[V]!;
    }
  }

  /**
   * Along the chord only. The spring may be stiffer than the step allows, so it is taken at the end of the step, which is stable
   * at any stiffness and damps the end node like a dashpot of k·Δt; what that takes is booked.
   */
  #swing(): void {
    const m = this.#m;
    const step = this.#step;
    const { base, pitch, masses } = this.line;
    const u = this.#direction;
    const X = base + this.node;
    const V = base + COLUMN.VX * pitch + this.node;
    let pull = 0;
    let before = 0;
    for (let c = 0; c < 3; c++) {
      pull += u[c]! * this.#sign * m[this.#pull + c]!;
      before += u[c]! * m[V + c * pitch]!;
    }
    const k = this.#stiffness;
    const mass = masses[this.node]!;
    const offset = this.offset();
    const after = (before + (step * (pull - k * offset)) / mass) / (1 + (step * step * k) / mass);
    const half = 0.5 * step * k * (offset + step * after);
    // Over the velocities on either side of the step: a ring beside the end has pushed its node meanwhile.
    this.#workNow = this.#work + half * this.#speed;
    this.#work = this.#workNow + half * after;
    this.#speed = after;
    this.#storedNow = 0.5 * k * offset * offset;
    for (let c = 0; c < 3; c++) {
      m[V + c * pitch] = u[c]! * after;
      m[X + c * pitch] = m[X + c * pitch]! + step * u[c]! * after;
    }
  }
  /** Work against the spring: up to the end of the last step, and to x(t) within it; what the spring held then [J]. */
  #work = 0;
  #workNow = 0;
  #storedNow = 0;
  /** Along the chord, after the last step [m/s]. */
  #speed = 0;
  /** What the spring has taken and does not hold [J]. */
  get lost(): number {
    return this.#workNow - this.#storedNow;
  }

  offset(): number {
    const X = this.line.base + this.node;
    let offset = 0;
    for (let c = 0; c < 3; c++) offset += this.#direction[c]! * (this.#m[X + c * this.line.pitch]! - this.#home[c]!);
    return offset;
  }

  stored(): number {
    if (this.kind !== "spring") return 0;
    const offset = this.offset();
    return 0.5 * this.#stiffness * offset * offset;
  }

  /**
   * Lets webbing through, before the kernel steps, until the end element is about to carry no more than the slip load: a longer
   * natural length at the same distance (an elastic trial, returned to the limit). Returns the energy lost [J]. The webbing's
   * own weight that comes in is neglected.
   */
  slip(load: number): number {
    const m = this.#m;
    const { base, pitch, runs, runsAt, runPitch } = this.line;
    const e = this.#element;
    const IL = base + COLUMN.IL * pitch + e;
    if (m[IL] === 0 || this.kind === "free") return 0;
    const k = runIndexAt(this.line, e);
    const { curve, material } = runs[k]!;
    const at = runsAt + k * runPitch;
    const stiffness = m[at + RUN.stiffnessSum]!;
    const R = base + COLUMN.R * pitch + e;
    let held = 0;
    for (let b = 0; b < material.branches.length; b++) held += m[R + b * pitch]!;
    const now = this.#span();
    const trial = now * m[IL]! - 1;
    let strain = trial;
    const excess = () => tensionAt(curve, strain) + stiffness * strain + held - load;
    if (trial <= 0 || excess() <= 0) return 0;
    for (let i = 0; i < 4; i++) strain -= excess() / (slopeAt(curve, strain) + stiffness);
    const length = 1 / m[IL]!;
    const longer = now / (1 + strain);
    m[IL] = 1 / longer;
    let density = energyAt(curve, strain);
    for (let b = 0; b < material.branches.length; b++) {
      const q = m[R + b * pitch]! + m[at + RUN.stiffness + b]! * strain;
      density += m[at + RUN.compliance + b]! * q * q;
    }
    return (load * (1 + strain) - density) * (longer - length);
  }

  /**
   * Work of stretching that the kernel misses in the end element because webbing has come into it: it reckons with the run's
   * element length [J]. To be called once a step, after the kernel.
   */
  missedWork(): number {
    const m = this.#m;
    const { base, pitch, lengths } = this.line;
    const e = this.#element;
    const inverse = m[base + COLUMN.IL * pitch + e]!;
    const tension = m[base + COLUMN.T * pitch + e]!;
    const strain = m[base + COLUMN.E * pitch + e]!;
    const now = inverse > 0 ? (1 + strain) / inverse : 0;
    const last = this.#last;
    const missed =
      last.now === 0 || now === 0
        ? 0
        : 0.5 * (tension + last.tension) * (now - last.now - lengths[e]! * (strain - last.strain));
    last.tension = tension;
    last.strain = strain;
    last.now = now;
    return missed;
  }
  /** Tension, strain and length [m] of the end element in the step before; no length: not known. */
  readonly #last = { tension: 0, strain: 0, now: 0 };

  #span(): number {
    const x = this.line.base + this.#element;
    const { pitch } = this.line;
    const m = this.#m;
    return hypot(m[x + 1]! - m[x]!, m[x + pitch + 1]! - m[x + pitch]!, m[x + 2 * pitch + 1]! - m[x + 2 * pitch]!);
  }
}
