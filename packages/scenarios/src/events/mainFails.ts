/** The main line fails at a place, with the walker hanging, standing, or just being caught by the leash. */
import type { PartId } from "@secondline/rig";
import { phrase } from "../facts/phrase.ts";
import { between, type EventKind, fraction, MOMENT_REACH, movedPlace, withinLine } from "./eventKind.ts";
import { besideWalker, endBays, manyPlaces, nearEnd, QUARTERS } from "./places.ts";
import {
  LET_GO_TIME_CUT,
  LET_GO_TIME_FALL,
  lateKey,
  momentOf,
  type Pose,
  posePhrase,
  SEARCHED_MOMENTS,
} from "./poses.ts";

export interface MainFails {
  readonly kind: "mainFails";
  readonly at: number;
  /** Where the main line fails, 0 at anchor A, 1 at anchor B [-]. */
  readonly cutAt: number;
  readonly walker: Pose;
  /** How much later than the leash's peak it fails, for a walker being caught; negative: earlier [s]. */
  readonly late?: number;
}

const KEY = /^fails@(\d*\.?\d+),(hanging|standing|caught)@(\d*\.?\d+)([+-]\d*\.?\d+)?$/;

const fails = (cutAt: number, walker: Pose, at: number, late = 0): MainFails => ({
  kind: "mainFails",
  at,
  cutAt,
  walker,
  ...(late === 0 ? {} : { late }),
});

/** A piece that comes off and is longer than this share of the line flies past its anchor before it jerks there [-]. */
const LONG_PIECE_SHARE = 0.6;

type ComesOff = "end" | `${"piece" | "most"}${"A" | "B"}`;

/**
 * The piece that comes off a walker whips, and jerks at the anchor that holds it: most of a line scatters otherwise than half of it, so
 * that none stands for the other. Where an end goes, all of the line stays in the ring.
 */
function comesOff(cutAt: number, at: number): ComesOff {
  if (cutAt <= 0 || cutAt >= 1) return "end";
  const end = cutAt < at ? "A" : "B";
  const length = end === "A" ? cutAt : 1 - cutAt;
  return `${length > LONG_PIECE_SHARE ? "most" : "piece"}${end}`;
}

export const mainFails: EventKind<MainFails> = {
  kind: "mainFails",
  class: () => "afterFailure",
  key: ({ cutAt, walker, at, late }) => `fails@${fraction(cutAt)},${walker}@${fraction(at)}${lateKey(late)}`,
  parse(key) {
    const found = KEY.exec(key);
    if (!found) return undefined;
    const [cutAt, at, late] = [Number(found[1]), Number(found[3]), Number(found[4] ?? 0)];
    const walker = found[2] as Pose;
    if (late !== 0 && walker !== "caught") return undefined;
    return withinLine(cutAt) && between(at) ? fails(cutAt, walker, at, late) : undefined;
  },
  title({ at, cutAt, walker, late }, { span }) {
    const values = {
      cut: { place: cutAt, span },
      pose: { phrase: posePhrase(walker, late) },
      where: { place: at, span },
    };
    return phrase("event.mainFails", "Main line fails {cut}, walker {pose} {where}", values);
  },
  missing: () => undefined,
  before: () => undefined,
  // The hardest moment for it to fail is the peak of the leash in a fall at the same place.
  fallBefore: ({ walker, at }) => (walker === "caught" ? { kind: "leashFall", at } : undefined),
  problem({ at: _, cutAt, walker, late = 0 }, _rig, known) {
    const time = momentOf(walker, late, known);
    return {
      standing: walker !== "hanging",
      ...(walker === "hanging" ? {} : { letGo: walker === "standing" ? LET_GO_TIME_CUT : LET_GO_TIME_FALL }),
      cut: { at: cutAt, time },
      failsAt: time,
    };
  },
  scatters: ({ walker }) => (walker === "caught" ? ["moment", "letGo"] : walker === "standing" ? ["letGo"] : []),
  space: ({ at, cutAt, walker, late = 0 }) => ({
    family: `fails ${walker} ${comesOff(cutAt, at)}`,
    coordinates: [at, cutAt, late / MOMENT_REACH],
    others({ rig, weakPlaces }) {
      if (!rig.backup) return [];
      const places = manyPlaces(rig);
      const moments = walker === "caught" ? [0, ...SEARCHED_MOMENTS] : [0];
      return places.flatMap((place) => {
        const cuts = [0, 1, ...places, ...weakPlaces, besideWalker(place)];
        const alike = cuts.filter((cut) => comesOff(cut, place) === comesOff(cutAt, at));
        return alike.flatMap((cut) => moments.map((m) => fails(cut, walker, place, m)));
      });
    },
  }),
  takesAway({ cutAt }): readonly PartId[] {
    if (cutAt <= 0) return ["endA"];
    return cutAt >= 1 ? ["endB"] : [];
  },
  // The ends stay the ends: clamps and stitching sit there.
  shifted: (event, place, moment) => ({
    ...event,
    at: movedPlace(event.at, place),
    ...(event.walker === "caught" ? { late: (event.late ?? 0) + moment } : {}),
  }),
  seeds({ rig, weakPlaces, size }) {
    const near = nearEnd(rig);
    if (!rig.backup) return [fails(0, "hanging", 0.5), fails(1, "hanging", 0.5)];
    const bays = endBays(rig);
    if (size === "quick") {
      const few = [0, 1].flatMap((end) => [fails(end, "hanging", 0.5), fails(end, "standing", 0.5)]);
      const worst = weakPlaces[0];
      const weak = worst === undefined ? [] : [fails(worst, "hanging", 0.5)];
      return [...few, fails(0, "caught", 0.5), fails(0.5, "caught", 0.5), ...weak];
    }
    const list: MainFails[] = [];
    for (const end of [0, 1]) {
      // The bay beside the end that goes has the longest way to fall; without connections, all of the line is one bay.
      const bay = (end === 0 ? bays.A : bays.B) ?? (end === 0 ? near : 1 - near);
      for (const at of [near, ...QUARTERS, 1 - near, bay]) list.push(fails(end, "hanging", at));
      for (const at of [...QUARTERS, bay]) list.push(fails(end, "standing", at), fails(end, "caught", at));
      // Beside the end that goes, the walker falls past where the line was; beside the other, the backup is at its stiffest.
      for (const at of [near, 1 - near]) list.push(fails(end, "standing", at));
    }
    for (const at of QUARTERS) list.push(fails(0.5, "hanging", at));
    list.push(fails(0.5, "standing", 0.5), fails(0.5, "caught", 0.5));
    // Without connections nearly the whole line comes off beside the walker, at the tension of the catch, and jerks at the far end.
    if (bays.A === undefined)
      for (const at of [near, 0.25, 0.75, 1 - near]) list.push(fails(besideWalker(at), "caught", at));
    for (const cutAt of weakPlaces) {
      for (const at of QUARTERS) list.push(fails(cutAt, "hanging", at));
      list.push(fails(cutAt, "caught", 0.5));
    }
    return list;
  },
};
