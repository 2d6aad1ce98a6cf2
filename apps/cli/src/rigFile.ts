/** Reads a rig, and brings it to its state on a date when there is a wear record. */
import { type Rig, readRig } from "@secondline/rig";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, readText } from "./input.ts";

export interface WearOptions {
  readonly wear?: string;
  readonly on?: string;
}

export function readRigFile(file: string): Rig {
  const reading = readRig(readText(file));
  if (!reading.ok) throw faults(file, reading.issues);
  return reading.rig;
}

export async function readWornRig(file: string, { wear, on }: WearOptions): Promise<Rig> {
  const rig = readRigFile(file);
  if (wear === undefined && on === undefined) return rig;
  if (wear === undefined || on === undefined) {
    throw new CommandFailure(EXIT.input, ["--wear and --on go together: a wear record gives a state only on a date."]);
  }
  const { wornRig } = await import("./wearFile.ts");
  return wornRig(rig, wear, on).rig;
}
