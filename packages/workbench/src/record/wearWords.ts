/** What the record says, in sentences. */

import type { PartState, StrengthZone, WearFlag, WearMark, WebbingState } from "@secondline/strength";
import { capital, listed, quantity, weakness } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { formatLength, formatRatio } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import type { Stretch } from "../wear/place.ts";
import { monthsWords } from "./months.ts";

export function markName(mark: WearMark): string {
  switch (mark.kind) {
    case "clampMark":
      return mark.until === undefined ? sayWear("wearWords.clamp") : sayWear("wearWords.oldClampMark");
    case "fallZone":
      return sayWear("wearWords.fallZone");
    case "heat":
      return sayWear("wearWords.glazedPlace");
    case "abrasion":
      return sayWear("wearWords.abradedPlace");
    default:
      return mark.kind;
  }
}

export interface FlagWords {
  readonly key: string;
  readonly headline: string;
  readonly detail: string;
  /** Where it lies [m from the marked end]. */
  readonly place: Stretch;
}

/** Flags of one webbing: one sentence per place, however many entries it took to make it. */
export function flagWords(state: WebbingState, flags: readonly WearFlag[]): FlagWords[] {
  const { placement } = state;
  const own = flags.filter((flag) => flag.webbing === state.id);
  const places = new Map<string, WearFlag[]>();
  for (const flag of own) {
    const key = `${flag.kind} ${flag.from} ${flag.to}`;
    places.set(key, [...(places.get(key) ?? []), flag]);
  }
  return [...places].flatMap(([key, [flag]]) => {
    if (!flag || !placement) return [];
    const middle = (flag.from + flag.to) / 2;
    const loaded = placement.to - placement.from;
    // A place across the border of the span has its middle outside.
    const fromA = Math.min(Math.max(flag.fromA, 0), loaded);
    const near =
      fromA <= loaded / 2
        ? sayWear("wearWords.insideFromA", { length: formatLength(fromA) })
        : sayWear("wearWords.insideFromB", { length: formatLength(loaded - fromA) });
    const stretch =
      flag.to - flag.from > 0.5
        ? sayWear("wearWords.stretch", { from: formatLength(flag.from), to: formatLength(flag.to) })
        : formatLength(middle);
    return [
      {
        key,
        headline: sayWear("wearWords.lies", { what: capital(what(flag, state)), near }),
        detail: sayWear("wearWords.markedEnd", { stretch, mark: state.mark }),
        place: { from: flag.from, to: flag.to },
      },
    ];
  });
}

function what(flag: WearFlag, { marks, placement }: WebbingState): string {
  const same = marks.filter((m) => m.kind === flag.kind && m.from === flag.from && m.to === flag.to);
  const months = Math.max(0, ...same.map((m) => (m.kind === "clampMark" ? m.months : 0)));
  if (flag.kind === "clampMark") return sayWear("wearWords.oldClampMarkOf", { months: monthsWords(months) });
  if (flag.kind === "fallZone") {
    const before = placement?.since.toString() ?? "";
    const falls = same.reduce(
      (sum, m) => (m.kind === "fallZone" && m.since.toString() < before ? sum + m.falls : sum),
      0,
    );
    return sayWear("wearWords.earlierFallZone", { count: Math.round(falls) });
  }
  const first = same[0];
  return first ? markName(first) : flag.kind;
}

/** Where it is and what it has been through. */
export function stateWords(state: WebbingState): string {
  const { placement } = state;
  const where = placement
    ? sayWear("wearWords.hangsSince", {
        line: placement.line === "main" ? sayWear("wearWords.mainLine") : sayWear("wearWords.backup"),
        rig: placement.rig,
        day: dayText(placement.since.toString()),
        length: formatLength(placement.to - placement.from),
      })
    : sayWear("wearWords.hangsNowhere");
  const age =
    state.ageYears === undefined
      ? sayWear("wearWords.ageNotWritten")
      : sayWear("wearWords.yearsOld", { years: formatRatio(state.ageYears, "up") });
  const wet = state.wet ? sayWear("wearWords.wet") : "";
  return sayWear("wearWords.webbingState", {
    where,
    age,
    outside: monthsWords(state.monthsOutside),
    sun: formatRatio(state.sunMonths, "up"),
    wet,
    before: beforeWords(state.reach),
  });
}

export const zoneWords = (zone: StrengthZone): string =>
  sayWear("wearWords.strengthThere", {
    strength: quantity.strength(zone.strength5),
    middle: quantity.strength(zone.strength),
    reason: zone.reason,
  });

/** What a strength is made of, in kinds of bases. */
export const basisKinds = ({ ratedBasis, factors }: StrengthZone): string =>
  listed([...new Set([ratedBasis, ...factors.map(({ basis }) => basis)].map(({ kind }) => kind))]);

/** Zones that lie, at least in part, in a stretch. */
export const zonesWithin = (zones: readonly StrengthZone[], from: number, to: number): StrengthZone[] =>
  zones.filter((zone) => zone.to > from && zone.from < to);

export const weakest = (zones: readonly StrengthZone[]): StrengthZone | undefined =>
  zones.reduce<StrengthZone | undefined>(
    (least, z) => (least === undefined || z.strength5 < least.strength5 ? z : least),
    undefined,
  );

export function partStateWords({ up, rig, placed, condition, falls, recorded, reach }: PartState): string {
  const { ageYears, wet } = condition;
  const age =
    ageYears === undefined
      ? sayWear("wearWords.ageNotWritten")
      : sayWear("wearWords.yearsOld", { years: formatRatio(ageYears, "up") });
  return sayWear("wearWords.partState", {
    state: up ? sayWear("wearWords.up") : sayWear("wearWords.down"),
    rig,
    age,
    outside: placed ? outsideWords(recorded) : sayWear("wearWords.outsideNotWritten"),
    falls:
      falls === undefined && recorded.falls === 0
        ? sayWear("wearWords.fallsNotWritten")
        : sayWear("wearWords.falls", { falls: Math.ceil(recorded.falls - 1e-9) }),
    wet: wet ? sayWear("wearWords.wet") : "",
    before: beforeWords(reach),
  });
}

const outsideWords = ({ monthsOutside, sunMonths }: PartState["recorded"]): string =>
  sayWear("wearWords.outside", {
    outside: monthsWords(monthsOutside),
    sun: formatRatio(sunMonths, "up"),
  });

/** What a record that begins late does not say. */
const beforeWords = ({ fromNew, begun }: WebbingState["reach"]): string =>
  fromNew || begun === undefined ? "" : sayWear("wearWords.before", { day: dayText(begun.toString()) });

/** Strength along a webbing, zone by zone: where, the 5 % value, the middle, why, and on what grounds. */
export const zoneRows = (zones: readonly StrengthZone[]): readonly (readonly string[])[] =>
  zones.map((zone) => [
    formatLength(zone.from),
    formatLength(zone.to),
    quantity.strength(zone.strength5),
    quantity.strength(zone.strength),
    weakness(zone.reason),
    basisKinds(zone),
  ]);
