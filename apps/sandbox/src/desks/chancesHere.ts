/** Chances are worked out in the side thread. */
import type { Chances } from "@secondline/scenarios";
import { type ChancesDesk, createChancesDesk } from "@secondline/workbench";
import { sideRunner } from "../worker/runner.ts";

let desk: ChancesDesk | undefined;

/** The one of this page, made when it is first asked for. */
export function chancesDesk(): ChancesDesk {
  desk ??= createChancesDesk(sideRunner(), () => crypto.randomUUID());
  return desk;
}

/** What was found for this very state; undefined when nothing was, or for another one. `key`: `assessment.key`. */
export function chancesOf(key: string): Chances | undefined {
  const found = desk?.store.getState().found;
  return found?.key === key ? found.chances : undefined;
}
