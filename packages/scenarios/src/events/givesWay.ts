/** A part that keeps too little gives way in another event, at the load that it gets there: what then catches is to be seen. */
import { isPartId, type PartId, partRef, type Rig } from "@secondline/rig";
import { phrase } from "../facts/phrase.ts";
import { whenGone } from "../singles/whenGone.ts";
import { type EventBase, type EventKind, fraction, withinLine } from "./eventKind.ts";
import { type LeashFall, leashFall } from "./leashFall.ts";
import { type LegFails, legFails } from "./legFails.ts";
import { type MainFails, mainFails } from "./mainFails.ts";
import { type Rescue, rescue } from "./rescue.ts";
import { weakenedAt } from "./weakenedAt.ts";

/** The events in which a part can give way. */
export type Cause = LeashFall | MainFails | LegFails | Rescue;

export interface GivesWay {
  readonly kind: "givesWay";
  readonly at: number;
  readonly part: PartId;
  /** The place on a webbing, as a fraction of the line's natural length [-]. */
  readonly place?: number;
  readonly during: Cause;
}

const KEY = /^gives@([a-zA-Z.\d]+?)(?::(\d*\.?\d+))?\/(.+)$/;

/** What a kind needs to be asked of a cause; the causes are few and closed. */
function inside<T>(cause: Cause, ask: <E extends EventBase>(kind: EventKind<E>, event: E) => T): T {
  switch (cause.kind) {
    case "leashFall":
      return ask(leashFall, cause);
    case "mainFails":
      return ask(mainFails, cause);
    case "legFails":
      return ask(legFails, cause);
    case "rescue":
      return ask(rescue, cause);
  }
}

export const givesWay: EventKind<GivesWay> = {
  kind: "givesWay",
  class: () => "afterFailure",
  key({ part, place, during }) {
    const where = place === undefined ? "" : `:${fraction(place)}`;
    return `gives@${part}${where}/${inside(during, (kind, event) => kind.key(event))}`;
  },
  parse(key) {
    const [, part = "", place, rest = ""] = KEY.exec(key) ?? [];
    const during = leashFall.parse(rest) ?? mainFails.parse(rest) ?? legFails.parse(rest) ?? rescue.parse(rest);
    if (!isPartId(part) || !during || (place !== undefined && !withinLine(Number(place)))) return undefined;
    return {
      kind: "givesWay",
      at: during.at,
      part,
      ...(place === undefined ? {} : { place: Number(place) }),
      during,
    };
  },
  title({ part, during }, rig) {
    const values = {
      part: { part },
      during: { phrase: inside(during, (kind, event) => kind.title(event, rig)) },
    };
    return phrase("event.givesWay", "{part} gives way: {during}", values);
  },
  missing({ part, during }, rig) {
    const other = inside(during, (kind, event) => kind.missing(event, rig));
    if (other) return other;
    return whenGone(rig, part) === undefined
      ? phrase("missing.part", "The rig has no {part}.", { part: { part } })
      : undefined;
  },
  before: ({ during }) => during,
  fallBefore: ({ during }) => inside(during, (kind, event) => kind.fallBefore(event)),
  problem(event, rig, known) {
    const { part, during } = event;
    const earlier = inside(during, (kind, one) => kind.problem(one, rig, known));
    return { ...earlier, ...weakenedAt(rig, part, event.place, known.before!, earlier) };
  },
  scatters: ({ during }) => inside(during, (kind, event) => kind.scatters(event)),
  // Which part gives way, and in which event, is what makes it: there are none beside it.
  space: () => undefined,
  takesAway: ({ part, during }) => [part, ...inside(during, (kind, event) => kind.takesAway(event))],
  shifted: (event, place, moment) => {
    const during = inside(event.during, (kind, one) => kind.shifted(one, place, moment)) as Cause;
    return { ...event, at: during.at, during };
  },
  // Which parts keep too little is found by the search, not known before it.
  seeds: () => [],
};

/** The ends of lines that go with a part of an anchor: what parts there is no other part's failing. */
export function endsLostWith(rig: Rig, part: PartId): readonly PartId[] {
  const loses = partRef(part)?.kind === "hardware" ? whenGone(rig, part)?.loses : undefined;
  if (!loses) return [];
  const main: PartId = `end${loses.end}`;
  const backup: PartId = `backup.end${loses.end}`;
  return loses.line === "both" ? [main, backup] : [loses.line === "main" ? main : backup];
}

/** Whether the rig goes on holding a walker in some way when the part has gone. */
export const leavesSomething = (rig: Rig, part: PartId): boolean => whenGone(rig, part)?.leaves !== "nothing";
