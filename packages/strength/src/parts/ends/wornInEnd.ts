/** Wear of the webbing where it sits in an end: a little inside the span, and behind it in the weblock, the loop or the knot. */
import type { Wear } from "@secondline/rig";
import type { StrengthFactor } from "../../derating/factor.ts";
import { lowValue } from "../../derating/lognormal.ts";
import type { WearOf, WrittenWear } from "../webbingWear/wearKind.ts";
import { addedUp, wearExtent, wearFactor } from "../webbingWear/wearKinds.ts";
import type { EndPlace } from "./endKind.ts";

/** How far an end reaches to either side of the span's end [m]. */
export interface EndReach {
  readonly inside: number;
  readonly behind: number;
  /** Wear that belongs to the end itself, and is in its rating. */
  readonly own?: Wear["kind"];
}

interface Worn extends WrittenWear {
  /** Places count from the span's end, inside it positive [m]. */
  readonly from: number;
  readonly to: number;
}

/**
 * Factors of the wears at the worst place within the end's reach; empty when nothing is worn there. `clamped`: factors of the
 * end's own clamp together with the marks at a place; without marks, of the end's clamp alone.
 */
export function wornInEnd(
  place: EndPlace,
  reach: EndReach,
  clamped?: (marks?: WrittenWear<WearOf<"clampMark">>) => StrengthFactor,
): StrengthFactor[] {
  const worn = [...insideSpan(place), ...behindSpan(place)].filter(
    ({ wear, from, to }) => wear.kind !== reach.own && from < reach.inside && to > -reach.behind,
  );
  const borders = [...new Set(worn.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const stretches = borders
    .slice(1)
    .map((to, i) => [Math.max(borders[i]!, -reach.behind), Math.min(to, reach.inside)] as const)
    .filter(([from, to]) => from < to);
  const { section, sectionAt, factorsOf } = place;
  const factor = ({ wear, wearAt }: WrittenWear) => wearFactor(wear, { section, factorsOf, at: sectionAt, wearAt });
  const unworn = clamped === undefined ? [] : [clamped()];
  const places = stretches.flatMap(([from, to]) => {
    const here = addedUp(worn.filter((one) => one.from < to && one.to > from));
    const apart = [...unworn, ...here.map(factor)];
    const mark = here.find(isMark);
    if (clamped === undefined || mark === undefined) return [apart];
    return [apart, [clamped(mark), ...here.filter((one) => one !== mark).map(factor)]];
  });
  const left = (factors: readonly StrengthFactor[]) =>
    factors.reduce((product, factor) => product * lowValue(factor), 1);
  return places.reduce<StrengthFactor[]>((worst, here) => (left(here) < left(worst) ? here : worst), unworn);
}

const isMark = (one: WrittenWear): one is WrittenWear<WearOf<"clampMark">> => one.wear.kind === "clampMark";

function insideSpan({ section, sectionAt, side, length }: EndPlace): Worn[] {
  return section.wear.map((wear, i) => {
    const [a, b] = wearExtent(wear);
    const [from, to] = side === "A" ? [a, b] : [length - b, length - a];
    return { wear, from, to, wearAt: `${sectionAt}.wear[${i}]` };
  });
}

function behindSpan({ end, at }: EndPlace): Worn[] {
  return (end.behind ?? []).map((wear, i) => {
    const [a, b] = wearExtent(wear);
    return { wear, from: -b, to: -a, wearAt: `${at}.behind[${i}]` };
  });
}
