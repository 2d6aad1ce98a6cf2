/** Stretches of a webbing in sight: not too short to read, about a place, following one. */
import { panned, zoomed } from "@secondline/figures/time";
import type { StrengthZone } from "@secondline/strength";
import type { Stretch } from "../wear/place.ts";
import { weakest, zonesWithin } from "./wearWords.ts";
import type { WebbingFacts } from "./webbingFacts.ts";

/** No one measures along a webbing finer than in centimetres: less than this is not drawn over the whole width [m]. */
const LEAST_VISIBLE_LENGTH = 0.5;

/** `sight`, but not shorter than anybody needs. */
export function notTooShort(sight: Stretch, length: number): Stretch {
  const span = sight.to - sight.from;
  return span >= LEAST_VISIBLE_LENGTH
    ? sight
    : zoomed(sight, span / LEAST_VISIBLE_LENGTH, (sight.from + sight.to) / 2, length);
}

/** A place with as much webbing on either side as lets one see where it lies. */
export function withSurroundings({ from, to }: Stretch, length: number): Stretch {
  const margin = Math.max(1, to - from);
  return panned({ from: from - margin, to: to + margin }, 0, length);
}

/** `sight`, moved just far enough to have some of `place` in it. */
export function following(sight: Stretch, place: Stretch, length: number): Stretch {
  if (place.to > sight.from && place.from < sight.to) return sight;
  return panned(sight, (place.from + place.to) / 2 - (sight.from + sight.to) / 2, length);
}

/** The zones of a webbing that count: those within its loaded span; without a loaded span, all zones. */
export const loadedZones = ({ zones, state: { placement } }: WebbingFacts): readonly StrengthZone[] =>
  placement ? zonesWithin(zones, placement.from, placement.to) : zones;

export interface ReadOff {
  readonly place: number;
  /** The weakest of what meets there. */
  readonly here: StrengthZone;
  /** Between these the line can be moved. */
  readonly min: number;
  readonly max: number;
}

/** What it holds at the place that is read, else at the weakest, or in the middle where that is out of sight; never out of sight. */
export function readOff(
  zones: readonly StrengthZone[],
  sight: Stretch,
  worst: StrengthZone | undefined,
  read: number | undefined,
): ReadOff | undefined {
  const [first, last] = [zones[0], zones.at(-1)];
  if (!first || !last) return undefined;
  const weak = worst ? (worst.from + worst.to) / 2 : 0;
  const start = read ?? (weak < sight.from || weak > sight.to ? (sight.from + sight.to) / 2 : weak);
  const [min, max] = [Math.max(first.from, sight.from), Math.min(last.to, sight.to)];
  const place = Math.min(Math.max(start, min), max);
  return { place, here: weakest(zones.filter(({ from, to }) => from <= place && place <= to)) ?? first, min, max };
}
