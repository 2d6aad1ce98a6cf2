/**
 * A rescue: a second person hangs beside the walker, each on a leash and ring of an own. Both are at rest, or the main line or a
 * leg fails while they are. Asked for where the rig says who would come.
 */

import { phrase } from "../facts/phrase.ts";
import { between, type EventKind, fraction, movedPlace, type Space } from "./eventKind.ts";
import { type LegFails, legFails } from "./legFails.ts";
import { type MainFails, mainFails } from "./mainFails.ts";
import { manyPlaces, nearEnd, QUARTERS } from "./places.ts";

/** What may fail while both hang. */
type Failure = MainFails | LegFails;

export interface Rescue {
  readonly kind: "rescue";
  readonly at: number;
  /** The failure, while the walker hangs; absent: nothing fails. */
  readonly during?: Failure;
}

const KEY = /^rescue(?:@(\d*\.?\d+)|\/(.+))$/;

const FAILURES = { mainFails, legFails };
/** A question to the kind of a failure goes on to that failure. */
const kindOf = ({ kind }: Failure) => FAILURES[kind] as unknown as EventKind<Failure>;

const hanging = (at: number): Rescue => ({ kind: "rescue", at });
const failing = (during: Failure): Rescue => ({ kind: "rescue", at: during.at, during });

export const rescue: EventKind<Rescue> = {
  kind: "rescue",
  class: ({ during }) => (during ? "afterFailure" : "expected"),
  key: ({ at, during }) => (during ? `rescue/${kindOf(during).key(during)}` : `rescue@${fraction(at)}`),
  parse(key) {
    const [, place, rest = ""] = KEY.exec(key) ?? [];
    if (place !== undefined) return between(Number(place)) ? hanging(Number(place)) : undefined;
    const during = mainFails.parse(rest) ?? legFails.parse(rest);
    return during?.walker === "hanging" ? failing(during) : undefined;
  },
  title: ({ at, during }, rig) =>
    during
      ? phrase("event.rescueDuring", "Rescue, a second person beside: {during}", {
          during: { phrase: kindOf(during).title(during, rig) },
        })
      : phrase("event.rescue", "Rescue, two persons hanging {where}", { where: { place: at, span: rig.span } }),
  missing({ during }, rig) {
    if (rig.walker.rescuer === undefined) {
      return phrase("missing.rescuer", "The rig does not say who comes to a rescue: give a mass in walker.rescuer.");
    }
    return during && kindOf(during).missing(during, rig);
  },
  before: () => undefined,
  fallBefore: () => undefined,
  problem: ({ during }, rig) => ({
    ...(during ? kindOf(during).problem(during, rig, {}) : { standing: false }),
    beside: rig.walker.rescuer ?? 0,
  }),
  scatters: () => [],
  space({ at, during }): Space<Rescue> {
    if (!during) {
      return { family: "rescue", coordinates: [at], others: ({ rig }) => manyPlaces(rig).map(hanging) };
    }
    const { family, coordinates, others } = kindOf(during).space(during)!;
    return { family: `rescue ${family}`, coordinates, others: (facts) => others(facts).map(failing) };
  },
  takesAway: ({ during }) => (during ? kindOf(during).takesAway(during) : []),
  shifted: ({ at, during }, place, moment) =>
    during ? failing(kindOf(during).shifted(during, place, moment)) : hanging(movedPlace(at, place)),
  // What fails with the walker hanging alone, with both: and any of the legs.
  seeds(facts) {
    const { rig, size } = facts;
    if (rig.walker.rescuer === undefined) return [];
    const near = nearEnd(rig);
    return [
      ...(size === "quick" ? [0.5] : [near, ...QUARTERS, 1 - near]).map(hanging),
      ...mainFails.seeds(facts).flatMap((one) => (one.walker === "hanging" ? [failing(one)] : [])),
      ...legFails.seeds(facts).map((one) => failing({ ...one, walker: "hanging" })),
    ];
  },
};
