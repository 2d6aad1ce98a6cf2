/** Reads a wear record and brings a rig to its state on a date. */
import type { Rig } from "@secondline/rig";
import { applyWear, readWearRecord, type WearRecord, type WornRig } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, readText } from "./input.ts";
import { message } from "./terminal.ts";

export function readWearFile(file: string): WearRecord {
  const reading = readWearRecord(readText(file));
  if (!reading.ok) throw faults(file, reading.issues);
  return reading.record;
}

/** The rig as it is on a date; what the record has to say about it goes to stderr. */
export function wornRig(rig: Rig, file: string, on: string): WornRig {
  const record = readWearFile(file);
  const worn = onDate(() => applyWear(rig, record, on), on);
  for (const note of worn.notes) message(`${file}: ${note}`);
  return worn;
}

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** A date that does not exist, such as 30 February, throws where it is read. */
function onDate<T>(work: () => T, on: string): T {
  const wrong = new CommandFailure(EXIT.input, [`--on: got "${on}"; expected a date such as 2026-07-01.`]);
  if (!DATE.test(on)) throw wrong;
  try {
    return work();
  } catch (error) {
    throw error instanceof RangeError ? wrong : error;
  }
}
