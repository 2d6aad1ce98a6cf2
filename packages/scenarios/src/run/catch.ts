/** When a run that asks only for the moment of a catch may end. */
import type { Simulation } from "@secondline/engine";
import { LEAST_TURN_RISE, Settling, type SettlingTimes } from "./settling.ts";

/** After its catch such a run goes on for longer than the CFC 60 filter remembers what it was fed [s]. */
const TIME_AFTER_CATCH = 0.1;

/**
 * Watches one run; to be asked now and then, some ten times a second or more often. It is over soon after the walker has come up again
 * for the first time; where the leash catches nobody, when any run is.
 */
export class CatchWatch {
  readonly #run: Simulation;
  readonly #settling: Settling;
  #caught = Number.POSITIVE_INFINITY;

  constructor(run: Simulation, times: SettlingTimes) {
    this.#run = run;
    this.#settling = new Settling(run, times);
  }

  over(): boolean {
    const { time, walkerHeight, lowest, events } = this.#run;
    const taut = events.some(({ kind }) => kind === "leashTaut");
    if (taut && walkerHeight > lowest + LEAST_TURN_RISE) this.#caught = Math.min(this.#caught, time);
    return this.#settling.over() || time > this.#caught + TIME_AFTER_CATCH;
  }
}
