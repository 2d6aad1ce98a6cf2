/**
 * All that is known of a rig on a day, in one value: the one input of runs, studies, chances, comparisons, reports and take-down
 * dates. Terminal and page only fill it in.
 */
import {
  distinctFacts,
  type Fact,
  type FactValue,
  judgePart,
  type OwnJudgement,
  type PartId,
  partIds,
  partPath,
  pathSteps,
  type Rig,
  rigFact,
  sameFact,
  valueAt,
} from "@secondline/rig";
import {
  applyWear,
  type BreakTest,
  futureFromRecord,
  futureFromRig,
  latitudeNotes,
  misplacedIssues,
  type PlainDate,
  readDate,
  rigMatch,
  testsUntil,
  type Upkeep,
  upkeepOf,
  type WearRecord,
} from "@secondline/strength";
import { type AssessmentIssue, assessmentFact } from "./assessmentFacts.ts";
import { assessmentNote } from "./assessmentNotes.ts";
import { assessmentHashes } from "./inputHash.ts";
import { testsTaken } from "./testsTaken.ts";

export interface PartJudgement extends OwnJudgement {
  readonly part: PartId;
}

export interface Assessment {
  /** The rig as written. */
  readonly rig: Rig;
  /** What happened to the webbing and the parts, with dates; needs `on`. */
  readonly wear?: WearRecord;
  /** The day of the state, YYYY-MM-DD. */
  readonly on?: string;
  /** Own break tests. */
  readonly tests?: readonly BreakTest[];
  /** They add to the judgements in the rig's file. For the same part they replace the file's judgement. */
  readonly judgements?: readonly PartJudgement[];
}

/** What was taken into account, so that everybody who shows a verdict can say it. */
export interface Taken {
  readonly on?: string;
  /** The wear record's name, and the lines that it has webbing in on that day. */
  readonly wear?: { readonly name: string; readonly lines: readonly ("main" | "backup")[] };
  /** How many break tests were given, and how many of these tests say something about this rig. */
  readonly tests?: { readonly given: number; readonly count: number };
  readonly judged: readonly PartId[];
}

/** An assessment worked out: plain data that crosses to another thread as it is. */
export interface Assessed {
  /** The rig as it is on the day, with every judgement in it. */
  readonly rig: Rig;
  /** The tests pulled up to the day. */
  readonly tests: readonly BreakTest[];
  readonly taken: Taken;
  /** What the wear record and the break log say must be looked at. */
  readonly notes: readonly Fact[];
  /** What must be looked at or put right before the rig may be said to hold. */
  readonly withholds: readonly Fact[];
  /** What the wear record says about inspections, falls and events since then. A rig whose assessment has lapsed is not said to hold. */
  readonly upkeep: Upkeep;
  /** SHA-256 of everything above but the notes. Two assessments with equal hashes give the same verdict. */
  readonly hash: string;
  /** The same hash without what no run depends on: whether values are confirmed, and what has lapsed. */
  readonly runsHash: string;
}

export type AssessmentReading =
  | { readonly ok: true; readonly assessed: Assessed }
  | { readonly ok: false; readonly issues: readonly AssessmentIssue[] };

/** Without a wear record nobody knows inspections or falls. */
const NO_UPKEEP: Upkeep = { lapses: [] };

/** Works an assessment out. It reports every fault at once and takes nothing silently. */
export function assess(assessment: Assessment): AssessmentReading {
  const { rig, wear, on, tests = [], judgements = [] } = assessment;
  const issues = [...dateIssues(assessment), ...judgementIssues(rig, judgements)];
  if (issues.length > 0) return { ok: false, issues };
  const misplaced = wear && on !== undefined ? misplacedIssues(rig, wear, on) : [];
  if (misplaced.length > 0) {
    return { ok: false, issues: misplaced.map((issue) => ({ ...issue, path: `wear.${issue.path}` })) };
  }
  const worn = wear && on !== undefined ? applyWear(rig, wear, on) : undefined;
  const lines = wear && worn ? linesOf(worn.state.webbings, rig) : [];
  if (wear && lines.length === 0 && !hasParts(wear, rig)) return { ok: false, issues: [notThisRig(wear, rig)] };
  const judged = judgements.reduce((done, { part, ...own }) => judgePart(done, part, own)!, worn?.rig ?? rig);
  const displaced = displacedNotes(worn?.rig ?? rig, judgements);
  const known = testsUntil(tests, on);
  const used = testsTaken(judged, known, on);
  const withholds = worn?.needsInspection ?? [];
  const upkeep = wear && on !== undefined ? upkeepOf(rig, wear, readDate(on)!) : NO_UPKEEP;
  const taken: Taken = {
    ...(on === undefined ? {} : { on }),
    ...(wear ? { wear: { name: wear.name, lines: lines.filter((line) => rig[line] !== undefined) } } : {}),
    ...(tests.length > 0 ? { tests: { given: tests.length, count: used.count } } : {}),
    judged: judgements.map(({ part }) => part),
  };
  return {
    ok: true,
    assessed: {
      rig: judged,
      tests: known.counted,
      taken,
      notes: [
        ...distinctFacts([
          ...(worn?.notes ?? []).filter((note) => !withholds.some((one) => sameFact(one, note))),
          ...latitudeNotes(judged),
        ]),
        ...displaced,
        ...used.notes,
      ],
      withholds,
      upkeep,
      ...assessmentHashes({ rig: judged, tests: known.counted, withholds, lapses: upkeep.lapses }),
    },
  };
}

