/** Events by chance: all over the line, in every pose, at any moment of a catch. */
import type { Rig } from "@secondline/rig";
import { missingIn, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { seededRandom } from "@secondline/statistics";

/** Nobody falls nearer to an anchor: rock and rigging are in the way [m]. */
const NEAR_END = 3;
/** A failure in a catch comes so much before or after its peak at most [s]. */
const MOMENT = 0.15;
/** Shares of leash falls and of failures of the main line; the rest are failures of a leg [-]. */
const FALLS = 0.2;
const MAIN_FAILS = 0.65;
/** Of the failures of the main line so many are at either end: clamps and stitching sit there [-]. */
const AT_AN_END = 0.25;

/** So many events, all different and none that the rig does not have; the same for the same seed. */
export function randomEvents(rig: Rig, count: number, seed: number): readonly WhatIf[] {
  const random = seededRandom(seed);
  const near = Math.min(0.2, NEAR_END / rig.span);
  const digits = (value: number) => Number(value.toFixed(4));
  const place = () => digits(near + (1 - 2 * near) * random.uniform());
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random.uniform() * list.length) % list.length]!;
  const late = () => digits(MOMENT * (2 * random.uniform() - 1));
  const cutAt = () => {
    const where = random.uniform();
    return where < AT_AN_END ? 0 : where < 2 * AT_AN_END ? 1 : digits(random.uniform());
  };
  const event = (): WhatIf => {
    const kind = random.uniform();
    if (kind < FALLS) return { kind: "leashFall", at: place() };
    if (kind < FALLS + MAIN_FAILS) {
      const walker = pick(["hanging", "standing", "caught"] as const);
      const moment = walker === "caught" ? { late: late() } : {};
      return { kind: "mainFails", at: place(), cutAt: cutAt(), walker, ...moment };
    }
    const anchor = pick(["A", "B"] as const);
    const { length } = (anchor === "A" ? rig.anchorA : rig.anchorB).points;
    return { kind: "legFails", anchor, leg: pick([0, length - 1]), walker: "caught", at: place(), late: late() };
  };
  const found = new Map<string, WhatIf>();
  while (found.size < count) {
    const one = event();
    if (!missingIn(one, rig)) found.set(whatIfKey(one), one);
  }
  return [...found.values()];
}
