/**
 * The walker's feet on the line, which let go: up on the walker, down on the line's point, falling to nothing over `letGo`, or at once
 * when the line falls away from under them.
 */
import { GRAVITY } from "../constants.ts";
import { COLUMN } from "../kernel/lineLayout.ts";
import type { Model } from "../line/model.ts";
import type { Problem } from "../problem.ts";

export class Feet {
  /** Whether they still push. */
  pushing: boolean;
  /** Work that they did: up to the end of the last step, and to x(t) within it [J]. */
  work = 0;
  workNow = 0;
  readonly #problem: Problem;
  readonly #model: Model;
  readonly #m: Float64Array;
  readonly #walker: Float64Array;
  readonly #step: number;
  /** Height of the walker above the line's point from which on the line has left the feet [m]. */
  readonly #reach: number;
  /** Force of the step at hand [N], and the speed of parting before it [m/s]. */
  #force = 0;
  #speed = 0;

  /** `walker`: position and velocity. */
  constructor(problem: Problem, model: Model, memory: Float64Array, walker: Float64Array) {
    this.#problem = problem;
    this.#model = model;
    this.#m = memory;
    this.#walker = walker;
    this.#step = model.step;
    this.pushing = problem.start === "standing";
    this.#reach = problem.walker.tieIn + (problem.feetReach ?? Number.POSITIVE_INFINITY);
  }

  /** To be called before anything has changed velocities in a step. */
  begin(): void {
    this.#speed = this.#parting();
  }

  /** Pushes in the so-many-th step, after the kernel has moved the line; lets go when the time has come or the line has gone. */
  push(steps: number): void {
    const { walker } = this.#problem;
    const letGo = this.#problem.letGo ?? 0;
    const t = steps * this.#step;
    const pushes = t < letGo && this.#above() <= this.#reach;
    this.#force = pushes ? walker.mass * GRAVITY * (1 - t / letGo) : 0;
    if (this.#force === 0) {
      this.pushing = false;
      return;
    }
    const { main, start } = this.#model;
    const m = this.#m;
    const Z = main.base + COLUMN.Z * main.pitch + start;
    const VZ = main.base + COLUMN.VZ * main.pitch + start;
    // The kernel has moved the node. Where the line will be cut under the feet, the seam's two nodes share the impulse.
    const change = this.#force * this.#step * m[main.base + COLUMN.IM * main.pitch + start]!;
    m[VZ] = m[VZ]! - change;
    m[Z] = m[Z]! - this.#step * change;
    this.#walker[5] = this.#walker[5]! + (this.#force * this.#step) / walker.mass;
  }

  /** Books the step's work, at the mean of the speeds before and after it. */
  book(): void {
    if (this.#force === 0) {
      this.workNow = this.work;
      return;
    }
    const half = 0.5 * this.#force * this.#step;
    // An audit of this step sees the work up to x(t): half of the step's.
    this.workNow = this.work + half * this.#speed;
    this.work = this.workNow + half * this.#parting();
    this.#force = 0;
  }

  /** Height of the walker above the line's point [m]. */
  #above(): number {
    const { main, start } = this.#model;
    return this.#walker[2]! - this.#m[main.base + COLUMN.Z * main.pitch + start]!;
  }

  /** Speed at which walker and line's point part, upward on the walker [m/s]. */
  #parting(): number {
    const { main, start } = this.#model;
    return this.#walker[5]! - this.#m[main.base + COLUMN.VZ * main.pitch + start]!;
  }
}
