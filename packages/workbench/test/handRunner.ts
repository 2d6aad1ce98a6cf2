/** A sandbox whose computations the test answers by hand. */
import type { Recording } from "@secondline/engine";
import type { Progress, RunRequest, ServiceAnswer, StudyRequest } from "@secondline/runner";
import type { Outcome, SearchResult, Verdict, WhatIfRun } from "@secondline/scenarios";
import { createSandbox, type Services, type Start, type WrittenRig } from "../src/index.ts";
import { read } from "./demoDocument.ts";

interface Call<R, T> {
  readonly request: R;
  readonly progress: (progress: Progress) => void;
  readonly answer: (answer: ServiceAnswer<T>) => void;
}

class HandRunner {
  readonly runs: Call<RunRequest, WhatIfRun>[] = [];
  readonly studies: Call<StudyRequest, SearchResult>[] = [];
  readonly cancelled: string[] = [];
  run(request: RunRequest, progress: (progress: Progress) => void = () => undefined) {
    return new Promise<ServiceAnswer<WhatIfRun>>((answer) => this.runs.push({ request, progress, answer }));
  }
  study(request: StudyRequest, progress: (progress: Progress) => void = () => undefined) {
    return new Promise<ServiceAnswer<SearchResult>>((answer) => this.studies.push({ request, progress, answer }));
  }
  async cancel(id: string) {
    this.cancelled.push(id);
  }
}

const ok = <T>(value: T): ServiceAnswer<T> => ({ ok: true, value });

/** A fall that the backup caught; its recording bears a name. */
export const fell = (name: string, events: readonly { readonly kind: string }[] = []): ServiceAnswer<WhatIfRun> =>
  ok({
    outcome: {
      whatIf: { kind: "leashFall", at: 0.5 },
      key: "fall@0.5",
      class: "expected",
      ok: true,
      caughtBy: "backup",
      gaveWay: [],
      counts: true,
      runs: 1,
    },
    recording: { name, events } as unknown as Recording,
  });

/** As much of an outcome as the state looks at. */
export const outcome = (verdict: Verdict, events = 44) =>
  ({ verdict, search: { events, of: 44, runs: 250 } }) as unknown as Outcome;
export const searched = (verdict: Verdict, events = 44): ServiceAnswer<SearchResult> =>
  ok({ outcome: outcome(verdict, events), demands: [] });
export const failed = (message: string) => ({ ok: false, reason: "failed", code: "failed", message }) as const;

export function handSandbox(document: WrittenRig, start: Partial<Start> = {}, more: Partial<Services> = {}) {
  const runner = new HandRunner();
  let count = 0;
  let waiting: (() => void) | undefined;
  const services: Services = {
    runner,
    read,
    newId: () => `${++count}`,
    later(_pause, action) {
      waiting = action;
      return () => {
        waiting = undefined;
      };
    },
    ...more,
  };
  const sandbox = createSandbox(services, { document, goodDocument: document, ...start });
  return {
    runner,
    services,
    sandbox,
    state: () => sandbox.store.getState(),
    /** The changes have come to rest. */
    settle() {
      const action = waiting;
      waiting = undefined;
      action?.();
    },
    /** What was promised has been delivered. */
    settled: () => new Promise((resolve) => setTimeout(resolve)),
  };
}
