/** The loads behind an E: what the single runs of the event that governs ask of a part, or of the person. */
import type { Outcome, PartOutcome } from "./outcome.ts";

export interface LoadStrip {
  /** Index of the event in the outcome. */
  readonly whatIf: number;
  /** One for each run, in rising order [N]; 0 where a run did not load the part. */
  readonly loads: readonly number[];
  /** Whether something was drawn in the runs; else it is the event as it stands. */
  readonly drawn: boolean;
  /** E with its 95 % interval, and R [N]; the pull on a person has no R. */
  readonly demand: number;
  readonly interval: readonly [low: number, high: number];
  readonly strength5?: number;
}

/** The loads of a part in the event and the class that govern it; undefined if no run loaded the part. */
export function partStrip({ governing, byClass }: Pick<PartOutcome, "governing" | "byClass">): LoadStrip | undefined {
  const least = governing && byClass[governing];
  if (!least) return undefined;
  const { whatIf, loads, drawn, demand, demandInterval, strength5 } = least;
  return { whatIf, loads, drawn, demand, interval: demandInterval, strength5 };
}

/** The pulls on the person, in the event with the hardest pull. */
export function pullStrip({ person }: Pick<Outcome, "person">): LoadStrip | undefined {
  if (!person) return undefined;
  const { event, loads, drawn, demand, low, high } = person;
  return { whatIf: event, loads, drawn, demand, interval: [low, high] };
}
