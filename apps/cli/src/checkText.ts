/** An assessment's outcome for reading in a terminal. */

import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook } from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { facts, likelyText } from "@secondline/words/facts";
import { tellNote } from "@secondline/words/notes";
import { rigLine } from "@secondline/words/rig";
import { tableWords } from "@secondline/words/tables";
import { untilWords } from "@secondline/words/until";
import { middleTable, partsTable, singlesTable, whatIfTable, whyTables } from "./outcomeTables.ts";
import { say } from "./say.ts";
import { bold, dim, VERDICT_COLOUR, VERDICT_MARK, width } from "./terminal.ts";
import { bullets, wrap, wrapHanging } from "./wrap.ts";

export interface TextOptions {
  /** Every what-if, not only those that govern, and the middle values. */
  readonly all: boolean;
  /** The factors of each strength. */
  readonly why: boolean;
  /** The rig without each part, one at a time. */
  readonly singles: boolean;
  readonly outlook?: Outlook | undefined;
}

export function checkText(rig: Rig, outcome: Outcome, options: TextOptions): string {
  const { all, why, singles, outlook } = options;
  const shown = all ? outcome.whatIfs.map((_, i) => i) : governing(outcome);
  return [
    bold(outcome.rigName),
    wrap(rigLine(words.language, rig, outcome), width),
    wrap(words.taken(rig, outcome), width),
    "",
    whatIfTable(rig, outcome, shown),
    ...dimLines(leftOut(outcome, shown), say("caption.whatIfs")),
    "",
    partsTable(rig, outcome),
    ...dimLines(...tableWords.partsCaption()),
    ...(all ? ["", dim(middleTable(rig, outcome)), ...dimLines(say("caption.middle"))] : []),
    ...(all || singles ? ["", singlesTable(rig, outcome), ...dimLines(say("caption.singles"))] : []),
    ...(why ? ["", bold(say("head.why")), ...dimLines(say("caption.why")), "", ...whyTables(rig, outcome)] : []),
    "",
    ...verdictLines(rig, outcome),
    ...likelier(rig, outcome),
    ...(outlook ? ["", wrap(untilWords.sentence(rig, outlook, outcome), width)] : []),
    "",
    ...section(say("head.facts"), factLines(rig, outcome)),
    ...section(say("head.follows"), tableWords.follows(rig, outcome)),
    ...section(say("head.notes"), outcome.notes.map(tellNote)),
    ...section(say("head.blanks"), words.blanks(rig, outcome)),
    ...section(say("head.rests"), outcome.weakestBases.map(words.basis)),
    `${say("head.cautions")}:`,
    ...bullets(words.cautions(rig, outcome.cautions), width),
  ].join("\n");
}

const dimLines = (...texts: readonly string[]): string[] =>
  texts.filter((text) => text !== "").map((text) => dim(wrap(text, width)));

const section = (head: string, items: readonly string[]): string[] =>
  items.length === 0 ? [] : [`${head}:`, ...bullets(items, width), ""];

/** Number of further what-ifs shown that lose the walker [-]. */
const MOST_LOST_WHAT_IFS = 3;

/**
 * The what-ifs shown: those with the worst of some part, the deepest drop, some that lose the walker, parts that give way, and
 * runs that failed.
 */
function governing(outcome: Outcome): number[] {
  const { parts, falls, person, followUps, whatIfs } = outcome;
  const worst = parts.flatMap(({ byClass }) => Object.values(byClass).map(({ whatIf }) => whatIf));
  const chosen = new Set([
    ...worst,
    ...[falls.deepest, falls.leastFeet].flatMap((one) => one?.whatIf ?? []),
    ...(person ? [person.event] : []),
    ...followUps.flatMap(({ whatIf }) => whatIf ?? []),
    ...falls.notCaught.slice(0, MOST_LOST_WHAT_IFS),
    ...falls.onGround.slice(0, MOST_LOST_WHAT_IFS),
    ...whatIfs.flatMap(({ ok }, i) => (ok ? [] : [i])),
  ]);
  return [...chosen].sort((a, b) => a - b);
}

/** A line about the what-ifs that the table leaves out. */
function leftOut({ whatIfs, falls }: Outcome, shown: readonly number[]): string {
  if (shown.length === whatIfs.length) return "";
  const lost = [...new Set([...falls.notCaught, ...falls.onGround])].filter((index) => !shown.includes(index)).length;
  const values = { of: whatIfs.length, shown: shown.length };
  return lost === 0 ? say("list.shown", values) : say("list.shownLost", { ...values, lost });
}

function verdictLines(rig: Rig, outcome: Outcome): string[] {
  const mark = `${VERDICT_MARK[outcome.verdict]} `;
  const text = [words.verdict(rig, outcome), words.singles(rig, outcome)].join(" ");
  return [VERDICT_COLOUR[outcome.verdict](bold(mark + wrapHanging(text, width, " ".repeat(mark.length))))];
}

function likelier(rig: Rig, outcome: Outcome): string[] {
  const said = [words.likelierFirst(rig, outcome), likelyText(words.language, rig, outcome)];
  return dimLines(...said.filter((text) => text !== undefined));
}

const factLines = (rig: Rig, outcome: Outcome): string[] =>
  facts(words.language, rig, outcome).map(({ name, value }) => `${name}: ${value}`);
