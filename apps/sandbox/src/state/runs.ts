/**
 * Runs what the user looks at. The chosen what-if comes first; then the search for the verdict, in two looks: the few what-ifs
 * that usually govern, on a coarse mesh, and at once after them all of them on the standard one. Another what-if leaves the
 * search alone; another state of the rig ends it.
 */
import type { Found } from "@secondline/scenarios";
import type { StoreApi } from "zustand/vanilla";
import type { KeptFounds } from "./keptFounds.ts";
import type { RecordingShelf } from "./recordings.ts";
import { asSoFar, graver, isWorse } from "./soFar.ts";
import type { RunSlice, SandboxState, Services, SoFar, VerdictSlice, Work } from "./types.ts";

/** A change waits this long for the next one, so that typing does not start a run per letter [ms]. */
const SETTLE = 250;

const EFFORTS = {
  quick: { size: "quick", accuracy: "quick", tellSoFar: true },
  // Forces over time are kept for the report.
  full: { size: "full", accuracy: "standard", traces: true, tellSoFar: true },
} as const;

/** A longer look takes so many times the runs [-]. */
const LONGER = 2;

type Which = "fall" | "study";

export class Runs {
  private readonly store: StoreApi<SandboxState>;
  private readonly services: Services;
  private readonly shelf: RecordingShelf;
  private readonly kept: KeptFounds;
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
    this.end("study");
    this.set({ study: this.needsStudy() ? { kind: "waiting" } : { kind: "idle" }, effort: "quick" });
    this.soon();
  }

  /** The same state, to be looked at in another run. */
  soon(): void {
    this.cancelSettling?.();
    this.turn += 1;
    this.end("fall");
    this.set({ fall: { kind: "waiting" } });
    this.cancelSettling = this.services.later(SETTLE, () => void this.now());
  }

  /** Runs the chosen what-if, then searches for the verdict where there is none. */
  async now(): Promise<void> {
    this.cancelSettling?.();
    this.turn += 1;
    const { turn } = this;
    this.end("fall");
    await this.fall();
    if (turn === this.turn) await this.look();
  }

  /** Searches for the verdict of this state; over when that search is, also one that was going already. */
  async look(): Promise<void> {
    const { run, assessment } = this.store.getState();
    if (!this.needsStudy()) return;
    if (run.study.kind !== "busy" || !this.looking) this.looking = this.bothLooks(assessment.key);
    return this.looking;
  }

  /** Searches on with twice the runs that the verdict rests on; what has been run is not run again. */
  async lookLonger(): Promise<void> {
    const { run, assessment } = this.store.getState();
    if (!run.verdict.found || run.study.kind === "busy") return;
    this.budget = { key: assessment.key, runs: LONGER * run.verdict.found.outcome.search.runs };
    this.looking = this.study("full", assessment.key).then(() => undefined);
    return this.looking;
  }

  private async bothLooks(key: string): Promise<void> {
    const { soFar } = this.store.getState().run.verdict;
    if (!soFar && !(await this.study("quick", key))) return;
    await this.study("full", key);
  }

  /** Stops whatever computes; what was found so far stays. */
  stop(): void {
    const { fall, study } = this.store.getState().run;
    this.cancelSettling?.();
    this.turn += 1;
    this.end("fall");
    this.end("study");
    this.set({
      fall: fall.kind === "idle" ? fall : { kind: "stopped" },
      study: this.needsStudy() ? { kind: "stopped" } : study.kind === "busy" ? { kind: "idle" } : study,
    });
  }

  private needsStudy(): boolean {
    const { run, assessment } = this.store.getState();
    const { found, soFar } = run.verdict;
    return (found === undefined || soFar !== undefined) && assessment.issues.length === 0;
  }

  private async fall(): Promise<void> {
    const { assessment, session } = this.store.getState();
    const { assessed, key } = assessment;
    const { whatIf, accuracy } = session;
    const id = this.begin("fall");
    const request = { id, assessed, whatIf, accuracy, estimate: accuracy !== "quick" };
    const answer = await this.services.runner.run(request, (progress) => {
      if (this.isCurrent("fall", id)) this.set({ fall: { kind: "busy", id, progress } });
    });
    if (!this.isCurrent("fall", id)) return;
    if (!answer.ok) return this.set({ fall: workAfter(answer) });
    const { shown, recordingVersion } = this.store.getState().run;
    const { recording, ...told } = answer.value;
    this.shelf.put(recording);
    this.set({
      fall: { kind: "idle" },
      shown: { assessed, key, whatIf, accuracy, ...told },
      previous: shown ?? undefined,
      recordingVersion: recordingVersion + 1,
    });
  }

  /** One look; true when it came to its end and the state is still the same. */
  private async study(effort: RunSlice["effort"], key: string): Promise<boolean> {
    const { assessment, run } = this.store.getState();
    const id = this.begin("study");
    this.set({ effort });
    const earlier = run.verdict.soFar;
    const runs = effort === "full" && this.budget?.key === key ? { runs: this.budget.runs } : {};
    const request = { id, assessed: assessment.assessed, ...EFFORTS[effort], ...runs };
    const answer = await this.services.runner.study(request, (progress) => {
      if (!this.isCurrent("study", id)) return;
      this.set({ study: { kind: "busy", id, progress: { ...this.known(id), ...progress } } });
      if (progress.soFar) this.tell(key, graver(earlier, asSoFar(progress.soFar)));
    });
    if (!this.isCurrent("study", id)) return false;
    if (!answer.ok) {
      this.set({ study: workAfter(answer) });
      return false;
    }
    // After the quick look the other one follows at once: the search goes on.
    if (effort === "quick") this.tell(key, graver(earlier, asSoFar(answer.value.outcome)));
    else {
      this.set({ study: { kind: "idle" } });
      this.conclude(key, answer.value);
    }
    return true;
  }

  /** What the work with that id last said of what it has found. */
  private known(id: string) {
    const { study } = this.store.getState().run;
    if (study.kind !== "busy" || study.id !== id) return {};
    const { soFar, of } = study.progress;
    return { ...(soFar && { soFar }), ...(of !== undefined && { of }) };
  }

  private tell(key: string, soFar: SoFar | undefined): void {
    const { verdict } = this.store.getState().run;
    if (verdict.key !== key || !soFar || soFar === verdict.soFar) return;
    // A longer look goes on beside a verdict, which stands until something worse is sure.
    if (verdict.found && !isWorse(soFar, verdict.found.outcome)) return;
    this.set({ verdict: { ...verdict, soFar } });
  }

  private conclude(key: string, found: Found): void {
    this.kept.keep(key, found);
    const verdict: VerdictSlice = { key, found, soFar: undefined };
    if (this.store.getState().run.verdict.key === key) this.set({ verdict });
  }

  private begin(which: Which): string {
    const id = this.services.newId();
    this.set({ [which]: { kind: "busy", id, progress: { done: 0 } } satisfies Work });
    return id;
  }

  /** Answers of a run that was replaced or stopped come late and are dropped. */
  private isCurrent(which: Which, id: string): boolean {
    const work = this.store.getState().run[which];
    return work.kind === "busy" && work.id === id;
  }

  private end(which: Which): void {
    const work = this.store.getState().run[which];
    if (work.kind !== "busy") return;
    void this.services.runner.cancel(work.id);
    this.set({ [which]: { kind: "stopped" } satisfies Work });
  }

  private set(part: Partial<RunSlice>): void {
    this.store.setState((state) => ({ run: { ...state.run, ...part } }));
  }
}

function workAfter(answer: { readonly reason: "cancelled" | "failed"; readonly message: string }): Work {
  return answer.reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message: answer.message };
}
