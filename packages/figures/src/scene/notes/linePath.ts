/** Places of a line at which its name may stand. */
import type { LiveFrame } from "../liveFrame.ts";
import { type Gap, groundAt } from "../shape/gap.ts";
import { set3 } from "../shape/vector.ts";

export interface LinePath {
  /** From A to B, xyz each [m]. */
  readonly places: Float64Array;
  count: number;
  /** The place that bears the name best. */
  best: number;
}

/** Best place of a line's name, as a fraction of the line: away from the middle, where the walker is [-]. */
const NAME_PLACE = { main: 0.72, backup: 0.8 } as const;
/** Places along a line at which its name may stand [-]. */
const NAME_PLACES = 60;

export const newPath = (): LinePath => ({ places: new Float64Array(3 * NAME_PLACES), count: 0, best: 0 });

/** Computed lines ignore the ground. A name on a piece inside the rock would point at nothing visible. */
export function fillPath(path: LinePath, live: LiveFrame, gap: Gap, line: "main" | "backup"): void {
  const [first, count] = line === "main" ? [0, live.mainNodes] : [live.mainNodes, live.backupNodes];
  path.count = 0;
  path.best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < NAME_PLACES && count > 1; k++) {
    const share = k / (NAME_PLACES - 1);
    const at = 3 * (first + Math.round(share * (count - 1)));
    const [x, y, z] = [live.positions[at]!, live.positions[at + 1]!, live.positions[at + 2]!];
    if (z < groundAt(gap, x)) continue;
    set3(path.places, 3 * path.count, x, y, z);
    const off = Math.abs(share - NAME_PLACE[line]);
    if (off < least) [least, path.best] = [off, path.count];
    path.count += 1;
  }
}
