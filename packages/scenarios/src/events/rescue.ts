/**
 * A rescue: a second person hangs beside the walker, each on a leash and ring of an own. Both are at rest, or the main line or a
 * leg fails while they are. Asked for where the rig says who would come.
 */
import type { Rig } from "@secondline/rig";
import {
  between,
  type EventBase,
  type EventKind,
  fraction,
  movedPlace,
  type ProblemPart,
  type Space,
} from "./eventKind.ts";
import { type LegFails, legFails } from "./legFails.ts";
import { type MainFails, mainFails } from "./mainFails.ts";
import { phrase } from "./phrase.ts";
import { endBays, manyPlaces, nearEnd, QUARTERS } from "./places.ts";

/** What may fail while both hang. */
export type Failure = MainFails | LegFails;

export interface Rescue {
  readonly kind: "rescue";
  readonly at: number;
  /** With the walker hanging; absent: nothing fails. */
  readonly during?: Failure;
}

const KEY = /^rescue(?:@(\d*\.?\d+)|\/(.+))$/;

const hanging = (at: number): Rescue => ({ kind: "rescue", at });
const failing = (during: Failure): Rescue => ({ kind: "rescue", at: during.at, during });

/** What a kind needs to be asked of what fails. */
function inside<T>(during: Failure, ask: <E extends EventBase>(kind: EventKind<E>, event: E) => T): T {
  switch (during.kind) {
    case "mainFails":
      return ask(mainFails, during);
    case "legFails":
      return ask(legFails, during);
  }
}

export const rescue: EventKind<Rescue> = {
  kind: "rescue",
  class: ({ during }) => (during ? "afterFailure" : "expected"),
  key: ({ at, during }) =>
    during ? `rescue/${inside(during, (kind, event) => kind.key(event))}` : `rescue@${fraction(at)}`,
  parse(key) {
    const [, place, rest = ""] = KEY.exec(key) ?? [];
    if (place !== undefined) return between(Number(place)) ? hanging(Number(place)) : undefined;
    const during = mainFails.parse(rest) ?? legFails.parse(rest);
    return during?.walker === "hanging" ? failing(during) : undefined;
  },
  title({ at, during }, rig) {
    if (!during) {
      return phrase("event.rescue", "Rescue, two persons hanging {where}", { where: { place: at, span: rig.span } });
    }
    const what = { during: { phrase: inside(during, (kind, event) => kind.title(event, rig)) } };
    return phrase("event.rescueDuring", "Rescue, a second person beside: {during}", what);
  },
  missing({ during }, rig) {
    if (rig.walker.rescuer === undefined) {
      return phrase("missing.rescuer", "The rig does not say who comes to a rescue: give a mass in walker.rescuer.");
    }
    return during && inside(during, (kind, event) => kind.missing(event, rig));
  },
  before: () => undefined,
  problem({ during }, rig): ProblemPart {
    const part = during && inside(during, (kind, event) => kind.problem(event, rig, undefined));
    return { ...(part ?? { standing: false }), beside: rig.walker.rescuer ?? 0 };
  },
  scatters: () => [],
  space({ at, during }): Space<Rescue> {
    if (!during) {
      const others: Space<Rescue>["others"] = ({ rig }) => manyPlaces(rig).map(hanging);
      return { family: "rescue", coordinates: [at], others };
    }
    const { family, coordinates, others } = inside(during, (kind, event) => kind.space(event)) as Space<Failure>;
    return { family: `rescue ${family}`, coordinates, others: (facts) => others(facts).map(failing) };
  },
  takesAway: ({ during }) => (during ? inside(during, (kind, event) => kind.takesAway(event)) : []),
  shifted(event, place, moment) {
    const { at, during } = event;
    if (!during) return hanging(movedPlace(at, place));
    return failing(inside(during, (kind, one) => kind.shifted(one, place, moment)) as Failure);
  },
  seeds({ rig, size }) {
    if (rig.walker.rescuer === undefined) return [];
    const fails = (cutAt: number, at: number) => failing({ kind: "mainFails", at, cutAt, walker: "hanging" });
    if (size === "quick") return [hanging(0.5), fails(0, 0.5)];
    const near = nearEnd(rig);
    const { A = near, B = 1 - near } = endBays(rig);
    const places = [near, ...QUARTERS, 1 - near];
    return [
      ...places.map(hanging),
      // As with the walker alone: beside the ends, in the quarters, and in the bay beside the end that goes.
      ...[...places, A].map((at) => fails(0, at)),
      ...[...places, B].map((at) => fails(1, at)),
      ...legSeeds(rig),
    ];
  },
};

/** The outermost legs of either anchor, as when the walker is alone. */
function legSeeds(rig: Rig): readonly Rescue[] {
  const legs = legFails.seeds({ rig, weakPlaces: [], size: "quick" });
  return legs.map((leg) => failing({ ...leg, walker: "hanging" }));
}
