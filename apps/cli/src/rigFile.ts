/** Reads a rig, and what is known of it besides: its wear record, a date, break tests. */
import { type Rig, readRig } from "@secondline/rig";
import type { BreakTest, PlainDate } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, readText } from "./input.ts";

export interface RigOptions {
  readonly wear?: string;
  readonly on?: string;
  readonly tests?: string;
}

export interface KnownRig {
  /** As written, or as it is on the date by its wear record. */
  readonly rig: Rig;
  /** What the wear record says must be looked at. */
  readonly notes: readonly string[];
  readonly breakTests: readonly BreakTest[];
  /** The rig on later days, at the present rate of use; only with a date. */
  readonly rigOn?: (day: PlainDate) => Rig;
}

export function readRigFile(file: string): Rig {
  const reading = readRig(readText(file));
  if (!reading.ok) throw faults(file, reading.issues);
  return reading.rig;
}

export async function readKnownRig(file: string, { wear, on, tests }: RigOptions): Promise<KnownRig> {
  const rig = readRigFile(file);
  const breakTests =
    tests === undefined ? [] : (await import("./breakLogFile.ts")).readBreakLogFile(tests, readText(tests));
  if (on === undefined) {
    if (wear === undefined) return { rig, notes: [], breakTests };
    throw new CommandFailure(EXIT.input, ["--wear needs --on: a wear record gives a state only on a date."]);
  }
  const { agedRig, wornRig } = await import("./wearFile.ts");
  return wear === undefined ? { ...agedRig(rig, on), breakTests } : { ...wornRig(rig, wear, on), breakTests };
}
