/** Makes an assessment from the options of a command: the rig, its wear record, the day, own break tests and judgements. */
import { partIds, type Rig } from "@secondline/rig";
import {
  type Assessed,
  type Assessment,
  type AssessmentIssue,
  assess,
  type BreakTest,
  type PartJudgement,
} from "@secondline/scenarios";
import type { WearRecord } from "@secondline/strength";
import { readBreakLogFile } from "./breakLogFile.ts";
import { tellErrata } from "./errata.ts";
import type { CommandFailure } from "./failure.ts";
import { faults } from "./input.ts";
import { readJudgements } from "./judgements.ts";
import { readRigFile } from "./rigFile.ts";
import { readWearFile } from "./wearFile.ts";

export interface AssessmentOptions {
  readonly wear?: string;
  readonly on?: string;
  readonly tests?: string;
  readonly judge?: readonly string[];
}

export interface ReadAssessment {
  readonly assessment: Assessment;
  readonly assessed: Assessed;
}

/** The inputs besides the rigs, read once. */
interface Known {
  readonly wear?: WearRecord;
  readonly on?: string;
  readonly tests?: readonly BreakTest[];
  readonly judgements: readonly PartJudgement[];
}

/** One rig with its other inputs. */
export function readAssessment(file: string, options: AssessmentOptions): ReadAssessment {
  tellErrata();
  const rig = readRigFile(file);
  return checkedAssessment(file, rig, readKnown(options, [rig]));
}

export interface ComparedAssessment extends ReadAssessment {
  /** A wear record was given that does not name this rig. */
  readonly withoutWear: boolean;
}

/**
 * Several rigs. Wear record, tests and judgements count for the rigs that they name, and must name at least one of the rigs.
 */
export function readAssessments(files: readonly string[], options: AssessmentOptions): readonly ComparedAssessment[] {
  tellErrata();
  const rigs = files.map(readRigFile);
  const known = readKnown(options, rigs);
  const speaks = rigs.map((rig) => !isStranger(assess(assessmentOf(rig, known))));
  return rigs.map((rig, i) => {
    const file = files[i]!;
    if (known.wear === undefined || speaks[i] || !speaks.includes(true)) {
      return { ...checkedAssessment(file, rig, known), withoutWear: false };
    }
    const { wear: _, ...others } = known;
    return { ...checkedAssessment(file, rig, others), withoutWear: true };
  });
}

function readKnown({ wear, on, tests, judge = [] }: AssessmentOptions, rigs: readonly Rig[]): Known {
  return {
    ...(wear === undefined ? {} : { wear: readWearFile(wear) }),
    ...(on === undefined ? {} : { on }),
    ...(tests === undefined ? {} : { tests: readBreakLogFile(tests) }),
    judgements: readJudgements(judge, rigs),
  };
}

function assessmentOf(rig: Rig, { judgements, ...known }: Known): Assessment {
  const parts = partIds(rig);
  return { rig, ...known, judgements: judgements.filter(({ part }) => parts.includes(part)) };
}

function checkedAssessment(file: string, rig: Rig, known: Known): ReadAssessment {
  const assessment = assessmentOf(rig, known);
  const reading = assess(assessment);
  if (reading.ok) return { assessment, assessed: reading.assessed };
  throw faultsOf(file, reading.issues);
}

/** The record is of another rig, and nothing else is wrong. */
function isStranger(reading: ReturnType<typeof assess>): boolean {
  return !reading.ok && reading.issues.every(({ path }) => path === "wear");
}

const OPTION_OF_FIELD: Readonly<Record<string, string>> = { on: "--on", wear: "--wear", judgements: "--judge" };

/** Faults of the options, not of a place in the file. */
const faultsOf = (file: string, issues: readonly AssessmentIssue[]): CommandFailure =>
  faults(file, { issues: issues.map((issue) => ({ ...issue, path: OPTION_OF_FIELD[issue.path] ?? issue.path })) });
