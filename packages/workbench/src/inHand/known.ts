/**
 * What is known besides the rig's own document: a wear record on a day, and own break tests. The wear view hands it over by
 * `actions.know` whenever record, day or log change; everybody else reads the result in `state.assessment`.
 */
import type { Rig } from "@secondline/rig";
import {
  type Assessed,
  type AssessmentIssue,
  type assess,
  assessRig,
  inputHash,
  type speaksOf,
} from "@secondline/scenarios";
import type { BreakTest, WearRecord } from "@secondline/strength";

/** The code that applies records and break tests to a rig. A page that has neither does not load it. */
export interface WearReader {
  readonly assess: typeof assess;
  readonly speaksOf: typeof speaksOf;
}

export interface LoadedEvidence {
  /** The loaded record, as last read without a fault. */
  readonly record?: WearRecord;
  /** The day of the state, YYYY-MM-DD. */
  readonly on: string;
  /** The tests of the loaded break log. */
  readonly tests: readonly BreakTest[];
  /** Whether the record, or the log, is invented: an invented one is taken into account for invented rigs only. */
  readonly invented: { readonly record: boolean; readonly tests: boolean };
  /** Both are the examples that nobody opened: they count for the rig that the record speaks of, and for no other. */
  readonly example?: boolean;
  /** Needed if a record or a test is loaded. */
  readonly reader?: WearReader;
}

export const NOTHING_KNOWN: LoadedEvidence = { on: "", tests: [], invented: { record: false, tests: false } };

/** All that is known of the last good rig, worked out. Verdict, runs, chances, report and pictures take `assessed`. */
export interface AssessmentSlice {
  readonly known: LoadedEvidence;
  /** The user has chosen to leave record and tests out. */
  readonly leftOut: boolean;
  readonly assessed: Assessed;
  /** Fingerprint of `assessed`: every computed result belongs to one fingerprint. */
  readonly key: string;
  /** The rig and what is known do not fit together: no verdict until it is put right or left out. */
  readonly issues: readonly AssessmentIssue[];
  /** Whether the record, or the tests, speak of this rig, left out or not. */
  readonly speaks: { readonly record: boolean; readonly tests: boolean };
  /** Record or tests speak of this rig, so the user can choose to leave them out. */
  readonly choice: boolean;
}

/** Takes what speaks of the rig, unless it is left out. */
export function assessmentOf(rig: Rig, known: LoadedEvidence, leftOut: boolean): AssessmentSlice {
  const { reader } = known;
  const plain = { known, leftOut, ...keyed(assessRig(rig)), issues: [] };
  if (!reader) return { ...plain, ...choiceOf(false, false) };
  const besides = evidenceFor(rig, known);
  const { wear, tests } = besides;
  if (!wear && tests.length === 0) return { ...plain, ...choiceOf(false, false) };
  const read = reader.assess({ rig, ...besides });
  if (!read.ok) return { ...plain, issues: leftOut ? [] : read.issues, ...choiceOf(wear !== undefined, false) };
  const { taken } = read.assessed;
  const choice = choiceOf(taken.wear !== undefined, (taken.tests?.count ?? 0) > 0);
  return leftOut && choice.choice ? { ...plain, ...choice } : { ...plain, ...keyed(read.assessed), ...choice };
}

/** The part of the loaded evidence that counts for a rig: a record that speaks of the rig, and tests. */
export function evidenceFor(
  rig: Rig,
  known: LoadedEvidence,
): { readonly wear?: WearRecord; readonly on?: string; readonly tests: readonly BreakTest[] } {
  const { record, on, reader } = known;
  const wear =
    reader && record && !unlike(rig, known.invented.record) && concerns(reader, record, rig, on) ? record : undefined;
  const tests = unlike(rig, known.invented.tests) || (known.example && !wear) ? [] : known.tests;
  return { ...(wear ? { wear, on } : {}), tests };
}

function choiceOf(record: boolean, tests: boolean): Pick<AssessmentSlice, "speaks" | "choice"> {
  return { speaks: { record, tests }, choice: record || tests };
}

/** Made-up wear and tests say nothing of a rig that stands somewhere. */
const unlike = (rig: Rig, invented: boolean) => invented && !rig.invented;

function keyed(assessed: Assessed): Pick<AssessmentSlice, "assessed" | "key"> {
  const { hash, taken, notes, withholds } = assessed;
  return { assessed, key: inputHash({ hash, taken, notes, withholds }) };
}

/** The record has something of this rig on the day, or on a day on which `assess` then tells that it begins later. */
function concerns({ speaksOf }: WearReader, record: WearRecord, rig: Rig, on: string): boolean {
  const dates = [...record.webbings, ...record.parts].flatMap(({ entries }) => entries.map(({ date }) => `${date}`));
  const last = [on, ...dates].sort().at(-1)!;
  const first = [...dates].sort()[0];
  return speaksOf(record, rig, first !== undefined && on < first ? last : on);
}
