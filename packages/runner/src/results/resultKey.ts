/**
 * The key by which a result is kept: everything that decides about its numbers. Two runs with one key give the same numbers, to
 * the bit; a trace for plots may be kept with them or not.
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
 * The key has the whole event, not its short key, which rounds places and leaves out the moment of a failure. The run of the
 * fall before the failure needs no part in the key: it follows from the event, the draw and the mesh.
 */
export function runKey({ runsHash }: Assessed, { event, draw, accuracy }: RunOrder): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed: runsHash, event, draw, accuracy });
}

/** Key of a whole study. Notes and dates beside the numbers are part of it. */
export function studyKey(assessed: Assessed, { tellSoFar: _, ...options }: SearchOptions): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed, options });
}

/** Whether a kept result has all that an order asks for: an order for a plot needs a trace. */
export const serves = (kept: RunResult | undefined, { trace = false }: RunOrder): kept is RunResult =>
  kept !== undefined && !(trace && kept.ok && !kept.trace);

/** Whether a run would end the same way again; one that was cancelled or lost its threads may not. */
export const worthStoring = (result: RunResult): boolean => result.ok || result.trouble.reason !== "cancelled";
