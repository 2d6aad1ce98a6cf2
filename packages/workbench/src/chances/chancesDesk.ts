/** Works out the chances of one what-if, and keeps them while something else is shown. */
import type { ChancesService, Progress, RunnerService } from "@secondline/runner";
import type { Assessed, Chances, InputId, WhatIf } from "@secondline/scenarios";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Job } from "../job/job.ts";
import { JobSlot } from "../job/jobSlot.ts";
import { readSpreads } from "./spreads.ts";

/** Spreads as typed, in percent; an input that is not there has the assumed one. */
export type TypedSpreads = Readonly<Partial<Record<InputId, string>>>;

/** Draws: a first look, the usual, and for narrow intervals. */
export const RUN_CHOICES = [16, 64, 256] as const;
const USUAL_RUNS = RUN_CHOICES[1];

interface FoundChances {
  readonly chances: Chances;
  /** `assessment.key` of the state. */
  readonly key: string;
  readonly assessed: Assessed;
  readonly spreads: TypedSpreads;
}

export interface ChancesState {
  readonly work: Job<FoundChances, Progress>;
  /** What was found last. */
  readonly found: FoundChances | undefined;
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
  const slot = new JobSlot<FoundChances, Progress>((work) =>
    store.setState(work.kind === "done" ? { work, found: work.value } : { work }),
  );
  async function workOut(assessed: Assessed, key: string, whatIf: WhatIf): Promise<Chances | undefined> {
    const { spreads, runs } = store.getState();
    const read = readSpreads(spreads);
    if (!read.ok) return undefined;
    const id = newId();
    const asked = { id, assessed, whatIf, spreads: read.spreads, runs };
    const found = await slot.run({
      begun: { done: 0, doing: whatIf },
      async run(tell) {
        const answer = await runner.chances(asked, tell);
        return answer.ok ? { ok: true, value: { chances: answer.value, key, assessed, spreads } } : answer;
      },
      cancel: () => void runner.cancel(id),
    });
    return found?.chances;
  }
  return {
    store,
    choose: (whatIf) => store.setState({ whatIf }),
    chooseRuns: (runs) => store.setState({ runs }),
    type: (id, text) => store.setState(({ spreads }) => ({ spreads: { ...spreads, [id]: text } })),
    workOut,
    stop: () => slot.stop(),
  };
}
