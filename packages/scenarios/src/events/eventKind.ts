/** What a kind of what-if must tell of itself. One file per kind, one line in the registry; nothing else knows the kinds. */
import type { PartId, Rig } from "@secondline/rig";
import type { Phrase } from "../facts/phrase.ts";
import type { RunFacts } from "../facts/runFacts.ts";
import type { DemandStrengths } from "../strengths/demandStrengths.ts";

/**
 * Leash falls are expected of a line in use; after a failure (of the main line, of a leg, of a part that keeps too little) less is
 * required. The two classes answer to persistent and accidental design situations of EN 1990.
 */
export const EVENT_CLASSES = ["expected", "afterFailure"] as const;
export type EventClass = (typeof EVENT_CLASSES)[number];

/** What every what-if has. */
export interface EventBase {
  readonly kind: string;
  /** Where the walker is, as a fraction of the main line's natural length, 0 at anchor A [-]. */
  readonly at: number;
}

/** What a kind adds to the engine's problem. */
export interface ProblemPart {
  readonly standing: boolean;
  /** Time over which the feet let go, standing [s]. */
  readonly letGo?: number;
  readonly cut?: { readonly at: number; readonly time: number };
  readonly legFailure?: { readonly anchor: "A" | "B"; readonly leg: number; readonly time: number };
  /** Parts that this event makes give way, and at what. */
  readonly strengths?: Partial<DemandStrengths>;
  /** When what fails does fail [s]; the run is made longer by it. */
  readonly failsAt?: number;
  /** Mass of a second person who hangs beside the walker, on a leash and a ring of an own [kg]. */
  readonly beside?: number;
}

/** What is known of an event before it is run. */
export interface KnownBefore {
  /** The run of the event that comes before. */
  readonly before?: RunFacts;
  /** When the leash pulls hardest in the fall in whose catch something fails [s]. */
  readonly catchTime?: number;
}

/** Events that differ by places and moments alone. */
export interface Space<E> {
  /** Equal of events that may tell of each other. */
  readonly family: string;
  /** Places as fractions of the line [-] and moments in seconds over `MOMENT_REACH`, so that a step of 1 is a long way in each. */
  readonly coordinates: readonly number[];
  /** Events of the family all over its places. */
  readonly others: (facts: SeedFacts) => readonly E[];
}

/** What happens this much earlier or later in a catch has little to do with what happens now [s]. */
export const MOMENT_REACH = 0.5;

/** What the choice of a set may know of a rig. */
export interface SeedFacts {
  readonly rig: Rig;
  /** Weakest places of the main line's webbing, weakest first, fractions of its natural length [-]. */
  readonly weakPlaces: readonly number[];
  /** Few that usually govern, for a first look; or all. */
  readonly size: "quick" | "full";
}

export interface EventKind<E extends EventBase> {
  readonly kind: E["kind"];
  readonly class: (event: E) => EventClass;
  /** Short, stable key without blanks: `fall@0.5`. Equal events have equal keys. */
  readonly key: (event: E) => string;
  /** Reads a key; undefined when it is none of this kind or a place is outside of the line. */
  readonly parse: (key: string) => E | undefined;
  readonly title: (event: E, rig: Rig) => Phrase;
  /** Why this rig has no such event; undefined when it has. */
  readonly missing: (event: E, rig: Rig) => Phrase | undefined;
  /** Another event that must be run first: its run says at what something fails. */
  readonly before: (event: E) => EventBase | undefined;
  /** The fall in whose catch something fails; undefined where nothing does. */
  readonly fallBefore: (event: E) => EventBase | undefined;
  readonly problem: (event: E, rig: Rig, known: KnownBefore) => ProblemPart;
  /** Which of the inputs that not every event has scatter in this one. */
  readonly scatters: (event: E) => readonly ("moment" | "letGo")[];
  /** Where the event lies among its like, so that near ones may tell of each other; undefined where it stands alone. */
  readonly space: (event: E) => Space<E> | undefined;
  /** The parts that the event itself takes away: they are not judged in it. */
  readonly takesAway: (event: E) => readonly PartId[];
  /** The same event a little elsewhere: its places moved by a share of the line, and its moments by a time [-], [s]. */
  readonly shifted: (event: E, place: number, moment: number) => E;
  readonly seeds: (facts: SeedFacts) => readonly E[];
}

/** Fractions are written with up to four digits: 0.1 mm on a 1 m line, 10 cm on a 1 km line. */
export const fraction = (at: number): string => String(Number(at.toFixed(4)));

/** Inside of the line: a walker stands somewhere between the anchors. */
export const between = (at: number): boolean => at > 0 && at < 1;
export const withinLine = (at: number): boolean => at >= 0 && at <= 1;

/** Moves a place along the line, not past the half of its way to the nearer end. */
export function movedPlace(at: number, by: number): number {
  return Math.min((1 + at) / 2, Math.max(at / 2, at + by));
}
