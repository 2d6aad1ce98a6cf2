/** Reads a rig, and what is known of it besides: its wear record, a date, break tests. */
import { type Rig, readRig } from "@secondline/rig";
import type { BreakTest, PlainDate } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, readText } from "./input.ts";

export interface RigOptions {
  readonly wear?: string;
  readonly on?: string;
  readonly tests?: string;
  readonly judge?: readonly string[];
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

/** The rig of a file with what the user thinks of its parts. */
export async function readJudgedRig(file: string, judge: readonly string[] = []): Promise<Rig> {
  const rig = readRigFile(file);
  return judge.length === 0 ? rig : (await import("./judgements.ts")).withJudgements(rig, judge);
}

export async function readKnownRig(file: string, { wear, on, tests, judge }: RigOptions): Promise<KnownRig> {
  const rig = await readJudgedRig(file, judge);
  const breakTests =
    tests === undefined ? [] : (await import("./breakLogFile.ts")).readBreakLogFile(tests, readText(tests));
  if (on === undefined) {
    if (wear === undefined) return { rig, notes: [], breakTests };
    throw new CommandFailure(EXIT.input, ["--wear needs --on: a wear record gives a state only on a date."]);
  }
  const { agedRig, wornRig } = await import("./wearFile.ts");
  return wear === undefined ? { ...agedRig(rig, on), breakTests } : { ...wornRig(rig, wear, on), breakTests };
}
