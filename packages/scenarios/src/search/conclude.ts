/** Makes the outcome from the runs of a search: margins, verdict, what follows, parts without a second, and the facts for cautions. */
import { solveStanding } from "@secondline/engine";
import { type Basis, type PartId, partRef, type Rig } from "@secondline/rig";
import { type PartStrength, weakestFirst } from "@secondline/strength";
import type { Assessed } from "../assessment/assessment.ts";
import { EVENT_CLASSES } from "../events/eventKind.ts";
import { classOf, takenAway, type WhatIf, whatIfKey } from "../events/registry.ts";
import type { GoodRun } from "../facts/runFacts.ts";
import type { ClassOutcome, FollowUp, Outcome, PartOutcome, PartVerdict } from "../outcome/outcome.ts";
import type { likelyFirst } from "../reliability/likelyFirst.ts";
import { anchorFacts, type CautionFact, judgedFactors, type Slips } from "../rule/cautionFacts.ts";
import { completed, gapsOf, type SearchGap, type SearchState } from "../rule/complete.ts";
import { type EventRuns, levelsOf, measuredRuns } from "../rule/demand.ts";
import { fallFacts } from "../rule/fall.ts";
import {
  type ClassMargin,
  gradeOf,
  isSettled,
  keptShare,
  leastOf,
  type PartMargins,
  partialGrade,
  partMargins,
  requiredFactors,
  sureGrade,
} from "../rule/margins.ts";
import { personMargin } from "../rule/person.ts";
import { lengthOf, utilisation } from "../rule/utilisation.ts";
import { completeFinding, type Finding, type Findings, type Knowing, partialFinding } from "../rule/verdict.ts";
import { withheldIn } from "../rule/withheld.ts";
import { bandOf } from "../run/thinnedTrace.ts";
import { toProblem } from "../run/toProblem.ts";
import type { WhatIfOutcome } from "../run/whatIfOutcome.ts";
import { CENTRE } from "../scatter/sampler.ts";
import { singleFailures } from "../singles/singleFailures.ts";
import { whenGone } from "../singles/whenGone.ts";
import { demandStrengths } from "../strengths/demandStrengths.ts";
import type { RigStrengths } from "../strengths/rigStrengths.ts";
import type { RunBook } from "./runBook.ts";
import type { SearchOptions } from "./search.ts";

export interface SearchFacts {
  readonly assessed: Assessed;
  readonly strengths: RigStrengths;
  readonly statics: Outcome["statics"];
  readonly book: RunBook;
  /** The set, and what was found to follow. */
  readonly events: readonly WhatIf[];
  /** Whether the event with that index counts in the verdict. */
  readonly counts: (index: number) => boolean;
  /** The whole set of the rig. */
  readonly set: readonly WhatIf[];
  readonly options: SearchOptions;
  readonly likely: typeof likelyFirst;
  readonly chosen: boolean;
  /** Whether a few what-ifs are run, once each: chosen ones, or those of a quick look. */
  readonly few: boolean;
  readonly repeated: boolean;
  /** On the way there, which part is likeliest to go first is not worked out. */
  readonly final: boolean;
}

/** The statics could not be solved: nothing can be said of the rig. */
export class StaticsUnsolved extends Error {}
/** No what-if could be computed. */
export class NothingComputed extends Error {}

export function staticsOf(rig: Rig, strengths: RigStrengths): Outcome["statics"] {
  const problem = toProblem(rig, { kind: "leashFall", at: 0.5 }, demandStrengths(rig, strengths));
  const solved = solveStanding(problem);
  if (!solved.ok) throw new StaticsUnsolved(`The rig at rest could not be solved: ${solved.message}`);
  return {
    unloadedTension: solved.unloaded.tension,
    unloadedSag: solved.unloaded.sag,
    standingTension: solved.standing.tension,
    standingSag: solved.standing.sag,
  };
}

