/** The small shifts under which the worst events are run again: mass ±1 %, place ±0.4 % of the line, moment ±0.01 s. */
import { type Draw, NO_DRAW } from "../run/runFacts.ts";

/** The event itself first, then four shifts, each quantity once at every one of its values. */
export const DRAWS: readonly Draw[] = [
  NO_DRAW,
  { mass: 1.01, place: 0.002, moment: -0.005 },
  { mass: 0.995, place: -0.004, moment: 0.01 },
  { mass: 1.005, place: 0.004, moment: -0.01 },
  { mass: 0.99, place: -0.002, moment: 0.005 },
];
