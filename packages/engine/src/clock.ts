/** When the steps of a stretch of a run happen, all of one length. */
export interface Clock {
  /** [s] */
  readonly step: number;
  /** Number of the stretch's first step in the run, and its time [s]. */
  readonly firstStep: number;
  readonly firstTime: number;
}

/** Time at which the so-many-th step of the run begins [s]. */
export const timeOf = ({ step, firstStep, firstTime }: Clock, steps: number): number =>
  firstTime + (steps - firstStep) * step;
