/**
 * By what a result is kept: everything that decides about it. Two runs with one key give the same numbers, to the bit; a trace for plots
 * may be kept with them or not.
 */
import {
  type Assessed,
  GENERATION,
  inputHash,
  type RunOrder,
  type RunResult,
  type SearchOptions,
  VERSION,
} from "@secondline/scenarios";

/**
 * The event is taken as it is, not by its short key, which rounds places and leaves the moment of a failure out. The run before
 * needs no mention: it is the run of the event before, under the same draw on the same mesh.
 */
export function runKey({ runsHash }: Assessed, { event, draw, accuracy }: RunOrder): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed: runsHash, event, draw, accuracy });
}

/** Of a whole study. What is said beside the numbers (notes, dates) is part of it. */
export function studyKey(assessed: Assessed, { tellSoFar: _, ...options }: SearchOptions): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed, options });
}

/** Whether what is kept is all that an order asks for: one for a plot needs its trace. */
export const serves = (kept: RunResult | undefined, { trace = false }: RunOrder): kept is RunResult =>
  kept !== undefined && !(trace && kept.ok && !kept.trace);

/** Whether a run would end the same way again; one that was cancelled or lost its threads may not. */
export const worthStoring = (result: RunResult): boolean => result.ok || result.trouble.reason !== "cancelled";