export function conclude(facts: SearchFacts): Outcome {
  const { assessed, strengths, book, events, counts, options } = facts;
  const { rig, taken, notes, hash } = assessed;
  const runs = book.eventRuns(events, counts);
  const whatIfs = events.map((event, i) => whatIfOutcome(facts, event, i));
  if (runs.length === 0) throw nothingComputed(whatIfs);
  const margins = partMargins(rig, strengths, runs);
  const falls = fallFacts(runs, facts.few);
  const person = personMargin(runs);
  const state = stateOf(facts, whatIfs);
  const knowing: Knowing = !facts.final ? "onTheWay" : completed(state) ? "all" : "some";
  const found: Findings = {
    parts: margins,
    falls,
    ...(person ? { person } : {}),
    requiredClearance: rig.requiredClearance,
    withholds: withheldIn(assessed, strengths),
    lapses: assessed.upkeep.lapses,
    unconfirmed: rig.unconfirmed ?? [],
    knowing,
  };
  const [finding, complete] = findingOf(found, state);
  // If the assessment has lapsed, no part is said to hold. Nor is a part with a factor beyond its known range.
  const hasLapsed = assessed.upkeep.lapses.length > 0;
  const parts = margins.map((one) => {
    const told = partOutcome(one, knowing, runs);
    return hasLapsed || one.part.beyond !== undefined ? notHolding(told) : told;
  });
  const least = leastOf(margins);
  const worst = margins.find(({ part }) => part.id === least)?.governing?.demand.event;
  const likely =
    facts.final && worst !== undefined
      ? facts.likely(rig, strengths, runs.find(({ index }) => index === worst)!, options.seed)
      : undefined;
  const ofEvent = <T extends { readonly event: number }>({ event, ...rest }: T) => ({ whatIf: event, ...rest });
  return {
    rigName: rig.name,
    span: rig.span,
    invented: rig.invented,
    taken,
    notes,
    hash,
    accuracy: options.accuracy,
    search: {
      complete,
      gaps: gapsOf(state),
      events: state.run,
      of: state.of,
      runs: state.runs,
      chosen: facts.chosen && state.run < state.of,
    },
    required: { ...requiredFactors(rig), clearance: rig.requiredClearance },
    verdict: finding.verdict,
    reasons: finding.reasons,
    whatIfs,
    parts,
    ...(person ? { person } : {}),
    ...(least === undefined ? {} : { leastMargin: least }),
    ...(likely?.parts[0] ? { firstToFail: likely.parts[0].id } : {}),
    likelyFirst: likely,
    singles: singleFailures(rig, shownSingles(events, whatIfs)),
    followUps: followUps(rig, margins, events, whatIfs),
    falls: {
      ...(falls.leastFeet ? { leastFeet: ofEvent(falls.leastFeet) } : {}),
      ...(falls.deepest ? { deepest: ofEvent(falls.deepest) } : {}),
      notCaught: falls.notCaught,
      onGround: falls.onGround,
    },
    blanks: blanksOf(strengths.parts),
    weakestBases: weakestBases(margins, parts),
    cautions: cautionsOf(facts, margins, runs, whatIfs),
    statics: facts.statics,
  };
}

const notHolding = (part: PartOutcome): PartOutcome => (part.verdict === "holds" ? { ...part, verdict: "open" } : part);

function findingOf(found: Findings, state: SearchState): readonly [Finding, boolean] {
  const search = completed(state);
  if (search) return [completeFinding(found, search), true];
  return [partialFinding(found, gapsOf(state) as readonly [SearchGap, ...SearchGap[]]), false];
}

/** Whatever holds all of the set is the whole set, whoever chose it. */
function stateOf(
  { set, events, book, options, repeated, final }: SearchFacts,
  whatIfs: readonly WhatIfOutcome[],
): SearchState {
  const keys = new Set(events.filter((event) => book.good(event).length > 0).map(whatIfKey));
  return {
    of: set.length,
    run: set.filter((event) => keys.has(whatIfKey(event))).length,
    runs: book.runs,
    accuracy: options.accuracy,
    // On the way there are draws to come, whether or not the worst events have some already.
    repeated: repeated && final,
    failed: whatIfs.flatMap(({ whatIf }, i) => (book.failed(whatIf) ? [i] : [])),
  };
}

