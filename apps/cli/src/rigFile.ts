/** Reads a rig, and what is known of it besides: its wear record, a date, break tests. */
import { type Rig, readRig } from "@secondline/rig";
import type { BreakTest, PlainDate } from "@secondline/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { faults, LARGEST, readText } from "./input.ts";

export interface RigOptions {
  readonly wear?: string;
  readonly on?: string;
  readonly tests?: string;
  readonly judge?: readonly string[];
}

export interface KnownRig {
  /** As written, or as it is on the date by its wear record. */
  readonly rig: Rig;
  /** What the wear record says must be looked at, and which break tests count. */
  readonly notes: readonly string[];
  readonly breakTests: readonly BreakTest[];
  /** The rig on later days, at the present rate of use; only with a date. */
  readonly rigOn?: (day: PlainDate) => Rig;
}

export const readRigFile = (file: string): Rig => rigOf(file, readText(file, LARGEST.rig));

export function rigOf(file: string, text: string): Rig {
  const reading = readRig(text);
  if (!reading.ok) throw faults(file, reading);
  return reading.rig;
}

/** The rig of a file with what the user thinks of its parts. */
export async function readJudgedRig(file: string, judge: readonly string[] = []): Promise<Rig> {
  const rig = readRigFile(file);
  return judge.length === 0 ? rig : (await import("./judgements.ts")).withJudgements(rig, judge);
}

export async function readKnownRig(file: string, { wear, on, tests, judge }: RigOptions): Promise<KnownRig> {
  const rig = await readJudgedRig(file, judge);
  const { breakTests, testNotes } = await knownTests(rig, tests);
  if (on === undefined) {
    if (wear === undefined) return { rig, notes: testNotes, breakTests };
    throw new CommandFailure(EXIT.input, ["--wear needs --on: a wear record gives a state only on a date."]);
  }
  const { agedRig, wornRig } = await import("./wearFile.ts");
  const dated = wear === undefined ? agedRig(rig, on) : wornRig(rig, wear, on);
  return { ...dated, notes: [...dated.notes, ...testNotes], breakTests };
}

/** Break tests, and what they do and do not do for the rig. */
async function knownTests(rig: Rig, file: string | undefined) {
  if (file === undefined) return { breakTests: [], testNotes: [] };
  const { readBreakLogFile, testNotes } = await import("./breakLogFile.ts");
  const breakTests = readBreakLogFile(file);
  return { breakTests, testNotes: testNotes(rig, breakTests) };
}
