/** Sweeps are made in the side thread. */
import { type FoundSweep, HowFarDesk, type Sandbox } from "@secondline/workbench";
import { sideRunner } from "../worker/runner.ts";

const desks = new WeakMap<Sandbox["store"], HowFarDesk>();

/** Sweeps that were made of the very state that a sandbox has now. */
export function sweepsOf(inHand: Pick<Sandbox, "store">): readonly Pick<FoundSweep, "swept" | "named">[] {
  return desks.get(inHand.store)?.found(inHand.store.getState()) ?? [];
}

/** The one of a page, made when it is first asked for. */
export function howFarDesk(inHand: Sandbox): HowFarDesk {
  const known = desks.get(inHand.store);
  if (known) return known;
  const desk = new HowFarDesk(inHand, sideRunner(), () => crypto.randomUUID());
  desks.set(inHand.store, desk);
  return desk;
}