function whatIfOutcome(facts: SearchFacts, whatIf: WhatIf, index: number): WhatIfOutcome {
  const { book, options, counts } = facts;
  const result = book.result(whatIf, CENTRE, options.accuracy);
  const base = { whatIf, key: whatIfKey(whatIf), class: classOf(whatIf), counts: counts(index) };
  if (!result?.ok) {
    const trouble = result ? { trouble: result.trouble } : {};
    return { ...base, ok: false, ...trouble, caughtBy: "nothing", gaveWay: [], runs: 0 };
  }
  const { peaks, drop, clearance, feetClearance, groundSpeed, caughtBy, lostBecause, gaveWay, trace } = result;
  const band = facts.final && options.traces ? bandOf(book.drawnTraces(whatIf)) : undefined;
  return {
    ...base,
    ok: true,
    peaks,
    drop,
    ...(clearance === undefined ? {} : { clearance }),
    ...(feetClearance === undefined ? {} : { feetClearance }),
    ...(groundSpeed === undefined ? {} : { groundSpeed }),
    caughtBy,
    ...(lostBecause === undefined ? {} : { lostBecause }),
    ...(asksTooMuch(facts, whatIf, result) ? { tooMuch: true } : {}),
    gaveWay,
    runs: book.good(whatIf).length,
    // What is kept may have one though nobody asked for it.
    ...(options.traces && trace ? { trace } : {}),
    ...(band ? { band } : {}),
  };
}

/** The webbing and ends of what holds the walker, by what that is. */
const HOLDING: Readonly<Record<GoodRun["caughtBy"], readonly PartId[]>> = {
  main: ["main", "endA", "endB"],
  backup: ["backup", "backup.endA", "backup.endB"],
  both: ["main", "endA", "endB", "backup", "backup.endA", "backup.endB"],
  remains: [],
  nothing: [],
};

function asksTooMuch({ strengths }: SearchFacts, whatIf: WhatIf, run: GoodRun): boolean {
  const absent = takenAway(whatIf);
  const holding = HOLDING[run.caughtBy].filter((id) => !absent.includes(id));
  return strengths.parts.some(
    (part) =>
      holding.includes(part.id as PartId) && (utilisation(part, run, lengthOf(strengths, part))?.share ?? 0) > 1,
  );
}

function nothingComputed(whatIfs: readonly WhatIfOutcome[]): NothingComputed {
  const reasons = new Set(
    whatIfs.map(({ trouble }) => trouble?.detail ?? trouble?.phrase?.english ?? trouble?.reason ?? "no reason given"),
  );
  return new NothingComputed(
    `No what-if could be computed reliably, so there is no verdict. ${[...reasons].slice(0, 3).join("; ")}`,
  );
}

function partOutcome(one: PartMargins, knowing: Knowing, runs: readonly EventRuns[]): PartOutcome {
  const { part, byClass, governing } = one;
  const zone = governing?.demand.zone;
  const factors = zone?.factors ?? part.factors;
  const at = governing?.demand.at;
  const weakest = zone && at !== undefined ? { at, reason: zone.reason } : part.weakest;
  return {
    id: part.id as PartId,
    verdict: verdictOf(one, knowing),
    settled: governing !== undefined && Object.values(byClass).every(isSettled),
    byClass: Object.fromEntries(
      EVENT_CLASSES.flatMap((name) => (byClass[name] ? [[name, classOutcome(byClass[name])]] : [])),
    ),
    ...(governing ? { governing: governing.demand.class } : { notLoaded: whyNotLoaded(knowing === "all", runs) }),
    rated: zone?.rated ?? part.rated,
    ratedBasis: zone?.ratedBasis ?? part.ratedBasis,
    strength: zone?.strength ?? part.strength,
    strength5: zone?.strength5 ?? part.strength5,
    factors: factors.map(({ name, value, spread, basis }) => ({ name, value, spread, basis })),
    bases: zone ? weakestFirst([zone.ratedBasis, ...factors.map((factor) => factor.basis)]) : part.bases,
    ...(weakest ? { weakest } : {}),
    flags: part.flags,
  };
}

