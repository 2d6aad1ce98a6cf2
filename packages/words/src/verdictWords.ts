/** The verdict in words, from its reasons. These are facts of the runs, never of the question. */

import type { Fact, PartId, Rig } from "@secondline/rig";
import type { ClassOutcome, FollowUp, Outcome, PartOutcome, Reason } from "@secondline/scenarios";
import type { Lapse } from "@secondline/strength";
import { chance } from "./chanceNumbers.ts";
import { dayText } from "./dates.ts";
import type { Language, Say } from "./language.ts";
import { sayIn } from "./language.ts";
import { listed } from "./lists.ts";
import { tellBasis } from "./noteWords.ts";
import { lowered, partInSentence, partName } from "./partNames.ts";
import { eventTitle } from "./phrases.ts";
import { factor, height, limit as limitText, load, margin, required, strength, strengthIn } from "./quantity.ts";

export const governingOf = (part: PartOutcome): ClassOutcome | undefined =>
  part.governing && part.byClass[part.governing];

const partOf = (outcome: Outcome, id: PartId): PartOutcome => outcome.parts.find((part) => part.id === id)!;

/** The inputs of a verdict's word; without reasons nobody has reached a verdict yet. */
export type Worded = Pick<Outcome, "verdict"> & Partial<Pick<Outcome, "reasons">>;

/** "Thin", "Nothing found yet"; "Lapsed" for a rig that has lapsed and does not fail. */
export function verdictWord(language: Language, { verdict, reasons = [] }: Worded): string {
  const lapsed = verdict !== "fails" && reasons.some(({ kind }) => kind === "lapsed");
  return sayIn(language)(lapsed ? "verdict.lapsed" : `verdict.${verdict}`);
}

/**
 * The verdict in a few sentences: the reason, the part that then holds, other reasons, open values, questions that were not
 * asked, strengths raised by hand.
 */
export function verdictSentence(language: Language, rig: Rig, outcome: Outcome): string {
  const say = sayIn(language);
  const [gravest] = outcome.reasons;
  const said = [gravest ? reasonText(language, rig, outcome, gravest) : holderText(say, rig, outcome)];
  said.push(...follows(say, outcome, gravest));
  said.push(...others(language, rig, outcome));
  const gap = outcome.search.gaps.find((one) => one.kind === "events");
  if (gap && (outcome.verdict === "fails" || outcome.verdict === "thin")) {
    said.push(say("verdict.partial", { run: gap.run, of: gap.of }));
  }
  if (!outcome.whatIfs.some(({ whatIf }) => whatIf.kind === "rescue")) said.push(say("verdict.noRescue"));
  said.push(...raised(say, rig, outcome));
  return said.join(" ");
}

/** One reason in a sentence. */
export function reasonText(language: Language, rig: Rig, outcome: Outcome, reason: Reason): string {
  const say = sayIn(language);
  const event = (index: number) => lowered(eventTitle(language, rig, outcome.whatIfs[index]!.whatIf));
  switch (reason.kind) {
    case "partFails": {
      const part = partOf(outcome, reason.part);
      const worst = failing(part);
      const [low, high] = worst.marginInterval;
      const said = say("verdict.partFails", {
        part: partInSentence(say, rig, placed(part, worst)),
        strength: strength(worst.strength5),
        demand: load(worst.demand),
        event: event(worst.whatIf),
      });
      return high < 1 ? said : `${said} ${say("verdict.failsUnsettled", { low: margin(low), high: margin(high) })}`;
    }
    case "partThin": {
      const part = partOf(outcome, reason.part);
      const worst = governingOf(part)!;
      return say("verdict.partThin", {
        part: partInSentence(say, rig, placed(part, worst)),
        margin: margin(worst.margin),
        required: required(worst.required),
        class: say(`class.${part.governing!}`),
        event: event(worst.whatIf),
      });
    }
    case "notCaught":
      return say("verdict.notCaught", { event: event(reason.event) });
    case "ground":
      // A height that 95 % of falls keep may lie below the ground though none of the runs came down to it.
      return say(outcome.falls.onGround.length > 0 ? "verdict.ground" : "verdict.groundMay", {
        event: event(reason.event),
      });
    case "groundNear":
      return say("verdict.groundNear", {
        height: height(Math.max(0, reason.height)),
        required: height(reason.required),
        event: event(reason.event),
      });
    case "pullTooHard":
      return say("verdict.pullTooHard", pullValues(outcome, event));
    case "pullHard":
      return say("verdict.pullHard", pullValues(outcome, event));
    case "lapsed":
      return say("verdict.hasLapsed", { what: lapseList(say, rig, reason.lapses) });
    case "withheld":
      return say("verdict.withheld", { what: tellBasis(reason.what) });
    case "notLoaded":
      return say("verdict.notLoadedParts", {
        count: reason.parts.length,
        parts: listed(
          reason.parts.map((id) => partName(say, rig, id)),
          "semicolon",
        ),
      });
    case "unsettled":
      return say("verdict.unsettled", { what: unsettledText(say, rig, outcome, reason) });
    case "unconfirmed":
      return say("verdict.unconfirmed", { count: reason.paths.length });
    case "gap":
      return gapText(say, outcome, reason.gap);
  }
}

