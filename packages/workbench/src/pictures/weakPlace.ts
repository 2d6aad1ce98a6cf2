/** The place where the run in sight comes nearest to a part's required margin: named in the scene and in its pictures. */

import type { WeakPlace } from "@secondline/figures/scene";
import { backupNaturalLength, mainNaturalLength, type Rig } from "@secondline/rig";
import { type Outcome, weakestIn } from "@secondline/scenarios";
import { quantity, englishWords as words } from "@secondline/words";
import { sayDraws } from "@secondline/words/draws";
import type { ShownRun } from "../inHand/state.ts";

/** `outcome`: of the state with that `key`; undefined where no part has its least margin in the run, or the run is of another state. */
export function weakPlace(
  outcome: Outcome | undefined,
  shown: ShownRun | undefined,
  key: string,
): WeakPlace | undefined {
  if (!outcome || shown?.key !== key) return undefined;
  const weak = weakestIn(outcome, shown.outcome.key);
  if (!weak) return undefined;
  const { rig } = shown.assessed;
  const length = lengthOf(rig, weak.part);
  return {
    part: weak.part,
    text: sayDraws("weakest.here", { part: words.partName(rig, weak.part), margin: quantity.margin(weak.margin) }),
    ...(weak.at === undefined || length === undefined ? {} : { share: weak.at / length }),
  };
}

/** [m] */
function lengthOf(rig: Rig, part: string): number | undefined {
  if (part === "main") return mainNaturalLength(rig);
  return part === "backup" ? backupNaturalLength(rig) : undefined;
}