/** What keeps enough holds only when all is known; what may not keep it is thin then. On the way only what is sure is told. */
function verdictOf(one: PartMargins, knowing: Knowing): PartVerdict {
  const grade = gradeOf(one);
  if (grade === "notLoaded") return grade;
  if (knowing === "onTheWay") return sureGrade(one);
  if (knowing === "some") return partialGrade(one);
  return grade === "keeps" ? "holds" : grade === "unsettled" ? "thin" : grade;
}

function classOutcome({ margin, low, high, required, demand }: ClassMargin): ClassOutcome {
  const { load, middle, strength5, strength, event, runs, shares, drawn, at, zone } = demand;
  return {
    margin,
    marginInterval: [low, high],
    required,
    demand: demand.demand,
    demandInterval: [demand.low, demand.high],
    middle,
    load,
    runs,
    loads: shares.map((share) => share * strength5).sort((a, b) => a - b),
    drawn,
    strength5,
    strength,
    whatIf: event,
    ...(at === undefined ? {} : { at }),
    ...(zone ? { reason: zone.reason } : {}),
  };
}

function whyNotLoaded(complete: boolean, runs: readonly EventRuns[]): NonNullable<PartOutcome["notLoaded"]> {
  const lost = (run: GoodRun) => run.caughtBy === "nothing";
  if (runs.some((one) => one.runs.some(lost))) return "walkerLost";
  return complete ? "carriesNothing" : "notRun";
}

/** Events that take just one part away, by part, and whether the walker was caught in them. */
function shownSingles(events: readonly WhatIf[], whatIfs: readonly WhatIfOutcome[]) {
  const shown = new Map<PartId, { event: number; caught: boolean }[]>();
  events.forEach((event, i) => {
    const outcome = whatIfs[i]!;
    if (!outcome.ok) return;
    const first: readonly PartId[] =
      event.kind === "mainFails" ? ["main", ...takenAway(event)] : takenAway(event).slice(0, 1);
    if (event.kind === "givesWay" && event.during.kind !== "leashFall") return;
    for (const part of first) {
      const list = shown.get(part) ?? [];
      list.push({ event: i, caught: outcome.caughtBy !== "nothing" });
      shown.set(part, list);
    }
  });
  return shown;
}

/** For every part below its factor: what holds the walker when the part gives way, by a run or by how the rig is built up. */
function followUps(
  rig: Rig,
  margins: readonly PartMargins[],
  events: readonly WhatIf[],
  whatIfs: readonly WhatIfOutcome[],
): readonly FollowUp[] {
  return margins.flatMap(({ part, byClass }): FollowUp[] =>
    Object.values(byClass).flatMap((one): FollowUp[] => {
      if (keptShare(one) >= 1) return [];
      const id = part.id as PartId;
      const during = one.demand.event;
      const cause = whatIfKey(events[during]!);
      const gives = (is: (during: WhatIf) => boolean) =>
        events.findIndex(
          (event, i) =>
            event.kind === "givesWay" && event.part === id && is(event.during) && !isHeldByItself(rig, id, whatIfs[i]!),
        );
      const same = gives((event) => whatIfKey(event) === cause);
      // Draws may have made another event the worst since: what follows was looked at in one of its kind.
      const shown = same >= 0 ? same : gives((event) => classOf(event) === one.demand.class);
      if (shown >= 0 && whatIfs[shown]!.ok)
        return [{ part: id, during, caughtBy: whatIfs[shown]!.caughtBy, whatIf: shown }];
      if (whenGone(rig, id)?.leaves === "nothing") return [{ part: id, during, caughtBy: "nothing" }];
      return [];
    }),
  );
}

/** Whether the line that goes with a part held the walker all the same: in such a run the load was not reached again, and nothing gave way. */
function isHeldByItself(rig: Rig, part: PartId, { caughtBy }: WhatIfOutcome): boolean {
  const ref = partRef(part);
  const line = ref?.kind === "webbing" ? ref.line : whenGone(rig, part)?.loses?.line;
  return line !== undefined && (caughtBy === "both" || caughtBy === line);
}

const MOST_BLANKS = 5;

