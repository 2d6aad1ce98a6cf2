import {
  type Assessed,
  type Chances,
  type NoChances,
  noChances,
  type Outcome,
  type WhatIf,
} from "@secondline/scenarios";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { sayChances } from "@secondline/words/page/chances";
import { type ChancesDesk, type ChancesState, chanceChoices, readSpreads } from "@secondline/workbench";
import { useStore } from "zustand";
import { chancesDesk } from "../desks/chancesHere.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";

/** The chances of the state in hand: what can be asked, and what is known. */
export interface ChancesInHand {
  readonly desk: ChancesDesk;
  readonly assessed: Assessed;
  readonly work: ChancesState["work"];
  /** What-ifs to choose from. */
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** Key of the chosen one. */
  readonly chosen: string;
  readonly whatIf: WhatIf;
  /** Why nothing can be worked out of any what-if. */
  readonly nothing: NoChances | undefined;
  readonly runs: number;
  /** A spread cannot be read. */
  readonly faulty: boolean;
  /** With the state that they are of. */
  readonly found: { readonly chances: Chances; readonly assessed: Assessed } | undefined;
  /** State or spreads are others by now. */
  readonly stale: boolean;
  readonly workOut: () => void;
}

export function useChances(outcome: Outcome): ChancesInHand {
  const desk = chancesDesk();
  const { work, spreads, runs, whatIf: asked, ...kept } = useStore(desk.store);
  const { assessed, key } = useSandbox((state) => state.assessment);
  const { rig } = assessed;
  // Those of another rig say nothing of this one, not even of how it was before.
  const found = kept.found?.chances.rigName === rig.name ? kept.found : undefined;
  const { announce } = useActions();
  const { open, chosen } = chanceChoices(assessed, outcome, asked);
  const workOut = async () => {
    announce(sayChances("useChances.workingOutChances"));
    const chances = await desk.workOut(assessed, key, chosen.whatIf);
    if (chances) {
      announce(
        sayChances("useChances.chancesWorkedOut", {
          eventTitle: words.eventTitle(rig, chances.whatIf),
          chances: chanceWords.chances(rig, chances),
        }),
      );
    } else if (desk.store.getState().work.kind === "stopped") announce(sayChances("useChances.stopped"));
  };
  return {
    desk,
    assessed,
    work,
    options: open.map(({ key: value, whatIf }) => ({ value, label: words.eventTitle(rig, whatIf) })),
    chosen: chosen.key,
    whatIf: chosen.whatIf,
    nothing: open.length === 0 ? noChances(assessed, chosen.whatIf) : undefined,
    runs,
    faulty: !readSpreads(spreads).ok,
    found,
    stale: found !== undefined && (found.key !== key || found.spreads !== spreads),
    workOut: () => void workOut(),
  };
}
