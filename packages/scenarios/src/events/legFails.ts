/** The leg to one of an anchor's rock points fails. */
import type { Rig } from "@secondline/rig";
import { phrase } from "../facts/phrase.ts";
import { between, type EventKind, fraction, MOMENT_REACH, movedPlace } from "./eventKind.ts";
import { manyPlaces, nearEnd } from "./places.ts";
import { LET_GO_TIME_FALL, lateKey, momentOf, type Pose, posePhrase, SEARCHED_MOMENTS } from "./poses.ts";

export interface LegFails {
  readonly kind: "legFails";
  readonly at: number;
  readonly anchor: "A" | "B";
  /** Index of the rock point [-]. */
  readonly leg: number;
  readonly walker: Exclude<Pose, "standing">;
  /** How much later than the leash's peak it fails, for a walker being caught; negative: earlier [s]. */
  readonly late?: number;
}

const KEY = /^leg@([AB])([1-9]\d?),(hanging|caught)@(\d*\.?\d+)([+-]\d*\.?\d+)?$/;

const anchorPoints = (rig: Rig, anchor: "A" | "B") => (anchor === "A" ? rig.anchorA : rig.anchorB).points;
const pointsOf = (rig: Rig, anchor: "A" | "B") => anchorPoints(rig, anchor).length;

export const legFails: EventKind<LegFails> = {
  kind: "legFails",
  class: () => "afterFailure",
  key: ({ anchor, leg, walker, at, late }) => `leg@${anchor}${leg + 1},${walker}@${fraction(at)}${lateKey(late)}`,
  parse(key) {
    const found = KEY.exec(key);
    const at = Number(found?.[4] ?? Number.NaN);
    if (!found || !between(at)) return undefined;
    const walker = found[3] as LegFails["walker"];
    const late = Number(found[5] ?? 0);
    if (late !== 0 && walker !== "caught") return undefined;
    const anchor = found[1] as "A" | "B";
    return { kind: "legFails", anchor, leg: Number(found[2]) - 1, walker, at, ...(late === 0 ? {} : { late }) };
  },
  title({ anchor, leg, walker, at, late }, rig) {
    const point = anchorPoints(rig, anchor)[leg];
    const values = {
      leg: { count: leg + 1 },
      anchor: { name: anchor },
      point: { name: point ? ` (${point.name})` : "" },
      pose: { phrase: posePhrase(walker, late) },
      where: { place: at, span: rig.span },
    };
    return phrase("event.legFails", "Leg {leg} of anchor {anchor}{point} fails, walker {pose} {where}", values);
  },
  missing({ anchor, leg }, rig) {
    const points = pointsOf(rig, anchor);
    if (points < 2) {
      const english = "Anchor {anchor} has one rock point and no legs of which one could fail.";
      return phrase("missing.legs", english, { anchor: { name: anchor } });
    }
    if (leg < points) return undefined;
    const values = { anchor: { name: anchor }, points: { count: points } };
    return phrase("missing.leg", "Anchor {anchor} has {points} legs.", values);
  },
  before: () => undefined,
  fallBefore: ({ walker, at }) => (walker === "caught" ? { kind: "leashFall", at } : undefined),
  problem({ anchor, leg, walker, late = 0 }, _rig, known) {
    const time = momentOf(walker, late, known);
    return {
      standing: walker === "caught",
      ...(walker === "caught" ? { letGo: LET_GO_TIME_FALL } : {}),
      legFailure: { anchor, leg, time },
      failsAt: time,
    };
  },
  scatters: ({ walker }) => (walker === "caught" ? ["moment", "letGo"] : []),
  space: ({ anchor, leg, walker, at, late = 0 }) => ({
    family: `leg ${anchor}${leg} ${walker}`,
    coordinates: [at, late / MOMENT_REACH],
    others({ rig }) {
      const moments = walker === "caught" ? [0, ...SEARCHED_MOMENTS] : [0];
      return manyPlaces(rig).flatMap((place) =>
        moments.map(
          (m): LegFails => ({
            kind: "legFails",
            anchor,
            leg,
            walker,
            at: place,
            ...(m === 0 ? {} : { late: m }),
          }),
        ),
      );
    },
  }),
  takesAway: ({ anchor, leg }) => [`anchor${anchor}.points.${leg}`],
  shifted: (event, place, moment) => ({
    ...event,
    at: movedPlace(event.at, place),
    ...(event.walker === "caught" ? { late: (event.late ?? 0) + moment } : {}),
  }),
  // The outermost two legs of either anchor: if a middle leg goes, the others carry no more than their share.
  seeds({ rig, size }) {
    const near = nearEnd(rig);
    return (["A", "B"] as const).flatMap((anchor) => {
      const count = pointsOf(rig, anchor);
      if (count < 2) return [];
      const leg = (which: number, at: number): LegFails => ({
        kind: "legFails",
        anchor,
        leg: which,
        walker: "caught",
        at,
      });
      const far = [leg(0, 0.5), leg(count - 1, 0.5)];
      return size === "quick" ? far : [...far, leg(0, anchor === "A" ? near : 1 - near)];
    });
  },
};
