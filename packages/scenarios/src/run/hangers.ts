/**
 * Two persons who hang side by side, each on a leash and a ring of an own, as the one that the engine knows. Equal persons on equal
 * leashes move as one: the masses, the tension laws of the leashes and the rings add up, the line carries the sum, and each leash
 * its half. Of unequal ones each is taken to carry by its mass, which is exact at rest.
 */
import type { Material, Recording, RunEvent } from "@secondline/engine";
import type { Rig } from "@secondline/rig";

export interface Hangers {
  /** Mass of all together [kg]. */
  readonly mass: number;
  /** Persons, and leashes and rings [-]. */
  readonly count: number;
  /** The largest share of the pull that one of the leashes carries [-]. */
  readonly share: number;
}

/** `beside`: mass of the second person; none where the walker is alone [kg]. */
export function hangersOf({ walker }: Rig, beside: number | undefined): Hangers {
  if (beside === undefined) return { mass: walker.mass, count: 1, share: 1 };
  const mass = walker.mass + beside;
  return { mass, count: 2, share: Math.max(walker.mass, beside) / mass };
}

/** `count` lines of a material side by side. */
export function manyfold({ mass, curve, branches }: Material, count: number): Material {
  if (count === 1) return { mass, curve, branches };
  return {
    mass: count * mass,
    curve: curve.map(([strain, tension]) => [strain, count * tension] as const),
    branches: branches.map(([force, time]) => [count * force, time] as const),
  };
}

/** The recording with the leash of one person in place of all together: of the heaviest, whose `share` is the largest [-]. */
export function ofOneHanger(recording: Recording, share: number): Recording {
  if (share === 1) return recording;
  const { signals, peaks, events, firstBreak } = recording;
  const leash = peaks.leash;
  return {
    ...recording,
    signals: { ...signals, leash: signals.leash.map((force) => share * force) },
    peaks: { ...peaks, leash: { ...leash, raw: share * leash.raw, cfc60: share * leash.cfc60 } },
    events: events.map((event) => broughtDown(event, share)),
    ...(firstBreak ? { firstBreak: broughtDown(firstBreak, share) } : {}),
  };
}

function broughtDown(event: RunEvent, share: number): RunEvent {
  const { kind, part, value } = event;
  return kind === "break" && (part === "leash" || part === "ring") && value !== undefined
    ? { ...event, value: share * value }
    : event;
}