/** Number of parts that are named; the rest are counted [-]. */
const MOST_NAMED = 2;

export const lapseList = (say: Say, rig: Rig, lapses: readonly Lapse[]): string =>
  [
    ...lapses.slice(0, MOST_NAMED).map((one) => lapseText(say, rig, one)),
    ...(lapses.length > MOST_NAMED ? [say("lapse.more", { count: lapses.length - MOST_NAMED })] : []),
  ].join(" ");

/** The reason for a lapse, and the remedy. */
export function lapseText(say: Say, rig: Rig, lapse: Lapse): string {
  const name = "part" in lapse.of ? partName(say, rig, lapse.of.part as PartId) : lapse.of.webbing;
  switch (lapse.kind) {
    case "open":
    case "unfit":
      return tellBasis(lapse.sentence);
    case "tension":
      return say("lapse.tension", { name, on: dayText(lapse.on) });
    case "falls":
      return say("lapse.falls", { name, falls: Math.ceil(lapse.falls), planned: lapse.planned });
    case "overdue":
      return say("lapse.overdue", { name, due: dayText(lapse.due) });
    case "never":
      return say("lapse.never", { name });
  }
}

function unsettledText(
  say: Say,
  rig: Rig,
  outcome: Outcome,
  { parts, height: near, pull }: Extract<Reason, { kind: "unsettled" }>,
): string {
  const named = parts.slice(0, MOST_NAMED).map((id) => {
    const part = partOf(outcome, id);
    // The class that is nearest to its limit, which need not be the one that governs.
    const worst = Object.values(part.byClass).reduce((a, b) =>
      b.marginInterval[0] / b.required < a.marginInterval[0] / a.required ? b : a,
    );
    return say("unsettled.part", {
      part: partInSentence(say, rig, placed(part, worst)),
      margin: margin(worst.margin),
      low: margin(worst.marginInterval[0]),
      high: margin(worst.marginInterval[1]),
      required: required(worst.required),
    });
  });
  const more = parts.length - named.length;
  return listed(
    [
      ...named,
      ...(more > 0 ? [say("unsettled.more", { count: more })] : []),
      ...(near ? [say("unsettled.height")] : []),
      ...(pull ? [say("unsettled.pull")] : []),
    ],
    "semicolon",
  );
}

function gapText(say: Say, { search, whatIfs }: Outcome, gap: Extract<Reason, { kind: "gap" }>["gap"]): string {
  switch (gap.kind) {
    case "events":
      return search.chosen
        ? say("verdict.openOne", { count: whatIfs.filter(({ ok }) => ok).length, others: gap.of - gap.run })
        : say("verdict.openGap", { run: gap.run, of: gap.of });
    case "coarse":
      return say("verdict.openCoarse");
    case "draws":
      return say("verdict.openDraws");
    case "failed":
      return say("verdict.openFailed", { count: gap.events.length });
  }
}

/** The class in which a failing part falls short of its load. */
const failing = (part: PartOutcome): ClassOutcome =>
  Object.values(part.byClass).reduce((a, b) => (b.margin < a.margin ? b : a));

/** A part at the place where a class of events loads it most. */
function placed(part: PartOutcome, { at, reason }: ClassOutcome): Pick<PartOutcome, "id" | "weakest"> {
  return at === undefined || reason === undefined ? part : { id: part.id, weakest: { at, reason } };
}

