/** Works out the chances of one what-if in the side thread, and keeps them while the page shows something else. */
import type { Rig } from "@secondline/rig";
import type { ChancesService, RunnerService } from "@secondline/runner";
import type { Chances, InputId, WhatIf } from "@secondline/scenarios";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Work } from "../state/types.ts";
import { sideRunner } from "../worker/sideRunner.ts";
import { readSpreads } from "./spreadText.ts";

/** Spreads as typed, in percent; an input that is not there has the assumed one. */
export type TypedSpreads = Readonly<Partial<Record<InputId, string>>>;

/** A first look, the usual, and where the surfaces miss too much with those. */
export const RUNS = [24, 96, 240] as const;
const USUAL_RUNS = RUNS[1];

export interface ChancesState {
  readonly work: Work;
  readonly found:
    | { readonly chances: Chances; readonly rigVersion: number; readonly spreads: TypedSpreads }
    | undefined;
  /** Key of the what-if to work out; undefined: the one that governs. */
  readonly whatIf: string | undefined;
  readonly spreads: TypedSpreads;
  /** How many runs to make. */
  readonly runs: number;
}

export interface ChancesDesk {
  readonly store: StoreApi<ChancesState>;
  readonly choose: (whatIf: string) => void;
  readonly chooseRuns: (runs: number) => void;
  readonly type: (id: InputId, text: string) => void;
  /** Gives what was found; undefined when it was stopped, replaced, or could not be computed. */
  readonly workOut: (rig: Rig, rigVersion: number, whatIf: WhatIf) => Promise<Chances | undefined>;
  readonly stop: () => void;
}

export function createChancesDesk(
  runner: Pick<RunnerService, "cancel"> & ChancesService,
  newId: () => string,
): ChancesDesk {
  const store = createStore<ChancesState>(() => ({
    work: { kind: "idle" },
    found: undefined,
    whatIf: undefined,
    spreads: {},
    runs: USUAL_RUNS,
  }));
  const isCurrent = (id: string) => {
    const { work } = store.getState();
    return work.kind === "busy" && work.id === id;
  };
  function stop(): void {
    const { work } = store.getState();
    if (work.kind !== "busy") return;
    store.setState({ work: { kind: "stopped" } });
    void runner.cancel(work.id);
  }
  async function workOut(rig: Rig, rigVersion: number, whatIf: WhatIf): Promise<Chances | undefined> {
    const { spreads, runs } = store.getState();
    const read = readSpreads(spreads);
    if (!read.ok) return undefined;
    stop();
    const id = newId();
    const busy = (done: number, doing: string): Work => ({ kind: "busy", id, progress: { done, doing } });
    store.setState({ work: busy(0, "Starting") });
    const asked = { id, rig, whatIf, spreads: read.spreads, runs };
    const answer = await runner.chances(asked, ({ done, doing }) => {
      if (isCurrent(id)) store.setState({ work: busy(done, doing) });
    });
    if (!isCurrent(id)) return undefined;
    if (!answer.ok) {
      const failed: Work = { kind: "failed", message: answer.message };
      store.setState({ work: answer.reason === "cancelled" ? { kind: "stopped" } : failed });
      return undefined;
    }
    store.setState({ work: { kind: "idle" }, found: { chances: answer.value, rigVersion, spreads } });
    return answer.value;
  }
  return {
    store,
    choose: (whatIf) => store.setState({ whatIf }),
    chooseRuns: (runs) => store.setState({ runs }),
    type: (id, text) => store.setState(({ spreads }) => ({ spreads: { ...spreads, [id]: text } })),
    workOut,
    stop,
  };
}

let desk: ChancesDesk | undefined;

/** The one of this page, made when it is first asked for. */
export function chancesDesk(): ChancesDesk {
  desk ??= createChancesDesk(sideRunner(), () => crypto.randomUUID());
  return desk;
}

/** What was found for a rig as it stands; undefined when nothing was, or for another one. */
export function chancesOf(rigVersion: number): Chances | undefined {
  const found = desk?.store.getState().found;
  return found?.rigVersion === rigVersion ? found.chances : undefined;
}
