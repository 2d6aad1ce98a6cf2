/**
 * Runs what the user looks at. The chosen what-if comes first; then the search for the verdict, in two looks: the few what-ifs
 * that usually govern, on a coarse mesh, and at once afterwards all what-ifs on the standard mesh. The search goes on when another
 * what-if is chosen; another state of the rig ends it.
 */
import type { StudyProgress, WhatIfRun } from "@secondline/scenarios";
import type { StoreApi } from "zustand/vanilla";
import { STOPPED, type StoppableTask, type TaskAnswer } from "../job/job.ts";
import { JobSlot } from "../job/jobSlot.ts";
import type { KeptFounds } from "./keptFounds.ts";
import type { RecordingShelf } from "./recordings.ts";
import { asSoFar, graver, isWorse } from "./soFar.ts";
import type { RunSlice, SandboxState, Services, ShownRun, SoFar, VerdictSlice } from "./state.ts";

/** A change waits this long for the next one, so that typing does not start a run per letter [ms]. */
const SETTLE_MS = 250;

const EFFORTS = {
  quick: { size: "quick", accuracy: "quick", tellSoFar: true },
  // Forces over time are kept for the report.
  full: { size: "full", accuracy: "standard", traces: true, tellSoFar: true },
} as const;

/** A longer look takes so many times the runs [-]. */
const LONGER_LOOK_RATIO = 2;

type Effort = keyof typeof EFFORTS;
type Fallen = Pick<ShownRun, "assessed" | "key" | "whatIf" | "accuracy"> & WhatIfRun;

export class Runs {
  private readonly store: StoreApi<SandboxState>;
  private readonly services: Services;
  private readonly shelf: RecordingShelf;
  private readonly kept: KeptFounds;
  private readonly fall = new JobSlot<Fallen, StudyProgress>((fall) =>
    fall.kind === "done" ? this.fell(fall.value) : this.set({ fall }),
  );
  private readonly study = new JobSlot<VerdictSlice, StudyProgress>((study) => {
    this.set({ study });
    if (study.kind === "done") this.conclude(study.value);
  });
  private cancelSettling: (() => void) | undefined;
  /** Counts what was asked for: an answer that comes after a later question starts nothing more. */
  private turn = 0;
  private looking: Promise<void> | undefined;
  /** Runs to be spent on the state with that key, where somebody wants a longer look. */
  private budget: { readonly key: string; readonly runs: number } | undefined;

  constructor(store: StoreApi<SandboxState>, services: Services, shelf: RecordingShelf, kept: KeptFounds) {
    this.store = store;
    this.services = services;
    this.shelf = shelf;
    this.kept = kept;
  }

  /** Another state: what computes belongs to the one before. Starts soon; a later change starts it later. */
  stateChanged(): void {
    this.study.rest(this.needsStudy() ? "waiting" : "idle");
    this.set({ effort: "quick" });
    this.soon();
  }

  /** The same state, to be looked at in another run. */
  soon(): void {
    this.cancelSettling?.();
    this.turn += 1;
    this.fall.rest("waiting");
    this.cancelSettling = this.services.later(SETTLE_MS, () => void this.now());
  }

  /** Runs the chosen what-if, then searches for the verdict if the state has none yet. */
  async now(): Promise<void> {
    this.cancelSettling?.();
    this.turn += 1;
    const { turn } = this;
    await this.fall.run(this.chosenFall());
    if (turn === this.turn) await this.look();
  }

  /** Searches for the verdict of this state. The promise ends with the search, also with one that was going already. */
  async look(): Promise<void> {
    if (!this.needsStudy()) return;
    const { soFar } = this.store.getState().run.verdict;
    if (!this.study.isBusy || !this.looking) this.looking = this.search(soFar ? ["full"] : ["quick", "full"]);
    return this.looking;
  }

  /** Searches on with twice the runs that the verdict rests on; what has been run is not run again. */
  async lookLonger(): Promise<void> {
    const { run, assessment } = this.store.getState();
    if (!run.verdict.found || this.study.isBusy) return;
    this.budget = { key: assessment.key, runs: LONGER_LOOK_RATIO * run.verdict.found.outcome.search.runs };
    this.looking = this.search(["full"]);
    return this.looking;
  }

