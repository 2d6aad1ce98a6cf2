/**
 * Until when a rig may stay up: the first day on which the one rule finds it thin or failing, if it is used on as it has been. The
 * demands are those of today's verdict; only strengths change with the days.
 */
import type { Fact, PartId, Rig } from "@secondline/rig";
import { addDays, type BreakTest, type PlainDate, readDate } from "@secondline/strength";
import { rigStrengths } from "../strengths/rigStrengths.ts";
import type { EventRuns } from "./demand.ts";
import { gradeOf, keptShare, type PartMargins, partialGrade, partMargins } from "./margins.ts";

export interface PartDate {
  readonly part: PartId;
  /** Nobody can say that it keeps what is required today already, from `date` on, or not within the horizon. */
  readonly when: "now" | "later" | "beyond";
  /** First such day, YYYY-MM-DD; absent when beyond the horizon. */
  readonly date?: string;
  readonly fails: boolean;
  /**
   * Why nobody can say that it holds from that day on, though its margin is what is required or more: its interval reaches below, and more
   * runs would tell; or its strength lies beyond what is known of a factor. Absent where the margin is less.
   */
  readonly because?: "unsettled" | "unknown";
  /** Margin and required margin, today and on that day or at the horizon [-]. */
  readonly marginNow: number;
  readonly marginThen: number;
  readonly required: number;
  /** What lies at the place that governs then, for webbing. */
  readonly reason?: string;
  /** What a reader must know of the strength on that day. */
  readonly flags: readonly Fact[];
}

export interface Outlook {
  readonly on: string;
  /** Soonest first. */
  readonly parts: readonly PartDate[];
  /** That of the first part; absent when every part lasts beyond the horizon. */
  readonly date?: string;
  /** Last day looked at, YYYY-MM-DD. */
  readonly horizon: string;
}

export interface OutlookQuestion {
  /** First day, YYYY-MM-DD. */
  readonly on: string;
  /** The rig as it is, or will be at the present rate of use, on a day. */
  readonly rigOn: (day: PlainDate) => Rig;
  readonly tests?: readonly BreakTest[];
  /** The runs that count in today's verdict. */
  readonly events: readonly EventRuns[];
  /** Whether the verdict is of the whole search: then what is not settled counts as below, as it does there. Default: it is. */
  readonly whole?: boolean;
  /** How far to look [days]; default two years. */
  readonly horizon?: number;
}

const DEFAULT_HORIZON_DAYS = 730;

/** A part's strength only falls with time, so its day is found by halving. */
export function takeDownDates({
  on,
  rigOn,
  tests = [],
  events,
  whole = true,
  horizon = DEFAULT_HORIZON_DAYS,
}: OutlookQuestion): Outlook {
  const first = readDate(on);
  if (!first) throw new Error(`expected a date YYYY-MM-DD, got "${on}"`);
  const days = new Map<number, ReadonlyMap<string, PartMargins>>();
  const marginsOn = (day: number): ReadonlyMap<string, PartMargins> => {
    const known = days.get(day);
    if (known) return known;
    const rig = rigOn(addDays(first, day));
    const found = new Map(partMargins(rig, rigStrengths(rig, tests), events).map((one) => [one.part.id, one]));
    days.set(day, found);
    return found;
  };
  const parts = [...marginsOn(0).values()].flatMap((now): PartDate[] => {
    if (!now.governing) return [];
    const id = now.part.id;
    const grade = (one: PartMargins) => (whole ? gradeOf(one) : partialGrade(one));
    const endsOn = (day: number) => {
      const one = marginsOn(day).get(id)!;
      return one.part.beyond !== undefined || !["keeps", "open"].includes(grade(one));
    };
    const day = firstDay(endsOn, horizon);
    const then = marginsOn(day ?? horizon).get(id)!;
    const { margin, required, demand } = then.governing!;
    return [
      {
        part: id as PartId,
        when: day === undefined ? "beyond" : day === 0 ? "now" : "later",
        ...(day === undefined ? {} : { date: addDays(first, day).toString() }),
        fails: grade(then) === "fails",
        ...(day === undefined ? {} : notBelow(then)),
        marginNow: now.governing.margin,
        marginThen: margin,
        required,
        ...(demand.zone ? { reason: demand.zone.reason } : {}),
        flags: then.part.flags,
      },
    ];
  });
  const share = (one: PartDate) => keptShare(marginsOn(0).get(one.part)!.governing!);
  parts.sort((a, b) => (a.date ?? "9999").localeCompare(b.date ?? "9999") || share(a) - share(b));
  const soonest = parts[0]?.date;
  return {
    on,
    parts,
    ...(soonest === undefined ? {} : { date: soonest }),
    horizon: addDays(first, horizon).toString(),
  };
}

/** Why a day is told on which the margin is no less than what is required. */
function notBelow(then: PartMargins): Pick<PartDate, "because"> {
  const grade = gradeOf(then);
  if (grade === "fails" || grade === "thin") return {};
  return { because: then.part.beyond === undefined ? "unsettled" : "unknown" };
}

/** First day on which it is so, by halving; undefined when it is not so by the horizon. */
function firstDay(is: (day: number) => boolean, horizon: number): number | undefined {
  if (is(0)) return 0;
  if (!is(horizon)) return undefined;
  let [before, after] = [0, horizon];
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (is(middle)) after = middle;
    else before = middle;
  }
  return after;
}
