/** The verdict in words. */
import { formatForce, formatLength, formatPercent, type Rig } from "@secondline/rig";
import { NEAR_GROUND } from "./cautions.ts";
import { judgedMargin } from "./margins.ts";
import type { PartOutcome, Verdict, WhatIfOutcome } from "./outcome.ts";
import { fixedDown, fixedUp } from "./rounding.ts";

export interface SentenceFacts {
  readonly rig: Rig;
  readonly verdict: Verdict;
  readonly whatIfs: readonly WhatIfOutcome[];
  readonly parts: readonly PartOutcome[];
  readonly first: PartOutcome;
  readonly required: number;
  readonly incomplete: number;
  /** Loads were judged so many times what they are, at least 1 [-]. */
  readonly allowance: number;
  /** Parts that somebody's own judgement raises, each with its factor. */
  readonly raised?: readonly string[];
}

/** The verdict in a sentence or two: why, that it is incomplete when it is, and what somebody has raised by hand. */
export function verdictSentence(facts: SentenceFacts): string {
  const { verdict, first, whatIfs, incomplete, raised = [] } = facts;
  const lost = whatIfs.find((one) => one.ok && !one.caught);
  const said = [verdict === "fails" ? failing(facts, lost) : verdict === "thin" ? thin(facts) : holding(facts)];
  if (lost && first.verdict === "fails") said.push(`Nothing then holds the walker in: ${lower(lost.title)}.`);
  if (incomplete > 0) {
    const count = incomplete === 1 ? "one what-if" : `${incomplete} what-ifs`;
    said.push(`Incomplete: ${count} could not be computed.`);
  }
  if (raised.length > 0) said.push(`RAISED by own judgement above what is known: ${raised.join(", ")}.`);
  return said.join(" ");
}

function failing({ first, whatIfs }: SentenceFacts, lost: WhatIfOutcome | undefined): string {
  if (first.verdict !== "fails") {
    const ground = whatIfs.find((one) => one.ok && one.feetClearance !== undefined && one.feetClearance <= 0);
    if (ground) return `Fails: the walker reaches the ground (${lower(ground.title)}).`;
    if (lost) return `Fails: nothing holds the walker (${lower(lost.title)}).`;
  }
  const title = lower(whatIfs[first.whatIf]!.title);
  return first.parts
    ? `Fails: ${partPlace(first)} gives way at ${formatForce(first.strength)} (${title}).`
    : `Fails: ${partPlace(first)} holds ${formatForce(first.strength)} and gets ${formatForce(first.load)}${spread(first)} (${title}).`;
}

function thin({ first, required, parts, rig, whatIfs, allowance }: SentenceFacts): string {
  const thin = parts.filter((part) => part.verdict === "thin");
  const worst = thin.includes(first) ? first : thin[0];
  if (!worst) return `Thin: ${unsettled(whatIfs, rig)}`;
  const others = thin.length - 1;
  const more = others === 0 ? "" : others === 1 ? ", and one more part is thin" : `, and ${others} more parts are thin`;
  const margin = judgedMargin(worst);
  const against =
    margin < required
      ? `${times(margin)} times ${largestLoad(worst)}; you require ${asRequired(required)}`
      : margin < allowance * required
        ? `${times(margin)} times ${largestLoad(worst)} of the few what-ifs of a quick look, which has to leave ${extra(allowance)} more than the ${asRequired(required)} you require`
        : worst.uncertaintyUnknown
          ? `${times(margin)} times ${largestLoad(worst)}, but how exact that load is could not be found out`
          : `${times(margin)} times ${largestLoad(worst)}, but one in twenty such parts would not hold ${allowance > 1 ? `${extra(allowance)} more than ` : ""}it`;
  return `Thin: ${partPlace(worst)} holds ${against}${more}.`;
}

/** No part is thin, yet the verdict is: what-ifs are missing, or the ground is near. */
function unsettled(whatIfs: readonly WhatIfOutcome[], rig: Rig): string {
  const near = whatIfs.find((one) => one.feetClearance !== undefined && one.feetClearance < NEAR_GROUND);
  return near
    ? `the walker's feet come within ${formatLength(Math.max(0, near.feetClearance!))} of the ground (${lower(near.title)}).`
    : `every part of ${rig.name} that could be judged holds, but not all could be.`;
}

function holding({ first, required }: SentenceFacts): string {
  return `Holds: every part keeps at least ${times(judgedMargin(first))} times its largest load; you require ${asRequired(required)}. The least is ${partPlace(first)}.`;
}

/** A load with a ± is judged at its upper end, and the sentence says so. */
const largestLoad = (part: PartOutcome) =>
  part.loadUncertainty ? `its largest load at the upper end of its ±` : "its largest load";
const spread = ({ loadUncertainty }: PartOutcome) => (loadUncertainty ? ` ± ${formatForce(loadUncertainty)}` : "");

/** A part with the place where it is weakest: "the main line at its clamp mark 3 m from A". */
export function partPlace(part: PartOutcome): string {
  // "Connection 3" is a name; "main line" is a thing.
  const name = /\d$/.test(part.name) ? lower(part.name) : `the ${lower(part.name)}`;
  if (!part.weakest || (part.id !== "main" && part.id !== "backup")) return name;
  const { at, reason } = part.weakest;
  const where = `${formatLength(Math.round(at * 10) / 10)} from A`;
  return reason === "webbing" ? `${name}, ${where}` : `${name} at its ${reason} ${where}`;
}

/** Makes a title fit inside a sentence; names such as "A" at its head stay as they are. */
export function lower(title: string): string {
  const second = title.charAt(1);
  return second !== "" && second === second.toLowerCase() && second !== " "
    ? title.charAt(0).toLowerCase() + title.slice(1)
    : title;
}

const times = (factor: number) => fixedDown(factor, 1);
const extra = (allowance: number) => formatPercent(allowance - 1);
const asRequired = (factor: number) => fixedUp(factor, 1);