  /** Stops whatever computes; what was found so far stays. */
  stop(): void {
    this.cancelSettling?.();
    this.turn += 1;
    const { kind } = this.store.getState().run.fall;
    if (kind !== "idle" && kind !== "done") this.fall.rest("stopped");
    if (this.needsStudy()) this.study.rest("stopped");
    else if (this.study.isBusy) this.study.rest("idle");
  }

  private needsStudy(): boolean {
    const { run, assessment } = this.store.getState();
    const { found, soFar } = run.verdict;
    return (found === undefined || soFar !== undefined) && assessment.issues.length === 0;
  }

  private chosenFall(): StoppableTask<Fallen, StudyProgress> {
    const { assessment, session } = this.store.getState();
    const { assessed, key } = assessment;
    const { whatIf, accuracy } = session;
    const id = this.services.newId();
    const request = { id, assessed, whatIf, accuracy, estimate: accuracy !== "quick" };
    return {
      begun: BEGUN,
      run: async (tell) => {
        const answer = await this.services.runner.run(request, tell);
        return answer.ok ? { ok: true, value: { assessed, key, whatIf, accuracy, ...answer.value } } : answer;
      },
      cancel: () => void this.services.runner.cancel(id),
    };
  }

  private fell({ recording, ...shown }: Fallen): void {
    const { run } = this.store.getState();
    this.shelf.put(recording);
    this.set({
      fall: { kind: "done", value: shown },
      shown,
      previous: run.shown,
      recordingVersion: run.recordingVersion + 1,
    });
  }

  /** One look after the other; each follows at once. */
  private async search(efforts: readonly Effort[]): Promise<void> {
    const { assessed, key } = this.store.getState().assessment;
    let id = "";
    await this.study.run({
      begun: BEGUN,
      run: async (tell, goesOn) => {
        let answer: TaskAnswer<VerdictSlice> | undefined;
        for (const effort of efforts) {
          id = this.services.newId();
          tell(BEGUN);
          this.set({ effort });
          const { soFar: earlier } = this.store.getState().run.verdict;
          const found = await this.services.runner.study(
            { id, assessed, ...EFFORTS[effort], ...this.runsFor(effort, key) },
            this.progress(earlier, key, tell, goesOn),
          );
          if (!found.ok || !goesOn()) return found.ok ? STOPPED : found;
          if (effort === "quick") this.tell(key, graver(earlier, asSoFar(found.value.outcome)));
          answer = { ok: true, value: { key, found: found.value, soFar: undefined } };
        }
        return answer ?? STOPPED;
      },
      cancel: () => void this.services.runner.cancel(id),
    });
  }

  private runsFor(effort: Effort, key: string): { readonly runs?: number } {
    return effort === "full" && this.budget?.key === key ? { runs: this.budget.runs } : {};
  }

  /** Hears how far a look is; what it has found stays told until it has found more. */
  private progress(
    earlier: SoFar | undefined,
    key: string,
    tell: (progress: StudyProgress) => void,
    goesOn: () => boolean,
  ): (progress: StudyProgress) => void {
    let last = BEGUN;
    return (progress) => {
      const { soFar, of } = last;
      last = { ...(soFar && { soFar }), ...(of !== undefined && { of }), ...progress };
      tell(last);
      if (progress.soFar && goesOn()) this.tell(key, graver(earlier, asSoFar(progress.soFar)));
    };
  }

  private tell(key: string, soFar: SoFar | undefined): void {
    const { verdict } = this.store.getState().run;
    if (verdict.key !== key || !soFar || soFar === verdict.soFar) return;
    // A longer look goes on beside a verdict, which stands until something worse is sure.
    if (verdict.found && !isWorse(soFar, verdict.found.outcome)) return;
    this.set({ verdict: { ...verdict, soFar } });
  }

  private conclude(verdict: VerdictSlice): void {
    if (verdict.found) this.kept.keep(verdict.key, verdict.found);
    if (this.store.getState().run.verdict.key === verdict.key) this.set({ verdict });
  }

  private set(part: Partial<RunSlice>): void {
    this.store.setState((state) => ({ run: { ...state.run, ...part } }));
  }
}

const BEGUN: StudyProgress = { done: 0 };
