/** Probabilities in words that nobody takes for more than they are. */
import { formatForce, formatLength, formatMass, formatPercent } from "@secondline/rig";
import { CAUTIONS, INVENTED } from "../cautions.ts";
import type { Probability } from "../outcome.ts";
import type { Chances, PartChance, ScatterShare } from "./chancesOutcome.ts";
import { placeRange, type UncertainInput } from "./uncertainInputs.ts";

/** Chances smaller than this are not told apart: the spreads they rest on are not known that far out [-]. */
const SMALLEST = 1e-6;

/** "62 %", "0.4 %", "1 in 23 000", "less than 1 in a million". */
export function formatChance(chance: number): string {
  if (chance < SMALLEST) return "less than 1 in a million";
  if (chance < 0.001) return `1 in ${grouped(Number((1 / chance).toPrecision(2)))}`;
  const percent = 100 * chance;
  if (chance >= 1) return "100 %";
  if (percent >= 99.5) return "over 99 %";
  return `${percent < 9.95 ? Number(percent.toPrecision(percent < 0.995 ? 1 : 2)) : Math.round(percent)} %`;
}

/** Digits in threes, by a narrow space. */
export const grouped = (value: number) => String(value).replace(/\B(?=(\d{3})+$)/g, "\u202f");

/** An interval that begins so far below its value says nothing by its beginning [-]. */
const NEXT_TO_NOTHING = 0.01;

/** "62 % (60 to 64 %)"; a chance that never came up, as "less than" its bound. */
export function chanceText({ value, low, high }: Probability): string {
  if (value <= 0) return atMost(high);
  const [from, to] = [formatChance(low), formatChance(high)];
  if (from === to) return formatChance(value);
  if (low < NEXT_TO_NOTHING * value) return `${formatChance(value)} (up to ${to})`;
  const shared = from.endsWith(" %") && to.endsWith(" %") && !from.startsWith("over");
  return `${formatChance(value)} (${shared ? from.slice(0, -2) : from} to ${to})`;
}

const atMost = (bound: number) => (bound < SMALLEST ? formatChance(bound) : `less than ${formatChance(bound)}`);

export interface SentenceFacts {
  readonly runs: Chances["runs"];
  readonly anyFails: Chances["anyFails"];
  readonly parts: readonly PartChance[];
}

/** What the chances come to. What no strength helps against comes first. */
export function chanceSentence({ runs, anyFails, parts }: SentenceFacts): string {
  const [first] = parts;
  const said: string[] = [];
  if (runs.lost > 0)
    said.push(`Nothing catches the walker in ${countOf(runs.lost, runs.done)}, whatever the parts hold.`);
  if (runs.ground > 0) said.push(`The walker's feet reach the ground in ${countOf(runs.ground, runs.done)}.`);
  said.push(`Likeliest to go first: ${inSentence(first!)}, ${chanceText(first!.first)}.`);
  said.push(
    `Chance that any part fails, if these spreads are right and nothing else goes wrong: ${anyText(anyFails)}.`,
  );
  return said.join(" ");
}

const anyText = (any: Chances["anyFails"]) => (any.reached ? chanceText(any) : atMost(any.high));

export const countOf = (some: number, all: number) => (some === all ? `all ${all} runs` : `${some} of ${all} runs`);

const inSentence = ({ name, stretch }: PartChance) =>
  stretch && stretch.reason !== "webbing" ? `${name} at its ${stretch.reason}` : name;

/** Middle and spread of an uncertain input: "80 kg", "± 10 %"; "0.5", "± 0.05 of the line"; by an anchor the range that is left. */
export function inputText(input: UncertainInput): readonly [string, string] {
  const { central, unit, spread, distribution } = input;
  const middle = {
    kg: formatMass(central),
    N: formatForce(central),
    m: formatLength(central),
    share: formatPercent(central),
    "-": String(Number(central.toPrecision(3))),
    line: String(Number(central.toFixed(3))),
    times: "as given",
  }[unit];
  const amount = Number(spread.toPrecision(3));
  return [middle, distribution === "uniform" ? placeText(input, amount) : `± ${formatPercent(amount)}`];
}

function placeText(input: UncertainInput, amount: number): string {
  const [from, to] = placeRange(input);
  const clipped = to - from < 2 * input.spread - 1e-9;
  const place = (share: number) => Number(share.toFixed(4));
  return clipped ? `(${place(from)} to ${place(to)} of the line)` : `± ${amount} of the line`;
}

/** Said wherever chances stand with a bracket behind them. */
export const IN_BRACKETS = "In brackets: 95 % interval.";

/** Parts that are first less often than this, and were never seen to fail, are only counted: FEW_FIRST in words [-]. */
const WORTH_A_ROW = 0.001;
export const FEW_FIRST = "first less often than once in a thousand";
export const worthARow = ({ first, fails }: PartChance) => first.value >= WORTH_A_ROW || fails.value > 0;

/** How many parts have no row: "12 more parts go first less often than once in a thousand."; nothing when all have. */
export function restText(parts: readonly PartChance[]): string {
  const rest = parts.filter((part) => !worthARow(part)).length;
  if (rest === 0) return "";
  return `${rest === 1 ? "One more part goes" : `${rest} more parts go`} ${FEW_FIRST}.`;
}

/** Cautions of these chances alone, for where those of the whole rig already stand. */
export const ownCautions = ({ cautions }: Chances): readonly string[] =>
  cautions.filter((caution) => caution !== INVENTED && !CAUTIONS.includes(caution));

/** A part; of webbing with what makes the stretch weak that is meant: "Main line, clamp mark". */
export const partName = ({ name, stretch }: PartChance) =>
  stretch && stretch.reason !== "webbing" ? `${name}, ${stretch.reason}` : name;

/** What a share in the scatter is of. */
export const SHARE_KINDS = { input: "the fall", strength: "strength", surface: "the fit" } as const;

/** What a source of scatter does by itself. */
export const shareText = ({ first, distinguishable }: ScatterShare) =>
  distinguishable ? chanceText(first) : "next to nothing alone";
