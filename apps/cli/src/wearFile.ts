/** A rig's state on a date, by its wear record or by its own document, and what it will be later. */
import type { Rig } from "@secondline/rig";
import {
  applyWear,
  futureFromRecord,
  futureFromRig,
  type PlainDate,
  readWearRecord,
  type WearFlag,
  type WearRecord,
} from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, LARGEST, readText } from "./input.ts";

export const readWearFile = (file: string): WearRecord => wearOf(file, readText(file, LARGEST.wear));

export function wearOf(file: string, text: string): WearRecord {
  const reading = readWearRecord(text);
  if (!reading.ok) throw faults(file, reading);
  return reading.record;
}

export interface DatedRig {
  readonly rig: Rig;
  /** What the wear record says must be looked at. */
  readonly notes: readonly string[];
  readonly flags: readonly WearFlag[];
  /** The rig on later days, at the present rate of use. */
  readonly rigOn: (day: PlainDate) => Rig;
}

/** The rig as it is on a date by its record, and on later days if it is used on as it has been. */
export function wornRig(rig: Rig, file: string, on: string): DatedRig {
  const record = readWearFile(file);
  checkDate(on);
  const { rig: worn, notes, state } = applyWear(rig, record, on);
  return { rig: worn, notes, flags: state.flags, rigOn: futureFromRecord(rig, record, on) };
}

/** Without a record: the rig as written is its state on the date, and ages on from there. */
export function agedRig(rig: Rig, on: string): DatedRig {
  checkDate(on);
  return { rig, notes: [], flags: [], rigOn: futureFromRig(rig, on) };
}

const DATE = /^\d{4}-\d{2}-\d{2}$/;

/** Refuses what is no date, or one that does not exist, such as 30 February: it comes back as another day. */
function checkDate(on: string): void {
  const time = DATE.test(on) ? Date.parse(on) : Number.NaN;
  if (!Number.isNaN(time) && new Date(time).toISOString().startsWith(on)) return;
  throw new CommandFailure(EXIT.input, [`--on: got "${on}"; expected a date such as 2026-07-01.`]);
}
