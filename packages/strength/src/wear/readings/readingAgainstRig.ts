/** Compares a reading of tension or sag with the tension that a rig states. */
import type { Rig } from "@secondline/rig";
import { constant } from "../../derating/constantValues.ts";
import { type NoteFact, noteFact } from "../../noteFacts.ts";
import type { LineReading } from "./lineReading.ts";
import { standing } from "./lineStatics.ts";

export interface ReadingComparison {
  readonly reading: LineReading;
  /** Tension with nobody on the line that follows from the reading, and its range [N]. */
  readonly pretension: number;
  readonly low: number;
  readonly high: number;
  /** Tension that the rig states [N]. */
  readonly stated: number;
  /** Excess of the read tension over the stated one, as a share of the stated one [-]. */
  readonly difference: number;
  /** Whether the stated tension lies within the range of the reading. */
  readonly agrees: boolean;
  readonly message: NoteFact;
}

/** Range of tensions that is searched [N]. */
const LEAST_TENSION = 20;
const MOST_TENSION = 100e3;

/**
 * Compares a reading with the tension that the rig states. It inverts the statics: which tension with nobody on the line gives
 * the reading?
 */
export function readingAgainstRig(rig: Rig, reading: LineReading): ReadingComparison {
  const { value, within } = readValue(reading);
  const ends = [value - within, value + within].map((read) => impliedTension(rig, reading, read));
  const pretension = impliedTension(rig, reading, value);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const stated = rig.main.pretension;
  const difference = pretension / stated - 1;
  const agrees = low <= stated && stated <= high;
  const facts = { reading, pretension, low, high, stated, difference, agrees };
  return { ...facts, message: comparisonNote(facts) };
}

/** The same rig with the tension that was read. */
export function rigAsRead(rig: Rig, reading: LineReading): Rig {
  return { ...rig, main: { ...rig.main, pretension: readingAgainstRig(rig, reading).pretension } };
}

function readValue(reading: LineReading): { readonly value: number; readonly within: number } {
  switch (reading.kind) {
    case "tension":
      return { value: reading.tension, within: reading.within ?? constant("reading.tension") * reading.tension };
    case "sag":
      return { value: reading.sag, within: reading.within ?? constant("reading.sag") * reading.sag };
  }
}

/** The tension with nobody on the line that gives the reading `read` [N]; a limit of the range if no tension in it does. */
function impliedTension(rig: Rig, reading: LineReading, read: number): number {
  const { walker, at = 0.5 } = reading;
  if (walker === undefined) return Math.min(MOST_TENSION, Math.max(LEAST_TENSION, read));
  const tooTight = (tension: number) => {
    const found = standing(rig, tension, { walker, at });
    if (found === undefined) return true;
    return reading.kind === "sag" ? found.sag < read : found.tension > read;
  };
  let [low, high] = [LEAST_TENSION, MOST_TENSION];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (tooTight(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

function comparisonNote(found: Omit<ReadingComparison, "message">): NoteFact {
  const { reading, pretension, low, high, stated, agrees, difference } = found;
  const { on } = reading;
  const values = {
    what: readNote(reading),
    comes: { force: pretension },
    low: { force: low },
    high: { force: high },
    stated: { force: stated },
  };
  if (agrees)
    return on === undefined
      ? noteFact("reading.agrees", values)
      : noteFact("reading.agreesOn", { ...values, on: { day: on } });
  const kind = difference > 0 ? "more" : "less";
  const differs = { ...values, difference: { share: Math.abs(difference) } };
  return on === undefined
    ? noteFact(`reading.${kind}`, differs)
    : noteFact(`reading.${kind}On`, { ...differs, on: { day: on } });
}

/** The value that was read, and the walker under whom. */
function readNote(reading: LineReading): NoteFact {
  const mass = reading.walker === undefined ? undefined : { mass: reading.walker };
  switch (reading.kind) {
    case "sag": {
      const sag = { length: reading.sag };
      return mass === undefined ? noteFact("reading.sag", { sag }) : noteFact("reading.sagUnder", { sag, mass });
    }
    case "tension": {
      const tension = { force: reading.tension };
      return mass === undefined
        ? noteFact("reading.tension", { tension })
        : noteFact("reading.tensionUnder", { tension, mass });
    }
  }
}
