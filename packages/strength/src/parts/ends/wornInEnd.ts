/** Wear of the webbing where it sits in an end: a little inside the span, and behind it in the weblock, the loop or the knot. */
import type { Wear } from "@secondline/rig";
import type { StrengthFactor } from "../../derating/factor.ts";
import { lowValue } from "../../derating/lognormal.ts";
import { wearExtent, wearFactor } from "../webbingWear/wearKinds.ts";
import type { EndPlace } from "./endKind.ts";

/** How far an end reaches from where the span ends [m]. */
export interface EndReach {
  readonly inside: number;
  readonly behind: number;
  /** Wear that is the end's own, and in its rating. */
  readonly own?: Wear["kind"];
}

interface Worn {
  /** Places count from the span's end, inside it positive [m]. */
  readonly from: number;
  readonly to: number;
  readonly factor: StrengthFactor;
}

/** Factors of the wears that lie one over the other at the worst place within the end's reach; none when nothing is worn there. */
export function wornInEnd(place: EndPlace, reach: EndReach): StrengthFactor[] {
  const worn = [...insideSpan(place), ...behindSpan(place)].filter(
    ({ kind, from, to }) => kind !== reach.own && from < reach.inside && to > -reach.behind,
  );
  const borders = [...new Set(worn.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const stretches = borders
    .slice(1)
    .map((to, i) => [Math.max(borders[i]!, -reach.behind), Math.min(to, reach.inside)] as const)
    .filter(([from, to]) => from < to);
  const places = stretches.map(([from, to]) =>
    worn.filter((one) => one.from < to && one.to > from).map(({ factor }) => factor),
  );
  const left = (factors: readonly StrengthFactor[]) =>
    factors.reduce((product, factor) => product * lowValue(factor), 1);
  return places.reduce<StrengthFactor[]>((worst, here) => (left(here) < left(worst) ? here : worst), []);
}

function insideSpan(place: EndPlace): (Worn & { readonly kind: Wear["kind"] })[] {
  const { section, sectionAt, side, length, factorsOf } = place;
  return section.wear.map((wear, i) => {
    const [a, b] = wearExtent(wear);
    const [from, to] = side === "A" ? [a, b] : [length - b, length - a];
    const factor = wearFactor(wear, { section, factorsOf, at: sectionAt, wearAt: `${sectionAt}.wear[${i}]` });
    return { kind: wear.kind, from, to, factor };
  });
}

function behindSpan({ end, section, sectionAt, at, factorsOf }: EndPlace): (Worn & { readonly kind: Wear["kind"] })[] {
  return (end.behind ?? []).map((wear, i) => {
    const [a, b] = wearExtent(wear);
    const factor = wearFactor(wear, { section, factorsOf, at: sectionAt, wearAt: `${at}.behind[${i}]` });
    return { kind: wear.kind, from: -b, to: -a, factor };
  });
}
