/** The walker falls off the line into the leash. */

import { phrase } from "../facts/phrase.ts";
import { between, type EventKind, fraction, movedPlace } from "./eventKind.ts";
import { manyPlaces, nearEnd, QUARTERS } from "./places.ts";
import { LET_GO_TIME_FALL } from "./poses.ts";

export interface LeashFall {
  readonly kind: "leashFall";
  readonly at: number;
}

const KEY = /^fall@(\d*\.?\d+)$/;

export const leashFall: EventKind<LeashFall> = {
  kind: "leashFall",
  class: () => "expected",
  key: ({ at }) => `fall@${fraction(at)}`,
  parse(key) {
    const at = Number(KEY.exec(key)?.[1] ?? Number.NaN);
    return between(at) ? { kind: "leashFall", at } : undefined;
  },
  title: ({ at }, { span }) => phrase("event.leashFall", "Leash fall {where}", { where: { place: at, span } }),
  missing: () => undefined,
  before: () => undefined,
  fallBefore: () => undefined,
  problem: () => ({ standing: true, letGo: LET_GO_TIME_FALL }),
  scatters: () => ["letGo"],
  space: ({ at }) => ({
    family: "fall",
    coordinates: [at],
    others: ({ rig }) => manyPlaces(rig).map((place) => ({ kind: "leashFall", at: place })),
  }),
  takesAway: () => [],
  shifted: (event, place) => ({ ...event, at: movedPlace(event.at, place) }),
  // Near an end the line is stiff and the anchor close; in the middle the drop is deepest.
  seeds({ rig, size }) {
    const near = nearEnd(rig);
    const places = size === "quick" ? [0.5, near, 1 - near] : [near, ...QUARTERS, 1 - near];
    return places.map((at) => ({ kind: "leashFall", at }));
  },
};
