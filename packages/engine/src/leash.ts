/** The leash: a massless, tension-only string between ring and walker, with the tension law of a line. */
import { branchStiffness, type MaxwellStep, maxwellStep } from "./maxwell.ts";
import type { Material } from "./problem.ts";
import { energyAt, type TensionCurve, tensionAt } from "./tensionCurve.ts";

export class Leash {
  /** Tension of the last step [N]. */
  tension = 0;
  whole = true;
  /** Energy lost in the branches so far [J]. */
  lost = 0;
  readonly #length: number;
  readonly #curve: TensionCurve;
  readonly #step: MaxwellStep;
  readonly #r: Float64Array;
  readonly #sum: number;

  constructor(leash: { length: number; material: Material }, curve: TensionCurve, step: number) {
    this.#length = leash.length;
    this.#curve = curve;
    this.#step = maxwellStep(leash.material.branches, step);
    this.#r = new Float64Array(this.#step.count);
    this.#sum = this.#step.stiffness.reduce((sum, b) => sum + b, 0);
  }

  /** Starts relaxed at a strain: q = 0. */
  relax(distance: number): void {
    const strain = Math.max(0, distance / this.#length - 1);
    for (let i = 0; i < this.#r.length; i++) this.#r[i] = -this.#step.stiffness[i]! * strain;
  }

  /** Tension at a distance, moving the branches on by one step [N]. */
  pull(distance: number): number {
    if (!this.whole) return 0;
    const strain = distance / this.#length - 1;
    const { decay, stiffness, release, loss, compliance } = this.#step;
    let tension = 0;
    let lost = 0;
    if (strain > 0) {
      tension = tensionAt(this.#curve, strain) + this.#sum * strain;
      for (let i = 0; i < this.#r.length; i++) {
        const r = this.#r[i]!;
        const q = r + stiffness[i]! * strain;
        tension += r;
        lost += loss[i]! * q * q;
        this.#r[i] = decay[i]! * r - release[i]! * strain;
      }
      if (tension < 0) tension = 0;
    } else {
      for (let i = 0; i < this.#r.length; i++) {
        lost += compliance[i]! * this.#r[i]! * this.#r[i]!;
        this.#r[i] = 0;
      }
    }
    this.lost += lost * this.#length;
    this.tension = tension;
    return tension;
  }

  /** Energy held at a distance, before `pull` [J]. */
  stored(distance: number): number {
    const strain = distance / this.#length - 1;
    if (!this.whole || strain <= 0) return 0;
    let energy = energyAt(this.#curve, strain);
    for (let i = 0; i < this.#r.length; i++) {
      const q = this.#r[i]! + this.#step.stiffness[i]! * strain;
      energy += this.#step.compliance[i]! * q * q;
    }
    return energy * this.#length;
  }

  part(): void {
    this.whole = false;
    this.tension = 0;
    this.#r.fill(0);
  }
}

/** Largest stiffness of a leash in a fast pull [N/m]. */
export const leashStiffness = (length: number, material: Material, curve: TensionCurve): number =>
  (curve.maxSlope + branchStiffness(material.branches)) / length;
