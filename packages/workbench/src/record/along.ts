/** Stretches of a webbing in sight: not too short to read, about a place, following one. */
import { panned, zoomed } from "@secondline/figures/time";
import type { Stretch } from "../wear/place.ts";

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
export function around({ from, to }: Stretch, length: number): Stretch {
  const margin = Math.max(1, to - from);
  return panned({ from: from - margin, to: to + margin }, 0, length);
}

/** `sight`, moved just far enough to have some of `place` in it. */
export function following(sight: Stretch, place: Stretch, length: number): Stretch {
  if (place.to > sight.from && place.from < sight.to) return sight;
  return panned(sight, (place.from + place.to) / 2 - (sight.from + sight.to) / 2, length);
}
