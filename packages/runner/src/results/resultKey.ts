/** By what a result is kept: everything that decides about it. Two runs with one key give the same numbers, to the bit. */
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
export function runKey({ hash }: Assessed, { event, draw, accuracy, trace = false }: RunOrder): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed: hash, event, draw, accuracy, trace });
}

/** Of a whole study. What is said beside the numbers (notes, dates) is part of it. */
export function studyKey(assessed: Assessed, { tellSoFar: _, ...options }: SearchOptions): string {
  return inputHash({ version: VERSION, generation: GENERATION, assessed, options });
}

/** Whether a run would end the same way again; one that was cancelled or lost its threads may not. */
export const worthKeeping = (result: RunResult): boolean => result.ok || result.trouble.reason !== "cancelled";
