import type { Rig } from "@secondline/rig";
import { type Chances, governingWhatIf, noChances, type Outcome, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { useStore } from "zustand";
import type { Work } from "../state/types.ts";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { type ChancesDesk, chancesDesk } from "./chancesDesk.ts";
import { readSpreads } from "./spreadText.ts";

/** The chances of the rig in hand: what can be asked, and what is known. */
export interface ChancesInHand {
  readonly desk: ChancesDesk;
  readonly rig: Rig;
  readonly work: Work;
  /** What-ifs to choose from. */
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** Key of the chosen one. */
  readonly chosen: string;
  readonly whatIf: WhatIf;
  /** Why nothing can be worked out of any what-if. */
  readonly nothing: string | undefined;
  readonly runs: number;
  /** A spread cannot be read. */
  readonly faulty: boolean;
  readonly found: Chances | undefined;
  /** The rig or a spread is another one by now. */
  readonly stale: boolean;
  readonly workOut: () => void;
}

export function useChances(outcome: Outcome): ChancesInHand {
  const desk = chancesDesk();
  const { work, spreads, runs, whatIf: asked, ...kept } = useStore(desk.store);
  const rig = useSandbox((state) => state.document.rig);
  // Those of another rig say nothing of this one, not even of how it was before.
  const found = kept.found?.chances.rigName === rig.name ? kept.found : undefined;
  const rigVersion = useSandbox((state) => state.document.rigVersion);
  const { announce } = useActions();
  const all = outcome.whatIfs.map((one) => ({ value: whatIfKey(one.whatIf), label: one.title, whatIf: one.whatIf }));
  const open = all.filter((one) => noChances(rig, one.whatIf) === undefined);
  const keyed = (key: string | undefined) => open.find((one) => one.value === key);
  const chosen = keyed(asked) ?? keyed(whatIfKey(governingWhatIf(outcome))) ?? open[0] ?? all[0]!;
  const workOut = async () => {
    announce("Working out the chances.");
    const chances = await desk.workOut(rig, rigVersion, chosen.whatIf);
    if (chances) announce(`Chances worked out. ${chances.title}. ${chances.sentence}`);
    else if (desk.store.getState().work.kind === "stopped") announce("Working out the chances was stopped.");
  };
  return {
    desk,
    rig,
    work,
    options: open.map(({ value, label }) => ({ value, label })),
    chosen: chosen.value,
    whatIf: chosen.whatIf,
    nothing: open.length === 0 ? noChances(rig, chosen.whatIf) : undefined,
    runs,
    faulty: !readSpreads(spreads).ok,
    found: found?.chances,
    stale: found !== undefined && (found.rigVersion !== rigVersion || found.spreads !== spreads),
    workOut: () => void workOut(),
  };
}