function holderText(say: Say, rig: Rig, outcome: Outcome): string {
  const part = partOf(outcome, outcome.leastMargin!);
  const least = governingOf(part)!;
  return say("verdict.holdsAll", {
    expected: required(outcome.required.expected),
    afterFailure: required(outcome.required.afterFailure),
    part: partInSentence(say, rig, placed(part, least)),
    margin: margin(least.margin),
    required: required(least.required),
    class: say(`class.${part.governing!}`),
  });
}

/** Whether the run after the failure ends on the ground. */
export const endsOnGround = ({ whatIfs }: Outcome, { whatIf }: FollowUp): boolean =>
  whatIf !== undefined && whatIfs[whatIf]!.lostBecause === "ground";

/** The part that holds the walker when the part of the gravest reason gives way. */
function follows(say: Say, outcome: Outcome, gravest: Reason | undefined): string[] {
  if (gravest?.kind !== "partFails" && gravest?.kind !== "partThin") return [];
  const found = outcome.followUps.filter(({ part }) => part === gravest.part);
  if (found.length === 0) return [];
  const lost = found.filter(({ caughtBy }) => caughtBy === "nothing");
  if (lost.length > 0 && lost.every((one) => endsOnGround(outcome, one))) return [say("verdict.groundThen")];
  if (found.some(({ caughtBy }) => caughtBy === "nothing")) return [say("verdict.nothingThen")];
  return [say("verdict.catcherThen", { catcher: say(`catcher.${found[0]!.caughtBy}`) })];
}

/** Reasons besides the gravest: parts by their number, all others one by one. */
function others(language: Language, rig: Rig, outcome: Outcome): string[] {
  const say = sayIn(language);
  const rest = outcome.reasons.slice(1);
  const count = (kind: Reason["kind"]) => rest.filter((one) => one.kind === kind).length;
  const [fails, thin] = [count("partFails"), count("partThin")];
  const beyond = rest.flatMap((reason) => (isBeyond(reason) ? [reason.what] : []));
  const grouped = beyond.length > MOST_NAMED;
  return [
    ...rest
      .filter((reason) => !grouped || !isBeyond(reason))
      .flatMap((reason) => otherText(language, rig, outcome, reason)),
    ...(grouped ? BEYOND_CODES.flatMap((code) => beyondText(say, beyond, code)) : []),
    ...(countsNoStrength(outcome) ? [say("verdict.noStrengthCounted")] : []),
    ...(fails > 0 ? [say("verdict.alsoFails", { count: fails })] : []),
    ...(thin > 0 ? [say("verdict.also", { count: thin })] : []),
  ];
}

/** More wear than any source covers, and wear that nobody wrote down. */
const BEYOND_CODES = ["beyond.known", "beyond.unwritten"] as const;
type BeyondCode = (typeof BEYOND_CODES)[number];

/** Wear beyond the range of one factor of one part. */
const isBeyond = (reason: Reason): reason is Extract<Reason, { kind: "withheld" }> =>
  reason.kind === "withheld" && BEYOND_CODES.some((code) => code === reason.what.code);

/** Whether a blank leaves a part a strength that reads 0.00. */
const countsNoStrength = ({ parts, reasons }: Outcome): boolean =>
  reasons.some((reason) => isBeyond(reason) && reason.what.code === "beyond.unwritten") &&
  parts.some((part) => Object.values(part.byClass).some(({ strength5 }) => strengthIn(strength5) === strengthIn(0)));

/** The first parts by their factors, the rest by their number: each factor of each part is told with its strength. */
function beyondText(say: Say, beyond: readonly Fact[], code: BeyondCode): string[] {
  const factors = new Map<string, string[]>();
  for (const { values } of beyond.filter((one) => one.code === code)) {
    const name = tellBasis(values.name!);
    factors.set(name, [...(factors.get(name) ?? []), tellBasis(values.factor!)]);
  }
  const named = [...factors]
    .slice(0, MOST_NAMED)
    .map(([name, of]) => say("beyond.part", { name, factors: listed(of) }));
  if (named.length === 0) return [];
  const more = factors.size - named.length;
  const parts = listed([...named, ...(more > 0 ? [say("beyond.more", { count: more })] : [])], "semicolon");
  return [say(code === "beyond.known" ? "verdict.beyondKnown" : "verdict.beyondUnwritten", { parts })];
}