/** Own judgements of the file that others take the place of: said, since a doubt may go with them. */
function displacedNotes(rig: Rig, judgements: readonly PartJudgement[]): readonly Fact[] {
  return judgements.flatMap(({ part, factor: now }) =>
    judgementsIn(rig, part).map(({ factor, reason }) =>
      assessmentNote("judgement.displaced", { part, now: judged(now), was: judged(factor), reason }),
    ),
  );
}

const judged = (factor: number | undefined): FactValue =>
  factor === undefined ? assessmentNote("judgement.doubt", {}) : assessmentNote("judgement.times", { factor });

/** Of a line those of all its sections, each once. */
function judgementsIn(rig: Rig, part: PartId): readonly OwnJudgement[] {
  const value = valueAt(rig, pathSteps(partPath(rig, part)));
  const written = Array.isArray(value) ? value : [value];
  const all = written.flatMap((one) => (one as { readonly own?: OwnJudgement } | undefined)?.own ?? []);
  return all.filter((one, i) => all.findIndex((o) => o.factor === one.factor && sameFact(o.reason, one.reason)) === i);
}

/** The rig on later days, at the present rate of use; needs a date. */
export function rigOnLaterDays({ rig, wear, on, judgements = [] }: Assessment): ((day: PlainDate) => Rig) | undefined {
  if (on === undefined) return undefined;
  const later = wear ? futureFromRecord(rig, wear, on) : futureFromRig(rig, on);
  return (day) => judgements.reduce((done, { part, ...own }) => judgePart(done, part, own)!, later(day));
}

function linesOf(
  webbings: readonly { readonly placement?: { readonly rig: string; readonly line: "main" | "backup" } }[],
  rig: Rig,
): readonly ("main" | "backup")[] {
  const here = webbings.flatMap(({ placement }) => (placement && isRig(placement.rig, rig) ? [placement.line] : []));
  return (["main", "backup"] as const).filter((line) => here.includes(line));
}

/** Records hang on a rig by its id; a match by name alone is said in the notes. */
const isRig = (named: string, rig: Rig): boolean => rigMatch(rig, named) !== undefined;

const hasParts = (wear: WearRecord, rig: Rig): boolean => wear.parts.some((part) => isRig(part.rig, rig));

/** Whether a record says anything of a rig on a day. */
export function speaksOf(wear: WearRecord, rig: Rig, on: string): boolean {
  if (hasParts(wear, rig)) return true;
  return linesOf(applyWear(rig, wear, on).state.webbings, rig).length > 0;
}

function dateIssues({ wear, on }: Assessment): AssessmentIssue[] {
  const expected = assessmentFact("expected.day", {});
  if (on === undefined) {
    if (!wear) return [];
    return [{ path: "on", got: rigFact("got.nothing", {}), expected, message: assessmentFact("day.wanted", {}) }];
  }
  const day = readDate(on);
  if (!day)
    return [{ path: "on", got: `"${on}"`, expected, message: assessmentFact("day.form", { day: on, expected }) }];
  const dates = wear ? [...wear.webbings, ...wear.parts].flatMap(({ entries }) => entries.map(({ date }) => date)) : [];
  if (dates.length === 0) return [];
  const first = dates.map((date) => date.toString()).sort()[0]!;
  if (on >= first) return [];
  const message = assessmentFact("day.beforeRecord", { day: { day: on }, begins: { day: first } });
  return [{ path: "on", got: on, expected: assessmentFact("expected.fromDay", { date: first }), message }];
}

function judgementIssues(rig: Rig, judgements: readonly PartJudgement[]): AssessmentIssue[] {
  const known = partIds(rig);
  const twice = judgements.filter(({ part }, i) => judgements.findIndex((one) => one.part === part) < i);
  const repeated = twice.map(({ part }) => ({
    path: "judgements",
    got: assessmentFact("got.partTwice", { part }),
    expected: assessmentFact("expected.oneJudgement", {}),
    message: assessmentFact("judgement.twice", { part }),
  }));
  const unknown = judgements
    .filter(({ part }) => !known.includes(part))
    .map(({ part }) => ({
      path: "judgements",
      got: `"${part}"`,
      expected: assessmentFact("expected.part", {}),
      message: assessmentFact("judgement.noPart", { part, parts: { list: known } }),
    }));
  return [...unknown, ...repeated];
}

function notThisRig(wear: WearRecord, rig: Rig): AssessmentIssue {
  const placed = wear.webbings.flatMap(({ entries }) =>
    entries.flatMap((entry) => ("placement" in entry ? [entry.placement.rig] : [])),
  );
  const others = [...new Set([...placed, ...wear.parts.map((part) => part.rig)])];
  const names = { list: others.map((name) => `"${name}"`) };
  const told = { record: wear.name, rig: rig.name };
  const expected = assessmentFact("expected.inRig", { name: rig.name });
  return others.length === 0
    ? { path: "wear", got: assessmentFact("got.noRig", {}), expected, message: assessmentFact("record.otherRig", told) }
    : {
        path: "wear",
        got: assessmentFact("got.otherRigs", { names }),
        expected,
        message: assessmentFact("record.otherRigs", { ...told, names }),
      };
}
