/** Reads a rig document. */
import { type Rig, readRig } from "@secondline/rig";
import { faults, LARGEST_BYTES, readText } from "./input.ts";

export const readRigFile = (file: string): Rig => rigOf(file, readText(file, LARGEST_BYTES.rig));

export function rigOf(file: string, text: string): Rig {
  const reading = readRig(text);
  if (!reading.ok) throw faults(file, reading);
  return reading.rig;
}
