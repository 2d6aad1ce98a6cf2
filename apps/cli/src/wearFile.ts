/** Reads a wear record. */
import { readWearRecord, type WearRecord } from "@secondline/strength";
import { faults, LARGEST_BYTES, readText } from "./input.ts";

export const readWearFile = (file: string): WearRecord => wearOf(file, readText(file, LARGEST_BYTES.wear));

export function wearOf(file: string, text: string): WearRecord {
  const reading = readWearRecord(text);
  if (!reading.ok) throw faults(file, reading);
  return reading.record;
}
