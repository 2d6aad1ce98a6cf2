/** The leash: a massless, tension-only string between ring and walker, with the tension law of a line. */
import { branchStiffness, type MaxwellStep, maxwellStep } from "../line/maxwell.ts";
import { energyAt, overdrawn, type TensionCurve, tensionAt } from "../line/tensionCurve.ts";
import type { Material } from "../problem.ts";

export class Leash {
  /** Tension of the last step [N]. */
  tension = 0;
  whole = true;
  /** Work that stretching took so far, by the trapezoid of tension over length [J]. */
  work = 0;
  readonly #length: number;
  readonly #curve: TensionCurve;
  readonly #step: MaxwellStep;
  readonly #r: Float64Array;
  #last = 0;
  #slack = false;
  readonly #dt: number;
  readonly #ringMass: number;
  readonly #walkerMass: number;
  readonly #sum: number;
  /** ΣE of the branches [N]. */
  readonly #branches: number;

  constructor(
    leash: { length: number; material: Material },
    curve: TensionCurve,
    masses: { ring: number; walker: number },
    step: number,
  ) {
    this.#dt = step;
    this.#ringMass = masses.ring;
    this.#walkerMass = masses.walker;
    this.#length = leash.length;
    this.#curve = curve;
    this.#branches = branchStiffness(leash.material.branches);
    this.#step = maxwellStep(leash.material.branches, step);
    this.#r = new Float64Array(this.#step.count);
    this.#sum = this.#step.stiffness.reduce((sum, b) => sum + b, 0);
  }

  /** Starts relaxed at a strain: q = 0. */
  relax(distance: number): void {
    const strain = Math.max(0, distance / this.#length - 1);
    this.#last = distance;
    this.tension = tensionAt(this.#curve, strain);
    for (let i = 0; i < this.#r.length; i++) this.#r[i] = -this.#step.stiffness[i]! * strain;
  }

  /** Goes on from a leash of another step, at a distance: every branch keeps its force. */
  takeOver(from: Leash, distance: number): void {
    this.#last = distance;
    this.tension = from.tension;
    this.whole = from.whole;
    const strain = distance / this.#length - 1;
    const was = from.#last / this.#length - 1;
    if (strain <= 0 || was <= 0) return;
    for (let i = 0; i < this.#r.length; i++) {
      const held = from.#r[i]! + from.#step.stiffness[i]! * was;
      this.#r[i] = held - this.#step.stiffness[i]! * strain;
    }
  }

  /**
   * Pulls ring and walker (positions and velocities) together for one step, which moves the branches on. Where they are is
   * read here: numbers passed about in the hot loop would end up on the heap.
   */
  pull(ring: Float64Array, walker: Float64Array): void {
    if (!this.whole) return;
    const dx = walker[0]! - ring[0]!;
    const dy = walker[1]! - ring[1]!;
    const dz = walker[2]! - ring[2]!;
    const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const strain = distance / this.#length - 1;
    let tension = 0;
    if (strain > 0) {
      const { decay, release } = this.#step;
      const r = this.#r;
      tension = tensionAt(this.#curve, strain) + this.#sum * strain;
      for (let i = 0; i < r.length; i++) {
        tension += r[i]!;
        r[i] = decay[i]! * r[i]! - release[i]! * strain;
      }
      if (tension < 0) tension = 0;
      this.#slack = false;
    } else if (!this.#slack) {
      this.#r.fill(0);
      this.#slack = true;
    }
    if (tension > 0) {
      const s = (tension * this.#dt) / distance;
      const ringShare = s / this.#ringMass;
      const walkerShare = s / this.#walkerMass;
      ring[3] = ring[3]! + ringShare * dx;
      ring[4] = ring[4]! + ringShare * dy;
      ring[5] = ring[5]! + ringShare * dz;
      walker[3] = walker[3]! - walkerShare * dx;
      walker[4] = walker[4]! - walkerShare * dy;
      walker[5] = walker[5]! - walkerShare * dz;
    }
    this.work += 0.5 * (this.tension + tension) * (distance - this.#last);
    this.#last = distance;
    this.tension = tension;
  }

  /** Energy held at a distance, before `pull` [J]. */
  stored(distance: number): number {
    const strain = distance / this.#length - 1;
    if (!this.whole || strain <= 0) return 0;
    let energy = energyAt(this.#curve, strain);
    let pull = 0;
    for (let i = 0; i < this.#r.length; i++) {
      const q = this.#r[i]! + this.#step.stiffness[i]! * strain;
      energy += this.#step.compliance[i]! * q * q;
      pull += q;
    }
    if (pull < 0) energy -= overdrawn(this.#curve, strain, pull, this.#branches);
    return energy * this.#length;
  }

  /** Parts at a distance; returns what it held [J]. The last pull has half of its step's work still to be booked. */
  part(distance: number): number {
    const held = this.stored(distance);
    this.work += 0.5 * this.tension * (distance - this.#last);
    this.whole = false;
    this.tension = 0;
    this.#r.fill(0);
    return held;
  }
}
