/** An anchor of several legs that meet at a master point, which moves under legs, lines and weight. */
import { GRAVITY } from "../constants.ts";
import type { EndSupport } from "../line/lineEnds.ts";
import { hypot } from "../portable/index.ts";
import type { LegRest } from "./legs.ts";

/** An anchor's master point on its legs. */
export class LegAnchor {
  readonly end: "A" | "B";
  readonly legs: readonly LegRest[];
  /** Position and velocity. */
  readonly state = new Float64Array(6);
  readonly mass: number;
  readonly whole: boolean[];
  readonly tensions: Float64Array;
  readonly peaks: Float64Array;
  readonly #step: number;
  readonly #force = new Float64Array(3);

  constructor(
    end: "A" | "B",
    legs: readonly LegRest[],
    position: Float64Array,
    make: { readonly mass: number; readonly step: number },
  ) {
    this.end = end;
    this.legs = legs;
    this.state.set(position);
    this.mass = make.mass;
    this.#step = make.step;
    this.whole = legs.map(() => true);
    this.tensions = new Float64Array(legs.length);
    this.peaks = new Float64Array(legs.length);
  }

  /** Goes on from the anchor of another mesh. */
  takeOver(from: LegAnchor): void {
    this.state.set(from.state);
    this.tensions.set(from.tensions);
    this.peaks.set(from.peaks);
    for (const [k, whole] of from.whole.entries()) this.whole[k] = whole;
  }

  /** Adds the legs' pull at the present position to `force`. */
  pull(force: Float64Array): void {
    for (let k = 0; k < this.legs.length; k++) {
      const { leg, rock, length } = this.legs[k]!;
      const dx = rock[0] - this.state[0]!;
      const dy = rock[1] - this.state[1]!;
      const dz = rock[2] - this.state[2]!;
      const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
      const tension = this.whole[k] ? Math.max(0, leg.stiffness * (distance - length)) : 0;
      this.tensions[k] = tension;
      if (tension > this.peaks[k]!) this.peaks[k] = tension;
      force[0] = force[0]! + (tension * dx) / distance;
      force[1] = force[1]! + (tension * dy) / distance;
      force[2] = force[2]! + (tension * dz) / distance;
    }
  }

  /** Moves the point, and the ends of lines on it with it, by one step under legs, lines and weight. */
  move(ends: readonly EndSupport[]): void {
    const { state } = this;
    const force = this.#force;
    force.fill(0);
    this.pull(force);
    let mass = this.mass;
    for (let k = 0; k < ends.length; k++) {
      if (!this.#holds(ends[k]!)) continue;
      ends[k]!.addForce(force, state);
      mass += ends[k]!.mass;
    }
    for (let c = 0; c < 3; c++) {
      state[3 + c] = state[3 + c]! + this.#step * (force[c]! / mass - (c === 2 ? GRAVITY : 0));
      state[c] = state[c]! + this.#step * state[3 + c]!;
    }
    for (let k = 0; k < ends.length; k++) if (this.#holds(ends[k]!)) ends[k]!.place(state);
  }

  #holds({ kind, end }: EndSupport): boolean {
    return kind === "legs" && end === this.end;
  }

  stored(): number {
    let energy = 0;
    for (let k = 0; k < this.legs.length; k++) energy += this.legStored(k);
    return energy;
  }

  legStored(k: number): number {
    if (!this.whole[k]) return 0;
    const { leg, rock, length } = this.legs[k]!;
    const beyond = hypot(rock[0] - this.state[0]!, rock[1] - this.state[1]!, rock[2] - this.state[2]!) - length;
    return beyond > 0 ? 0.5 * leg.stiffness * beyond * beyond : 0;
  }
}
