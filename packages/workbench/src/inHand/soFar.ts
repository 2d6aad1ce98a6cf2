/** What a search that has not ended has found: it is shown as soon as it is sure, and never says that the rig holds. */
import type { Outcome, StudyProgress, Verdict } from "@secondline/scenarios";
import type { SoFar } from "./state.ts";

/** Undefined for an outcome that says "holds": before the end of the search nobody may say so. */
export function asSoFar(outcome: Outcome | undefined): SoFar | undefined {
  return outcome && outcome.verdict !== "holds" ? (outcome as SoFar) : undefined;
}

const VERDICT_SEVERITY: Readonly<Record<Verdict, number>> = { fails: 2, thin: 1, open: 0, holds: 0 };

/** Whether what was found since is worse than what was said before. */
export const isWorse = (since: Pick<Outcome, "verdict">, before: Pick<Outcome, "verdict">): boolean =>
  VERDICT_SEVERITY[since.verdict] > VERDICT_SEVERITY[before.verdict];

/** The graver of two looks at one state; of two that say the same, the later one unless it has seen less. */
export function graver(earlier: SoFar | undefined, later: SoFar | undefined): SoFar | undefined {
  if (!earlier || !later) return later ?? earlier;
  const more = VERDICT_SEVERITY[later.verdict] - VERDICT_SEVERITY[earlier.verdict];
  if (more !== 0) return more > 0 ? later : earlier;
  const seenLess = later.verdict === "open" && later.search.events < earlier.search.events;
  return seenLess ? earlier : later;
}

/** Whether more runs may change what is said: something lies so near to a limit that its interval reaches over it. */
export function mayTurn({ verdict, parts, reasons }: Outcome): boolean {
  if (verdict === "holds") return false;
  return reasons.some(({ kind }) => kind === "unsettled") || parts.some((part) => part.governing && !part.settled);
}

/** How many what-ifs have been looked at, of how many; undefined until the search has told how many there are. */
export function eventsLookedAt({ made, of, soFar }: Partial<StudyProgress>): EventsLookedAt | undefined {
  const all = of ?? soFar?.search.of;
  return all === undefined
    ? undefined
    : { run: Math.min(all, Math.max(soFar?.search.events ?? 0, made ?? 0)), of: all };
}
export interface EventsLookedAt {
  readonly run: number;
  readonly of: number;
}
