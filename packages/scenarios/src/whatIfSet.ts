/**
 * The what-ifs that a verdict rests on. The choice is the same for every rig, so that rigs can be compared:
 *
 * - leash falls near both ends, at the quarters and in the middle: near an end the line is stiff and the anchor close,
 *   in the middle the drop is deepest;
 * - the main line failing at either end (clamps and stitching sit there), in the middle, and at the weakest places of
 *   its webbing, with the walker hanging, standing or just being caught by the leash (the hardest moment for it to fail);
 * - with connections, the walker in the middle of the bay next to a failed end too: that bay has the longest way to fall;
 * - of an anchor with several rock points, either outermost leg failing as the leash catches a fall in the middle, which
 *   loads the point that is left as hard as any fall, and one of them close by, where the ground is near.
 */
import type { Rig } from "@secondline/rig";
import type { WhatIf } from "./outcome.ts";
import { whatIfKey } from "./whatIf.ts";

type LegFails = Extract<WhatIf, { kind: "legFails" }>;

/** A person cannot fall closer to the anchor than this: the rock and the rigging are in the way [m]. */
const NEAR_END = 3;
const QUARTERS = [0.25, 0.5, 0.75] as const;

export interface WhatIfSetOptions {
  /** Few that usually govern, for interactive use; default: all. */
  readonly size?: "quick" | "full";
  /** Weakest places of the main line, fractions of its natural length, weakest first [-]. */
  readonly weakPlaces?: readonly number[];
}

/** The what-ifs of a rig: deterministic, without repetition, in the order in which they are shown. */
export function whatIfSet(rig: Rig, options: WhatIfSetOptions = {}): readonly WhatIf[] {
  const weak = (options.weakPlaces ?? []).filter((at) => at > 0 && at < 1);
  const all = (options.size ?? "full") === "quick" ? quick(rig, weak) : full(rig, weak);
  return unique(all);
}

/** How far from an anchor the nearest fall is, as a fraction of the line [-]. */
export function nearEnd(rig: Rig): number {
  return Math.min(0.2, NEAR_END / rig.span);
}

const fall = (at: number): WhatIf => ({ kind: "leashFall", at });
const fails = (cutAt: number, walker: "hanging" | "standing" | "caught", at: number): WhatIf => ({
  kind: "mainFails",
  at,
  cutAt,
  walker,
});

function quick(rig: Rig, weak: readonly number[]): WhatIf[] {
  const near = nearEnd(rig);
  const list = [fall(0.5), fall(near), fails(0, "hanging", 0.5), fails(1, "hanging", 0.5), fails(0, "caught", 0.5)];
  if (rig.backup) list.push(fails(0, "standing", 0.5), fails(1, "standing", 0.5), fails(0.5, "caught", 0.5));
  const worst = weak[0];
  if (worst !== undefined) list.push(fails(worst, "hanging", 0.5));
  // Those left of an anchor's points carry what no other what-if gives them.
  list.push(...legs(rig).filter(({ at }) => at === 0.5));
  return list;
}

function full(rig: Rig, weak: readonly number[]): WhatIf[] {
  const near = nearEnd(rig);
  const places = [near, ...QUARTERS, 1 - near];
  const list = places.map(fall);
  if (!rig.backup) return [...list, fails(0, "hanging", 0.5), fails(1, "hanging", 0.5), ...legs(rig)];
  const bays = endBays(rig);
  for (const end of [0, 1]) {
    const bay = end === 0 ? bays.A : bays.B;
    for (const at of places) list.push(fails(end, "hanging", at));
    if (bay !== undefined) list.push(fails(end, "hanging", bay));
    for (const at of QUARTERS) list.push(fails(end, "standing", at));
    for (const at of QUARTERS) list.push(fails(end, "caught", at));
  }
  for (const at of QUARTERS) list.push(fails(0.5, "hanging", at));
  list.push(fails(0.5, "standing", 0.5), fails(0.5, "caught", 0.5));
  for (const cutAt of weak) {
    for (const at of [0.25, 0.5, 0.75]) list.push(fails(cutAt, "hanging", at));
    list.push(fails(cutAt, "caught", 0.5));
  }
  return [...list, ...legs(rig)];
}

/** Legs that fail: of either anchor the outermost two, for a middle one that goes leaves those with no more than their share. */
function legs(rig: Rig): LegFails[] {
  const near = nearEnd(rig);
  return (["A", "B"] as const).flatMap((anchor) => {
    const count = (anchor === "A" ? rig.anchorA : rig.anchorB).points.length;
    if (count < 2) return [];
    const leg = (which: number, at: number): LegFails => ({
      kind: "legFails",
      anchor,
      leg: which,
      walker: "caught",
      at,
    });
    return [leg(0, 0.5), leg(count - 1, 0.5), leg(0, anchor === "A" ? near : 1 - near)];
  });
}

/** Middles of the bays between each end and its nearest connection [-]. */
function endBays(rig: Rig): { readonly A?: number; readonly B?: number } {
  const at = (rig.backup?.connections ?? []).filter((part) => part.kind === "connection").map((part) => part.at);
  if (at.length === 0) return {};
  return { A: Math.min(...at) / 2, B: (1 + Math.max(...at)) / 2 };
}

function unique(list: readonly WhatIf[]): readonly WhatIf[] {
  const seen = new Set<string>();
  return list.filter((whatIf) => {
    const key = whatIfKey(whatIf);
    return seen.has(key) ? false : seen.add(key);
  });
}
