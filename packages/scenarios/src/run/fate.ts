/** What became of the walker in a run. */
import { GRAVITY, type Problem, type Recording, SIGNAL_RATE } from "@secondline/engine";

/** Undecided: still on the way down when the run ended, so it must be run longer. */
export type Fate = "caught" | "lost" | "undecided";

/** A lowest point that is nearer to the end may not be the lowest [s]. */
const TURNED_BEFORE_END = 0.05;
/** If nothing has held the walker for so long, and the walker is faster than this at the end, nothing will hold the walker [s], [m/s]. */
const SLACK_TIME = 1;
const FREE_SPEED = 8;
/** Up and down by less than this for so long, a walker hangs still [m], [s]. */
const STILL_RANGE = 0.05;
export const STILL_TIME = 1.5;
/** What holds less than this share of the weight holds nothing [-]. */
const SLACK_SHARE = 0.1;
/** A speed is told over so long [s]. */
const SPEED_TIME = 0.05;

/**
 * Lost: the leash or ring parted, the walker met the ground, or falls freely. Caught: came to a lowest point and rose
 * again. A bounce can leave the leash slack for more than a second, so its pull at the end says little.
 */
export function fate(recording: Recording): Fate {
  const { events, walker, duration, walkerHeight, problem } = recording;
  const gone = events.some(
    ({ kind, part }) => kind === "ground" || (kind === "break" && (part === "leash" || part === "ring")),
  );
  if (gone) return "lost";
  if (walker.lowestTime < duration - TURNED_BEFORE_END || hangsStill(walkerHeight)) return "caught";
  return fallsFreely(walkerHeight, lowestReach(problem)) ? "lost" : "undecided";
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
    if (most - least >= STILL_RANGE) return false;
  }
  return true;
}

/**
 * Height below which nothing of lines and leash reaches, end to end [m above anchor A]. Only stretched they would, and then they hold: so
 * who falls freely there is held by nothing. Higher up it may be the flight between two bounces, seconds long, with a catch to come.
 */
export function lowestReach({ span, rise, backup, leash, walker }: Problem): number {
  const chord = Math.sqrt(span * span + rise * rise);
  const lines = chord + (backup ? chord * (1 + backup.slack) : 0);
  return Math.min(0, rise) - lines - leash.length - Math.abs(walker.tieIn);
}

/**
 * Whether nothing holds the walker at the end of heights at `SIGNAL_RATE` [m]: they are below `reach`, and the speed has grown for a while
 * by nearly as much as that of a free body. The leash does not tell: a ring that whirls about a falling walker keeps it taut.
 */
export function fallsFreely(heights: Float32Array, reach: number): boolean {
  const last = heights.length - 1;
  const first = last - Math.round(SLACK_TIME * SIGNAL_RATE);
  const step = Math.round(SPEED_TIME * SIGNAL_RATE);
  if (first < step || heights[last]! > reach) return false;
  const speedAt = (sample: number) => (heights[sample - step]! - heights[sample]!) / SPEED_TIME;
  const [before, now] = [speedAt(first), speedAt(last)];
  return now > FREE_SPEED && now - before > (1 - SLACK_SHARE) * GRAVITY * SLACK_TIME;
}
