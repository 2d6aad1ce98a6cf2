/** What became of the walker in a run. */
import { GRAVITY, type Recording, SIGNAL_RATE } from "@secondline/engine";

/** Undecided: still on the way down when the run ended, so it must be run longer. */
export type Fate = "caught" | "lost" | "undecided";

/** A walker who turned at least this long before the end has turned [s]. */
const TURNED = 0.05;
/** With the leash slack for so long and faster than this at the end, nothing holds the walker [s], [m/s]. */
export const SLACK_TIME = 1;
const FREE_SPEED = 8;
/** Up and down by less than this for so long, a walker hangs still [m], [s]. */
const STILL = 0.05;
export const STILL_TIME = 1.5;
/** A leash that carries less than this share of the weight is slack [-]. */
const SLACK = 0.1;

/**
 * Lost: the leash or ring parted, the walker met the ground, or falls freely. Caught: came to a lowest point and rose
 * again. A bounce can leave the leash slack for more than a second, so its pull at the end says little.
 */
export function fate(recording: Recording): Fate {
  const { events, walker, duration, signals, walkerHeight, problem } = recording;
  const gone = events.some(
    ({ kind, part }) => kind === "ground" || (kind === "break" && (part === "leash" || part === "ring")),
  );
  if (gone) return "lost";
  if (walker.lowestTime < duration - TURNED || hangsStill(walkerHeight)) return "caught";
  return fallsFreely(signals.leash, walkerHeight, problem.walker.mass) ? "lost" : "undecided";
}

/** Whether the walker has hardly moved for a while, at the end of heights at `SIGNAL_RATE` [m]. */
export function hangsStill(heights: Float32Array): boolean {
  const from = heights.length - Math.round(STILL_TIME * SIGNAL_RATE);
  if (from < 0) return false;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = heights.length - 1; i >= from; i--) {
    least = Math.min(least, heights[i]!);
    most = Math.max(most, heights[i]!);
    if (most - least >= STILL) return false;
  }
  return true;
}

/**
 * Whether nothing has held the walker for a while, at the end of what is recorded: `leash` its force [N] and `heights` those of the
 * walker [m], both at `SIGNAL_RATE`.
 */
export function fallsFreely(leash: Float32Array, heights: Float32Array, mass: number): boolean {
  const count = heights.length;
  const from = Math.max(0, count - Math.round(SLACK_TIME * SIGNAL_RATE));
  for (let i = count - 1; i >= from; i--) if (leash[i]! > SLACK * mass * GRAVITY) return false;
  const before = Math.max(0, count - 1 - Math.round(TURNED * SIGNAL_RATE));
  const speed = ((heights[before]! - heights[count - 1]!) * SIGNAL_RATE) / Math.max(1, count - 1 - before);
  return speed > FREE_SPEED;
}
