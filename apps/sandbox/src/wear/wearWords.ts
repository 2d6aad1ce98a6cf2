/** What the record says, in sentences. */
import { formatLength, formatMonths, formatRatio } from "@secondline/rig";
import type { PartState, StrengthZone, WearFlag, WearMark, WebbingState } from "@secondline/strength";
import type { Stretch } from "@secondline/workbench";
import { dateWords } from "../wearInHand/days.ts";
import { quantity } from "../words.ts";

export function markName(mark: WearMark): string {
  switch (mark.kind) {
    case "clampMark":
      return mark.until === undefined ? "in the clamp" : "old clamp mark";
    case "fallZone":
      return "fall zone";
    case "heat":
      return "glazed place";
    case "abrasion":
      return "abraded place";
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
        ? `${formatLength(fromA)} inside the span from A`
        : `${formatLength(loaded - fromA)} inside the span from B`;
    const stretch =
      flag.to - flag.from > 0.5 ? `${formatLength(flag.from)} to ${formatLength(flag.to)}` : formatLength(middle);
    return [
      {
        key,
        headline: `${capital(what(flag, state))} lies ${near}.`,
        detail: `${stretch} from the marked end (${state.mark}).`,
        place: { from: flag.from, to: flag.to },
      },
    ];
  });
}

function what(flag: WearFlag, { marks, placement }: WebbingState): string {
  const same = marks.filter((m) => m.kind === flag.kind && m.from === flag.from && m.to === flag.to);
  const months = Math.max(0, ...same.map((m) => (m.kind === "clampMark" ? m.months : 0)));
  if (flag.kind === "clampMark") return `old clamp mark of ${formatMonths(months)}`;
  if (flag.kind === "fallZone") {
    const before = placement?.since.toString() ?? "";
    const falls = same.reduce(
      (sum, m) => (m.kind === "fallZone" && m.since.toString() < before ? sum + m.falls : sum),
      0,
    );
    return `fall zone of an earlier rigging, ${Math.round(falls)} falls,`;
  }
  const first = same[0];
  return first ? markName(first) : flag.kind;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Where it is and what it has been through. */
export function stateWords(state: WebbingState): string {
  const { placement } = state;
  const where = placement
    ? `Hangs as the ${placement.line === "main" ? "main line" : "backup"} of ${placement.rig} since ${dateWords(placement.since.toString())}, ${formatLength(placement.to - placement.from)} of it loaded.`
    : "Hangs nowhere on this day.";
  const age =
    state.ageYears === undefined
      ? "Age not written down"
      : `${formatRatio(Number(state.ageYears.toPrecision(2)))} years old`;
  const wet = state.wet ? " Wet." : "";
  return `${where} ${age}, ${formatMonths(state.monthsOutside)} outside, ${formatRatio(Number(state.sunMonths.toPrecision(2)))} months of full sun.${wet}`;
}

export const zoneWords = (zone: StrengthZone): string =>
  `${quantity.strength(zone.strength5)} reached by 95 %, ${quantity.strength(zone.strength)} in the middle: ${zone.reason}`;

/** What a strength is made of, in kinds of bases. */
export const basisKinds = ({ ratedBasis, factors }: StrengthZone): string =>
  [...new Set([ratedBasis, ...factors.map(({ basis }) => basis)].map(({ kind }) => kind))].join(", ");

/** Zones that lie, at least in part, in a stretch. */
export const zonesWithin = (zones: readonly StrengthZone[], from: number, to: number): StrengthZone[] =>
  zones.filter((zone) => zone.to > from && zone.from < to);

export const weakest = (zones: readonly StrengthZone[]): StrengthZone | undefined =>
  zones.reduce<StrengthZone | undefined>(
    (least, z) => (least === undefined || z.strength5 < least.strength5 ? z : least),
    undefined,
  );

export function partStateWords({ up, rig, condition, falls }: PartState): string {
  const { monthsOutside = 0, sunMonths = 0, ageYears, wet } = condition;
  const age =
    ageYears === undefined ? "Age not written down" : `${formatRatio(Number(ageYears.toPrecision(2)))} years old`;
  return `${up ? "Up" : "Down"} on this day, in ${rig}. ${age}, ${formatMonths(monthsOutside)} outside, ${formatRatio(Number(sunMonths.toPrecision(2)))} months of full sun, ${Math.round(falls)} falls.${wet ? " Wet." : ""}`;
}
