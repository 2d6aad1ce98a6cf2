/** Until when a rig may stay up, in words. No date is never good news by itself: the verdict of today has its say first. */
import { formatForce } from "@secondline/rig";
import type { Outcome, Verdict } from "@secondline/scenarios";
import type { PartTakeDown, TakeDown } from "@secondline/strength";
import { dateWords } from "./days.ts";

/** What the last study says today, whatever the wear. */
export interface Today {
  readonly verdict: Verdict;
  /** Some what-ifs could not be computed. */
  readonly incomplete: boolean;
  readonly factor: number;
  readonly parts: Readonly<Record<string, Verdict>>;
}

export function todayOf({ verdict, incomplete, requiredFactor, parts }: Outcome): Today {
  return {
    verdict,
    incomplete: incomplete.length > 0,
    factor: requiredFactor,
    parts: Object.fromEntries(parts.map((part) => [part.id, part.verdict])),
  };
}

/** Nothing that wear could still change: the rig fails today, or nobody knows. */
const isLost = ({ verdict, incomplete }: Today): boolean => verdict === "fails" || incomplete;

export function takeDownSentence({ parts, date, horizon }: TakeDown, today: Today): string {
  const first = parts[0];
  if (!first) return "The study gave no loads to go by.";
  const { verdict, factor } = today;
  if (first.when === "now") return `Take it down: ${first.name} no longer has the factor of ${factor}.`;
  const why = verdict === "fails" ? "the verdict fails today" : "some what-ifs could not be computed";
  if (first.when === "later") {
    const then = `${first.name} no longer has the factor of ${factor}`;
    if (isLost(today)) return `No date to wait for: ${why}. By wear alone, from ${dateWords(date ?? "")} ${then}.`;
    const thin = verdict === "thin" ? " The verdict is thin today already." : "";
    return `Take it down before ${dateWords(date ?? "")}: from that day ${then}.${thin}`;
  }
  if (isLost(today)) return `No date: ${why}, and no state of wear makes that good.`;
  const until = `the factor of ${factor} until ${dateWords(horizon)}, the last day looked at`;
  if (verdict === "thin")
    return `The verdict is thin today, and waiting makes it no better. Wear alone takes no part below ${until}.`;
  return `Every part keeps ${until}.`;
}

/** How grave it is: the worse of what wear does and what the study says today. */
export function takeDownTone({ parts }: TakeDown, today: Today): Verdict {
  const now = today.incomplete ? "fails" : today.verdict;
  return worse(toneOf(parts[0]), now);
}

export const partTone = (part: PartTakeDown, today: Today): Verdict =>
  worse(toneOf(part), today.parts[part.id] ?? "holds");

const toneOf = (part: PartTakeDown | undefined): Verdict =>
  part?.when === "now" ? "fails" : part?.when === "later" ? "thin" : "holds";

const GRAVITY: readonly Verdict[] = ["holds", "thin", "fails"];
const worse = (a: Verdict, b: Verdict): Verdict => (GRAVITY.indexOf(a) > GRAVITY.indexOf(b) ? a : b);

/** The same question at another confidence, in a few words. */
export function whenWords({ parts, date, horizon }: TakeDown): string {
  if (date === undefined) return `after ${dateWords(horizon)}, if ever`;
  return parts[0]?.when === "now" ? "overdue" : `before ${dateWords(date)}`;
}

/** Beside the line of the date on the calendar. */
export function calendarWords({ parts, date }: TakeDown): string {
  if (date === undefined) return "";
  return parts[0]?.when === "now" ? "below the factor now" : `down before ${dateWords(date)}`;
}

export function partWords(part: PartTakeDown, horizon: string): string {
  const then = `${formatForce(part.strengthThen)} of ${formatForce(part.required)} needed`;
  if (part.when === "now")
    return `Below the factor already: ${formatForce(part.strengthNow)} of ${formatForce(part.required)} needed`;
  if (part.when === "later")
    return `Down before ${dateWords(part.date ?? "")}: from then on less than the ${formatForce(part.required)} needed`;
  return `On ${dateWords(horizon)}, the last day looked at, still ${then}`;
}
