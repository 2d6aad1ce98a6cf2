/**
 * The day until which a rig may stay up: the first day on which a part no longer has the required margin, with the share of
 * parts asked for.
 */

import type { Fact, Rig } from "@secondline/rig";
import { normalQuantile } from "@secondline/statistics";
import { addDays, date, type PlainDate } from "../dates/calendarDate.ts";
import { combineFactors } from "../derating/lognormal.ts";
import type { PartStrength } from "../parts/partStrength.ts";
import { partStrengths } from "../parts/partStrengths.ts";
import type { FactorsOf } from "../retention/testedStock.ts";

export interface TakeDownQuestion {
  /** The rig as it is, or will be at the present rate of use, on a day. */
  readonly rigOn: (day: PlainDate) => Rig;
  /** First day, YYYY-MM-DD. */
  readonly on: string;
  /** Largest load of each part by its id [N]; parts without one are left out. */
  readonly loads: Readonly<Record<string, number>>;
  readonly requiredFactor: number;
  /** Share of parts that must have the margin, such as 0.95 [-]. */
  readonly confidence: number;
  /** How far to look [days]; default two years. */
  readonly horizon?: number;
  /** Own break tests in place of built-in factors, from `factorsFromLog`. */
  readonly factorsOf?: FactorsOf;
}

export interface PartTakeDown {
  readonly id: string;
  readonly name: string;
  /** Thin already on the first day, on `date`, or not within the horizon. */
  readonly when: "now" | "later" | "beyond";
  /** First day without the margin, YYYY-MM-DD; absent when beyond the horizon. */
  readonly date?: string;
  /** Strength that the share of parts reaches, on the first day and on that date (or at the horizon) [N]. */
  readonly strengthNow: number;
  readonly strengthThen: number;
  readonly required: number;
  /** Weakest place on that date, for webbing and leash. */
  readonly reason?: string;
  /** Reasons for that day: factors that then leave the range in which they are known, parts without data. */
  readonly flags: readonly Fact[];
}

export interface TakeDown {
  /** Soonest first. */
  readonly parts: readonly PartTakeDown[];
  /** Every part that is without the margin on the first day already, the least margin first. */
  readonly already: readonly PartTakeDown[];
  /** The take-down date: that of the first part; absent when every part lasts beyond the horizon. */
  readonly date?: string;
  /** Last day looked at, YYYY-MM-DD. */
  readonly horizon: string;
}

const DEFAULT_HORIZON_DAYS = 730;

/** A part's strength falls with time, so the day is found by halving. */
export function takeDown(question: TakeDownQuestion): TakeDown {
  const first = date(question.on);
  const horizon = question.horizon ?? DEFAULT_HORIZON_DAYS;
  const z = normalQuantile(question.confidence);
  const cache = new Map<number, ReadonlyMap<string, PartStrength>>();
  const strengthsOn = (day: number): ReadonlyMap<string, PartStrength> => {
    const known = cache.get(day);
    if (known !== undefined) return known;
    const parts = new Map(partStrengths(question.rigOn(addDays(first, day)), question.factorsOf).map((p) => [p.id, p]));
    cache.set(day, parts);
    return parts;
  };
  const parts = [...strengthsOn(0).values()].flatMap((now): PartTakeDown[] => {
    const load = question.loads[now.id];
    if (load === undefined || load <= 0) return [];
    const required = load * question.requiredFactor;
    const day = firstDayBelow((d) => bound(strengthsOn(d).get(now.id)!, z).value < required, horizon);
    const then = strengthsOn(day ?? horizon).get(now.id)!;
    const { value, reason } = bound(then, z);
    return [
      {
        id: now.id,
        name: now.name,
        when: day === undefined ? "beyond" : day === 0 ? "now" : "later",
        ...(day === undefined ? {} : { date: addDays(first, day).toString() }),
        strengthNow: bound(now, z).value,
        strengthThen: value,
        required,
        flags: then.flags,
        ...(reason === undefined ? {} : { reason }),
      },
    ];
  });
  parts.sort(
    (a, b) =>
      (a.date ?? "9999").localeCompare(b.date ?? "9999") || a.strengthNow / a.required - b.strengthNow / b.required,
  );
  const soonest = parts[0]?.date;
  const already = parts.filter(({ when }) => when === "now");
  return {
    parts,
    already,
    ...(soonest === undefined ? {} : { date: soonest }),
    horizon: addDays(first, horizon).toString(),
  };
}

/** Strength that a share of parts reaches; for a line, in its weakest zone by that strength. */
function bound(part: PartStrength, z: number): { readonly value: number; readonly reason?: string } {
  if (part.zones === undefined) {
    const value = part.strength * Math.exp(-z * part.sigmaLog);
    return part.weakest === undefined ? { value } : { value, reason: part.weakest.reason };
  }
  const zones = part.zones.map((zone) => ({
    value: zone.strength * Math.exp(-z * combineFactors(zone.rated, zone.factors).sigmaLog),
    reason: zone.reason,
  }));
  return zones.reduce((least, zone) => (zone.value < least.value ? zone : least));
}

/** First day on which it is so, by halving; undefined when it is not so by the horizon. */
function firstDayBelow(below: (day: number) => boolean, horizon: number): number | undefined {
  if (below(0)) return 0;
  if (!below(horizon)) return undefined;
  let [good, bad] = [0, horizon];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (below(middle)) bad = middle;
    else good = middle;
  }
  return bad;
}