function blanksOf(parts: readonly PartStrength[]): Outcome["blanks"] {
  return (
    parts
      .flatMap((part) => (part.blanks ?? []).map(({ field, costs }) => ({ part: part.id as PartId, field, costs })))
      // The share that is left: the least is the dearest blank.
      .sort((a, b) => a.costs - b.costs)
      // One field can be a blank of many parts, as the latitude is: it is named where it costs most.
      .filter(({ field }, i, all) => all.findIndex((one) => one.field === field) === i)
      .slice(0, MOST_BLANKS)
  );
}

const MOST_BASES = 6;

/** The weakest bases of the parts that are nearest to failing: what the verdict hangs on. */
function weakestBases(margins: readonly PartMargins[], parts: readonly PartOutcome[]): readonly Basis[] {
  const share = (id: string) => {
    const governing = margins.find(({ part }) => part.id === id)?.governing;
    return governing ? keptShare(governing) : Number.MAX_VALUE;
  };
  const nearest = [...parts].sort((a, b) => share(a.id) - share(b.id)).slice(0, 4);
  return weakestFirst(nearest.flatMap((part) => part.bases.slice(0, 3))).slice(0, MOST_BASES);
}

const UNFOUNDED = new Set(["assumed", "from memory", "common practice"]);

function cautionsOf(
  { assessed, strengths, set, options, book, events }: SearchFacts,
  margins: readonly PartMargins[],
  runs: readonly EventRuns[],
  whatIfs: readonly WhatIfOutcome[],
): readonly CautionFact[] {
  const { rig } = assessed;
  const least = new Map(margins.flatMap(({ part, governing }) => (governing ? [[part.id, governing.margin]] : [])));
  const judged = judgedFactors(strengths.parts, least);
  const unfounded = margins.filter(({ part }) => part.bases.some((basis) => UNFOUNDED.has(basis.kind))).length;
  const failed = whatIfs.flatMap(({ whatIf }, i) => (book.failed(whatIf) ? [i] : []));
  const keys = new Set(events.map(whatIfKey));
  const ran = set.filter((event) => keys.has(whatIfKey(event)) && book.good(event).length > 0).length;
  const ended = whatIfs.filter((one) => one.ok && one.lostBecause === "ground").length;
  const anchorDemand = (end: "A" | "B") =>
    Math.max(0, ...levelsOf(measuredRuns(runs, (run) => run.anchors[end])).map(({ level }) => level.value));
  const slips = slipsIn(
    rig,
    events.map((event) => book.good(event)),
  );
  const facts: (CautionFact | false)[] = [
    { kind: "general" },
    rig.unconfirmed !== undefined && { kind: "unconfirmed", paths: rig.unconfirmed },
    judged.length > 0 && { kind: "judged", judged },
    { kind: "scatter" },
    unfounded > 0 && { kind: "unfounded", parts: unfounded, of: margins.length },
    failed.length > 0 && { kind: "failedRuns", whatIfs: failed },
    slips.length > 0 && { kind: "slips", weblocks: slips },
    rig.backup !== undefined && { kind: "chance" },
    ran < set.length && { kind: "partial", run: ran, of: set.length },
    options.accuracy === "quick" && { kind: "coarse" },
    rig.backup === undefined && { kind: "noBackup" },
    {
      kind: "anchors",
      anchors: anchorFacts(rig, strengths.parts, { A: anchorDemand("A"), B: anchorDemand("B") }),
    },
    rig.ground.length < 2 && { kind: "noGround" },
    ended > 0 && { kind: "endedOnGround", whatIfs: ended },
    { kind: "notModelled" },
    rig.invented && { kind: "invented" },
  ];
  return facts.filter((fact): fact is CautionFact => fact !== false);
}

/** `runs`: those of each event. */
function slipsIn(rig: Rig, runs: readonly (readonly GoodRun[])[]): readonly Slips[] {
  return (["A", "B"] as const).flatMap((end): Slips[] => {
    const above = rig.main[`end${end}`].slipLoad;
    const whatIfs = runs.filter((some) => some.some(({ slipped }) => slipped?.includes(end))).length;
    return above === undefined || whatIfs === 0 ? [] : [{ part: `end${end}`, above, whatIfs }];
  });
}
