/** The kinds of what-ifs. A new kind is a file beside this one and a line here. */
import type { PartId, Rig } from "@secondline/rig";
import type { Phrase } from "../facts/phrase.ts";
import type { EventBase, EventClass, EventKind, KnownBefore, ProblemPart, SeedFacts, Space } from "./eventKind.ts";
import { type GivesWay, givesWay } from "./givesWay.ts";
import { type LeashFall, leashFall } from "./leashFall.ts";
import { type LegFails, legFails } from "./legFails.ts";
import { type MainFails, mainFails } from "./mainFails.ts";
import { type Rescue, rescue } from "./rescue.ts";

/** One event to simulate. */
export type WhatIf = LeashFall | MainFails | LegFails | Rescue | GivesWay;

// Each kind is handed its own events only: the kind is looked up by the event's.
const KINDS = [leashFall, mainFails, legFails, rescue, givesWay] as unknown as EventKind<EventBase>[];

/** Adds a kind from outside, such as a test's; returns what takes it out again. */
export function addEventKind<E extends EventBase>(kind: EventKind<E>): () => void {
  const added = kind as unknown as EventKind<EventBase>;
  if (KINDS.some((one) => one.kind === added.kind)) throw new Error(`There is an event kind "${added.kind}" already.`);
  KINDS.push(added);
  return () => {
    KINDS.splice(KINDS.indexOf(added), 1);
  };
}

function kindOf(event: EventBase): EventKind<EventBase> {
  const kind = KINDS.find((one) => one.kind === event.kind);
  if (!kind) throw new Error(`There is no event kind "${event.kind}".`);
  return kind;
}

export const whatIfKey = (event: EventBase): string => kindOf(event).key(event);
export const classOf = (event: EventBase): EventClass => kindOf(event).class(event);
export const titleOf = (event: EventBase, rig: Rig): Phrase => kindOf(event).title(event, rig);
export const missingIn = (event: EventBase, rig: Rig): Phrase | undefined => kindOf(event).missing(event, rig);
export const eventBefore = (event: EventBase): WhatIf | undefined => kindOf(event).before(event) as WhatIf | undefined;
export const fallBefore = (event: EventBase): WhatIf | undefined =>
  kindOf(event).fallBefore(event) as WhatIf | undefined;
export const takenAway = (event: EventBase): readonly PartId[] => kindOf(event).takesAway(event);
export const problemPart = (event: EventBase, rig: Rig, known: KnownBefore): ProblemPart =>
  kindOf(event).problem(event, rig, known);
export const scattersIn = (event: EventBase): readonly ("moment" | "letGo")[] => kindOf(event).scatters(event);
export function spaceOf(event: EventBase): Space<WhatIf> | undefined {
  const space = kindOf(event).space(event) as Space<WhatIf> | undefined;
  return space && { ...space, others: (facts) => space.others(facts).map(asItsKeySays) };
}
export const shifted = (event: WhatIf, place: number, moment: number): WhatIf =>
  kindOf(event).shifted(event, place, moment) as WhatIf;

/**
 * The event as its key tells it. Keys round places and moments, and a catch is chaotic: what the search runs and what a link or
 * `--what-if` runs must be the same event, not nearly the same. An event whose key cannot be read stays as it is: it is still run.
 */
export function asItsKeySays<E extends EventBase>(event: E): E {
  const kind = kindOf(event);
  return (kind.parse(kind.key(event)) as E | undefined) ?? event;
}

/** Reads a key; undefined when it is none of any kind. */
export function parseWhatIf(text: string): WhatIf | undefined {
  for (const kind of KINDS) {
    const found = kind.parse(text);
    if (found) return found as WhatIf;
  }
  return undefined;
}

/** The what-ifs that a search starts from: the same for the same rig, without repetition, in the order in which they are run. */
export function whatIfSet(facts: SeedFacts): readonly WhatIf[] {
  const weakPlaces = facts.weakPlaces.filter((at) => at > 0 && at < 1);
  const seeds = KINDS.flatMap((kind) => kind.seeds({ ...facts, weakPlaces })) as unknown as readonly WhatIf[];
  return [...new Map(seeds.map((event) => [whatIfKey(event), asItsKeySays(event)])).values()];
}
