/**
 * How many more leash falls a rig takes on a day before the one rule no longer says that it holds. The demands are those of today's
 * verdict; only strengths change, as in take-down dates.
 */
import { mainSectionLengths, type Rig, type Wear } from "@secondline/rig";
import { type BreakTest, type PlainDate, readDate } from "@secondline/strength";
import type { EventRuns } from "../rule/demand.ts";
import { gradeOf, partMargins } from "../rule/margins.ts";
import { rigStrengths } from "../strengths/rigStrengths.ts";

export interface FallsQuestion {
  /** The day of the state and the day on which the falls may still come, YYYY-MM-DD. */
  readonly on: string;
  readonly until: string;
  /** The rig on a day, at the present rate of use. */
  readonly rigOn: (day: PlainDate) => Rig;
  readonly tests?: readonly BreakTest[];
  /** The runs that count in today's verdict. */
  readonly events: readonly EventRuns[];
}

/** So many are looked for at most [-]. */
export const MOST_FALLS_LEFT = 1000;

/**
 * Falls that may come between both days wherever on the line, all on one place and on one leash; undefined where it is not known how
 * many there were [-].
 */
export function fallsLeft({ on, until, rigOn, tests = [], events }: FallsQuestion): number | undefined {
  const [now, later] = [rigOn(readDate(on)!), rigOn(readDate(until)!)];
  if (!areFallsKnown(now)) return undefined;
  const base = fallsOf(later, now);
  const keeps = (falls: number) => {
    const rig = withFalls(base, falls);
    const margins = partMargins(rig, rigStrengths(rig, tests), events);
    return margins.every((one) => gradeOf(one) === "keeps" && one.part.beyond === undefined);
  };
  if (!keeps(0)) return 0;
  if (keeps(MOST_FALLS_LEFT)) return MOST_FALLS_LEFT;
  let [kept, lost] = [0, MOST_FALLS_LEFT];
  while (lost - kept > 1) {
    const middle = Math.floor((kept + lost) / 2);
    if (keeps(middle)) kept = middle;
    else lost = middle;
  }
  return kept;
}

/** What has hung has been fallen on, unless somebody wrote down how often. */
function areFallsKnown({ leash, main }: Rig): boolean {
  const isWritten = main.sections.some(({ wear }) => wear.some(({ kind }) => kind === "fallZone"));
  return (
    leash.falls !== undefined && (isWritten || main.sections.every(({ condition }) => condition.monthsOutside === 0))
  );
}

/** A rig of a later day with the falls of today: those to come are counted by themselves. */
function fallsOf(later: Rig, now: Rig): Rig {
  const sections = later.main.sections.map((section, i) => ({
    ...section,
    wear: [...section.wear.filter(isNoFall), ...now.main.sections[i]!.wear.filter((one) => !isNoFall(one))],
  }));
  const { falls } = now.leash;
  return {
    ...later,
    main: { ...later.main, sections },
    leash: { ...later.leash, ...(falls === undefined ? {} : { falls }) },
  };
}

const isNoFall = ({ kind }: Wear): boolean => kind !== "fallZone";

/** So many falls more on the leash and on every place of the main line: nobody knows where they will come. */
export function withFalls(rig: Rig, falls: number): Rig {
  if (falls === 0) return rig;
  const lengths = mainSectionLengths(rig);
  const sections = rig.main.sections.map((section, i) => ({
    ...section,
    wear: [...section.wear.filter(isNoFall), ...fallsEverywhere(section.wear, lengths[i]!, falls)],
  }));
  return {
    ...rig,
    main: { ...rig.main, sections },
    leash: { ...rig.leash, ...(rig.leash.falls === undefined ? {} : { falls: rig.leash.falls + falls }) },
  };
}

/** Zones side by side: where there were falls they add. */
function fallsEverywhere(wear: readonly Wear[], length: number, falls: number): Wear[] {
  const zones = wear.filter((one): one is Extract<Wear, { kind: "fallZone" }> => one.kind === "fallZone");
  const inside = (x: number) => Math.min(length, Math.max(0, x));
  const borders = [...new Set([0, length, ...zones.flatMap(({ from, to }) => [inside(from), inside(to)])])].sort(
    (a, b) => a - b,
  );
  return borders.slice(1).map((to, i): Wear => {
    const from = borders[i]!;
    const before = zones.filter((zone) => zone.from < to && zone.to > from);
    return { kind: "fallZone", from, to, falls: falls + before.reduce((sum, zone) => sum + zone.falls, 0) };
  });
}
