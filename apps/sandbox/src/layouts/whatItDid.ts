/** What a layout does differently from the first one, in sentences: the what-if in the pictures first, then the verdict. */
import { formatForce, formatLength, formatRatio, formatSpeed } from "@secondline/rig";
import type { Outcome, PartOutcome, WhatIfOutcome } from "@secondline/scenarios";

/** Differences smaller than this are none: meshes differ by as much [-]. */
const NOTABLE = 0.03;
/** And smaller than this of a drop [m]. */
const NOTABLE_DROP = 0.1;

export function fallDifferences(first: WhatIfOutcome, other: WhatIfOutcome): readonly string[] {
  if (!first.ok || !other.ok)
    return ["One of the two could not be computed reliably, so that they cannot be compared."];
  const said = [
    ...fateDifference(first, other),
    ...length("The drop is", first.drop, other.drop),
    // What pulled how hard until the ground says nothing about the rig.
    ...(isLost(first) || isLost(other) ? [] : forceDifferences(first, other)),
  ];
  return said.length > 0 ? said : ["In this what-if it makes no difference worth telling: all numbers are within 3 %."];
}

/** Nothing holds the walker, or the ground came first. */
export const isLost = ({ caught, groundSpeed }: WhatIfOutcome) => !caught || groundSpeed !== undefined;

function forceDifferences(first: WhatIfOutcome, other: WhatIfOutcome): readonly string[] {
  return [
    ...force("The hardest pull on your harness is", first.peaks?.leash, other.peaks?.leash),
    ...force("The main line pulls at an anchor with up to", mainOf(first), mainOf(other)),
    ...force("The backup pulls at an anchor with up to", backupOf(first), backupOf(other)),
  ];
}

export function verdictDifferences(first: Outcome, other: Outcome): readonly string[] {
  const said: string[] = [];
  if (first.verdict !== other.verdict) said.push(`The verdict is “${other.verdict}” instead of “${first.verdict}”.`);
  const [was, is] = [firstPart(first), firstPart(other)];
  if (!was || !is) return said;
  if (was.id !== is.id)
    said.push(
      `First to fail is ${partWords(is)}, at ${times(is)}. In layout A it is ${partWords(was)}, at ${times(was)}.`,
    );
  else if (formatRatio(was.margin) !== formatRatio(is.margin))
    said.push(`First to fail stays ${partWords(is)}, at ${times(is)} instead of ${times(was)}.`);
  return said;
}

/** The sign and the number stay on one line. */
const times = ({ margin }: PartOutcome): string => `×\u00a0${formatRatio(margin)}`;

/** "the main line, clamp mark", but "connection 1". */
function partWords(part: PartOutcome): string {
  const isLine = part.id === "main" || part.id === "backup";
  const reason = isLine && part.weakest && part.weakest.reason !== "webbing" ? `, ${part.weakest.reason}` : "";
  const name = `${part.name.charAt(0).toLowerCase()}${part.name.slice(1)}${reason}`;
  return /\d$/.test(name) ? name : `the ${name}`;
}

export const firstPart = (outcome: Outcome): PartOutcome | undefined =>
  outcome.parts.find(({ id }) => id === outcome.firstToFail);

function fateDifference(first: WhatIfOutcome, other: WhatIfOutcome): readonly string[] {
  const [was, is] = [fateWords(first), fateWords(other)];
  return was === is ? [] : [`Here ${is}; in layout A ${was}.`];
}

export function fateWords({ groundSpeed, caught, whatIf }: WhatIfOutcome): string {
  if (groundSpeed !== undefined) return `you hit the ground at ${formatSpeed(groundSpeed)}`;
  if (!caught) return "nothing catches you";
  return whatIf.kind === "mainFails" ? "the backup catches you" : "the main line catches you";
}

export const mainOf = ({ peaks }: WhatIfOutcome) => peaks && Math.max(peaks.mainA, peaks.mainB);
export const backupOf = ({ peaks }: WhatIfOutcome) => peaks && Math.max(peaks.backupA, peaks.backupB);

function length(opening: string, was: number | undefined, is: number | undefined): readonly string[] {
  if (was === undefined || is === undefined || Math.abs(is - was) < Math.max(NOTABLE_DROP, NOTABLE * was)) return [];
  const further = is > was ? "further" : "less";
  return [
    `${opening} ${formatLength(is)} instead of ${formatLength(was)}: ${formatLength(Math.abs(is - was))} ${further}.`,
  ];
}

function force(opening: string, was: number | undefined, is: number | undefined): readonly string[] {
  if (was === undefined || is === undefined || Math.abs(is - was) <= NOTABLE * Math.max(was, is)) return [];
  // A part that hardly pulls in either layout decides nothing.
  if (Math.max(was, is) < 500) return [];
  return [`${opening} ${formatForce(is)} instead of ${formatForce(was)}${percentWords(was, is)}.`];
}

function percentWords(was: number, is: number): string {
  if (was < 100) return "";
  const percent = Math.round((is / was - 1) * 100);
  return ` (${percent > 0 ? "+" : "−"}${Math.abs(percent)} %)`;
}
