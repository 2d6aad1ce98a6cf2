/** Moves of connections by hand, in metres along the sketch; and the steps in which a hand moves anything. */

import { centimetre } from "../metres.ts";

/** A connection this near to an anchor shares nothing [m]. */
export const NEAREST_CONNECTION = 0.5;

const MOVE_STEPS = [0.1, 0.5, 1, 2, 5, 10] as const;
/** A step is at least so wide in the drawing [px]. */
const LEAST_STEP_WIDTH = 4;

/** The round step in which something is dragged in a drawing of so many pixels to the metre [m]. */
export const handStep = (pixelsPerMetre: number): number =>
  MOVE_STEPS.find((step) => step * pixelsPerMetre >= LEAST_STEP_WIDTH) ?? MOVE_STEPS.at(-1)!;

/** How far a connection may go: not to its neighbours, nor nearer to an anchor than one is tied [m]. */
export function reachOfConnection(
  metres: readonly number[],
  index: number,
  span: number,
): readonly [low: number, high: number] {
  const here = metres[index]!;
  const others = metres.filter((_, i) => i !== index);
  const low = Math.max(NEAREST_CONNECTION, ...others.filter((at) => at <= here).map((at) => at + NEAREST_CONNECTION));
  const high = Math.min(
    span - NEAREST_CONNECTION,
    ...others.filter((at) => at > here).map((at) => at - NEAREST_CONNECTION),
  );
  // Where it stands too near to something already, it stays.
  return low > high ? [here, here] : [Math.min(low, here), Math.max(high, here)];
}

/** The places with one where a hand has it, in steps of `step`; it stops at the ends of its reach [m]. */
export function withConnection(
  metres: readonly number[],
  index: number,
  to: number,
  { span, step }: { readonly span: number; readonly step: number },
): readonly number[] {
  const [low, high] = reachOfConnection(metres, index, span);
  const at = Math.min(Math.max(Math.round(to / step) * step, low), high);
  return metres.with(index, centimetre(at));
}

/** A place as the rig's file has it: a share of the line's length, 0 at anchor A. */
export const shareAt = (metres: number, span: number): number => Number((metres / span).toFixed(4));
