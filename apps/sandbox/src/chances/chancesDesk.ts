/** Works out the chances of one what-if in the side thread, and keeps them while the page shows something else. */
import type { ChancesService, Progress, RunnerService } from "@secondline/runner";
import type { Assessed, Chances, InputId, WhatIf } from "@secondline/scenarios";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Work } from "../state/types.ts";
import { sideRunner } from "../worker/sideRunner.ts";
import { readSpreads } from "./spreadText.ts";

/** Spreads as typed, in percent; an input that is not there has the assumed one. */
export type TypedSpreads = Readonly<Partial<Record<InputId, string>>>;

/** Draws: a first look, the usual, and for narrow intervals. */
export const RUNS = [16, 64, 256] as const;
const USUAL_RUNS = RUNS[1];

export interface ChancesState {
  readonly work: Work;
  readonly found: /** `key`: `assessment.key` of the state. */
    | { readonly chances: Chances; readonly key: string; readonly assessed: Assessed; readonly spreads: TypedSpreads }
    | undefined;
  /** Key of the what-if to work out; undefined: the one that governs. */
  readonly whatIf: string | undefined;
  readonly spreads: TypedSpreads;
  /** How many draws to make. */
  readonly runs: number;
}

export interface ChancesDesk {
  readonly store: StoreApi<ChancesState>;
  readonly choose: (whatIf: string) => void;
  readonly chooseRuns: (runs: number) => void;
  readonly type: (id: InputId, text: string) => void;
  /** Gives what was found; undefined when it was stopped, replaced, or could not be computed. */
  readonly workOut: (assessed: Assessed, key: string, whatIf: WhatIf) => Promise<Chances | undefined>;
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
  async function workOut(assessed: Assessed, key: string, whatIf: WhatIf): Promise<Chances | undefined> {
    const { spreads, runs } = store.getState();
    const read = readSpreads(spreads);
    if (!read.ok) return undefined;
    stop();
    const id = newId();
    const busy = (progress: Progress): Work => ({ kind: "busy", id, progress });
    store.setState({ work: busy({ done: 0, doing: whatIf }) });
    const asked = { id, assessed, whatIf, spreads: read.spreads, runs };
    const answer = await runner.chances(asked, (progress) => {
      if (isCurrent(id)) store.setState({ work: busy(progress) });
    });
    if (!isCurrent(id)) return undefined;
    if (!answer.ok) {
      const failed: Work = { kind: "failed", message: answer.message };
      store.setState({ work: answer.reason === "cancelled" ? { kind: "stopped" } : failed });
      return undefined;
    }
    store.setState({ work: { kind: "idle" }, found: { chances: answer.value, key, assessed, spreads } });
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

/** What was found for this very state; undefined when nothing was, or for another one. `key`: `assessment.key`. */
export function chancesOf(key: string): Chances | undefined {
  const found = desk?.store.getState().found;
  return found?.key === key ? found.chances : undefined;
}
