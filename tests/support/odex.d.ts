/** The little of odex that our tests use: its own sources do not pass our compiler settings. */
export enum Outcome {
  Converged = 0,
  MaxStepsExceeded = 1,
  EarlyReturn = 2,
}
export class Solver {
  constructor(size: number);
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(
    derivative: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[]; readonly outcome: Outcome };
}
