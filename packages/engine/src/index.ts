export { BareLine, type BareLineOptions, type Place } from "./bareLine.ts";
export { cfc60 } from "./cfc60.ts";
export { GRAVITY, SIGNAL_RATE } from "./constants.ts";
export { AUDIT_LIMIT } from "./energyLedger.ts";
export {
  ESTIMATE_ORDER,
  type EstimatedResult,
  simulateWithEstimate,
  type Uncertainty,
  uncertaintyOf,
} from "./estimate.ts";
export { type LineKernel, typescriptKernel } from "./lineKernel.ts";
export { fastestKernel, wasmKernel } from "./lineKernelWasm.ts";
export { mainNaturalLength } from "./model.ts";
export type * from "./problem.ts";
export { type ProblemReading, readProblem } from "./readProblem.ts";
export type * from "./recording.ts";
export { LEDGER, SIGNALS } from "./recording.ts";
export { Simulation, type SimulationOptions } from "./simulation.ts";
export { resultOf, simulate, solveStanding, startRun } from "./solve.ts";
