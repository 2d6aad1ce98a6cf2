/** What became of the walker in a run. */
import type { Recording } from "@secondline/engine";

/** Undecided: still on the way down when the run ended, so it must be run longer. */
export type Fate = "caught" | "lost" | "undecided";

const GRAVITY = 9.80665;
/** A walker who turned at least this long before the end has turned [s]. */
const TURNED = 0.05;
/** With the leash slack for so long and faster than this at the end, nothing holds the walker [s], [m/s]. */
const SLACK_TIME = 1;
const FREE_SPEED = 8;
/** A leash that carries less than this share of the weight is slack [-]. */
const SLACK = 0.1;

/**
 * Lost: the leash or ring parted, the walker met the ground, or falls freely. Caught: came to a lowest point and rose
 * again; or hangs in a rig of which nothing fails, perhaps sliding along the line. A bounce can leave the leash slack for more than a second, so its pull at the end says little.
 */
export function fate(recording: Recording): Fate {
  const { events, walker, duration } = recording;
  const gone = events.some(
    ({ kind, part }) => kind === "ground" || (kind === "break" && (part === "leash" || part === "ring")),
  );
  if (gone) return "lost";
  if (justHangs(recording)) return "caught";
  if (walker.lowestTime < duration - TURNED) return "caught";
  return fallsFreely(recording) ? "lost" : "undecided";
}

function justHangs({ problem, events }: Recording): boolean {
  const { start, cut, legFailure } = problem;
  return (
    start === "hanging" && !cut && !legFailure && !events.some(({ kind, part }) => kind === "break" && part !== "tape")
  );
}

function fallsFreely({ signals, rate, walkerHeight, problem }: Recording): boolean {
  const count = walkerHeight.length;
  const from = Math.max(0, count - Math.round(SLACK_TIME * rate));
  for (let i = from; i < count; i++) {
    if (signals.leash[i]! > SLACK * problem.walker.mass * GRAVITY) return false;
  }
  const before = Math.max(0, count - 1 - Math.round(TURNED * rate));
  const speed = ((walkerHeight[before]! - walkerHeight[count - 1]!) * rate) / Math.max(1, count - 1 - before);
  return speed > FREE_SPEED;
}
