/** The leash: a massless, tension-only string between ring and walker, with the tension law of a line. */
import { branchStiffness, type MaxwellStep, maxwellStep } from "./maxwell.ts";
import type { Material } from "./problem.ts";
import { energyAt, overdrawn, type TensionCurve, tensionAt } from "./tensionCurve.ts";

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
  readonly #sum: number;
  /** ΣE of the branches [N]. */
  readonly #branches: number;

  constructor(leash: { length: number; material: Material }, curve: TensionCurve, step: number) {
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

  /** Tension at a distance, moving the branches on by one step [N]. */
  pull(distance: number): number {
    if (!this.whole) return 0;
    const strain = distance / this.#length - 1;
    const { decay, release } = this.#step;
    let tension = 0;
    if (strain > 0) {
      tension = tensionAt(this.#curve, strain) + this.#sum * strain;
      for (let i = 0; i < this.#r.length; i++) {
        const r = this.#r[i]!;
        tension += r;
        this.#r[i] = decay[i]! * r - release[i]! * strain;
      }
      if (tension < 0) tension = 0;
    } else this.#r.fill(0);
    this.work += 0.5 * (this.tension + tension) * (distance - this.#last);
    this.#last = distance;
    this.tension = tension;
    return tension;
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
