import type { Assessed, Outcome } from "@secondline/scenarios";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { sayChances } from "@secondline/words/page/chances";
import {
  type ChancesDesk,
  type ChancesState,
  chancesInHand,
  type ChancesInHand as InHand,
} from "@secondline/workbench";
import { useStore } from "zustand";
import { chancesDesk } from "../desks/chancesHere.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { words } from "../words.ts";

/** The chances of the current state, with what can be done about them. */
export interface ChancesView extends Omit<InHand, "open">, Pick<ChancesState, "work" | "runs"> {
  readonly desk: ChancesDesk;
  readonly assessed: Assessed;
  /** What-ifs to choose from. */
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly workOut: () => void;
}

export function useChances(outcome: Outcome): ChancesView {
  const desk = chancesDesk();
  const state = useStore(desk.store);
  const assessment = useSandbox((page) => page.assessment);
  const { assessed, key } = assessment;
  const { rig } = assessed;
  const { announce } = useActions();
  const { open, ...hand } = chancesInHand(state, assessment, outcome);
  const workOut = async () => {
    announce(sayChances("useChances.workingOutChances"));
    const chances = await desk.workOut(assessed, key, hand.whatIf);
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
    ...hand,
    desk,
    assessed,
    work: state.work,
    runs: state.runs,
    options: open.map(({ key: value, whatIf }) => ({ value, label: words.eventTitle(rig, whatIf) })),
    workOut: () => void workOut(),
  };
}