function otherText(language: Language, rig: Rig, outcome: Outcome, reason: Reason): string[] {
  const say = sayIn(language);
  const event = (index: number) => lowered(eventTitle(language, rig, outcome.whatIfs[index]!.whatIf));
  switch (reason.kind) {
    case "ground":
      return [say("verdict.alsoGround", { event: event(reason.event) })];
    case "notCaught":
      return [say("verdict.alsoNotCaught", { event: event(reason.event) })];
    case "groundNear": {
      const values = { height: height(Math.max(0, reason.height)), required: height(reason.required) };
      return [say("verdict.alsoNear", { ...values, event: event(reason.event) })];
    }
    case "pullTooHard":
    case "pullHard":
      return [say("verdict.alsoPull", pullValues(outcome, event))];
    case "unsettled":
      return [say("verdict.alsoUnsettled", { what: unsettledText(say, rig, outcome, reason) })];
    case "lapsed":
    case "withheld":
      return [reasonText(language, rig, outcome, reason)];
    case "notLoaded": {
      const parts = reason.parts.map((id) => partName(say, rig, id));
      return [say("verdict.alsoNotLoaded", { count: parts.length, parts: listed(parts, "semicolon") })];
    }
    case "unconfirmed":
      return [say("verdict.alsoUnconfirmed", { count: reason.paths.length })];
    // Counted together; values that are left open are told by themselves.
    case "partFails":
    case "partThin":
    case "gap":
      return [];
  }
}

function pullValues({ person }: Outcome, event: (index: number) => string) {
  const { demand, passes, event: index } = person!;
  const { limit, basis } = passes.at(-1)!;
  return { demand: load(demand), limit: limitText(limit), note: lowered(tellBasis(basis.note)), event: event(index) };
}

/** Parts that an own judgement raises: said in the verdict itself. */
function raised(say: Say, rig: Rig, { cautions }: Outcome): string[] {
  const judged = cautions.flatMap((one) => (one.kind === "judged" ? one.judged : []));
  const parts = judged
    .filter(({ own, value }) => own && value > 1)
    .map(({ part, value }) => `${partName(say, rig, part)} × ${factor(value)}`);
  return parts.length === 0 ? [] : [say("verdict.raised", { parts: listed(parts, "semicolon") })];
}

/**
 * If the part that is likeliest to fail first is not the one with the least margin, a sentence that says why; else undefined.
 */
export function likelierFirst(language: Language, rig: Rig, outcome: Outcome): string | undefined {
  const say = sayIn(language);
  const { firstToFail, leastMargin, likelyFirst } = outcome;
  if (firstToFail === undefined || leastMargin === undefined || firstToFail === leastMargin) return undefined;
  const first = partInSentence(say, rig, { id: firstToFail });
  return say("verdict.likelierFirst", {
    first,
    chance: chance(say, likelyFirst!.parts[0]!.first.value),
    least: partInSentence(say, rig, { id: leastMargin }),
  });
}

/** Parts without a second, told beside every verdict. */
export function singlesText(language: Language, rig: Rig, { singles }: Pick<Outcome, "singles">): string {
  const say = sayIn(language);
  const parts = singles.filter(({ single }) => single).map(({ part }) => lowered(partName(say, rig, part)));
  return parts.length === 0 ? say("single.none") : say("single.list", { parts: listed(parts, "semicolon") });
}

/** The inputs that were taken into account, in one or two sentences. */
export function takenText(language: Language, rig: Rig, { taken }: Pick<Outcome, "taken">): string {
  const say = sayIn(language);
  const { wear, on, tests, judged } = taken;
  const said: string[] = [];
  if (wear && on !== undefined) {
    const lines = listed(wear.lines.map((line) => say(`line.${line}`)));
    said.push(say(lines === "" ? "taken.wearParts" : "taken.wear", { on: dayText(on), name: wear.name, lines }));
  } else if (on !== undefined) said.push(say("taken.on", { on: dayText(on) }));
  if (tests) said.push(say("taken.tests", tests));
  else if (said.length > 0) said.push(say("taken.noTests"));
  if (said.length === 0) said.push(say("taken.nothing"));
  if (judged.length > 0) {
    said.push(
      say("taken.judged", {
        parts: listed(
          judged.map((id) => lowered(partName(say, rig, id))),
          "semicolon",
        ),
      }),
    );
  }
  return said.join(" ");
}
