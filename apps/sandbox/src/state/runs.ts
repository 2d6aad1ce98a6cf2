/** Runs what the user looks at: first the chosen what-if, then the study of all of them when the rig is new. */
import type { StoreApi } from "zustand/vanilla";
import type { RecordingShelf } from "./recordings.ts";
import type { RunSlice, SandboxState, Services, Work } from "./types.ts";

/** A change waits this long for the next one, so that typing does not start a run per letter [ms]. */
const SETTLE = 250;

export class Runs {
  private readonly store: StoreApi<SandboxState>;
  private readonly services: Services;
  private readonly shelf: RecordingShelf;
  private cancelSettling: (() => void) | undefined;

  constructor(store: StoreApi<SandboxState>, services: Services, shelf: RecordingShelf) {
    this.store = store;
    this.services = services;
    this.shelf = shelf;
  }

  /** Runs again soon; a later call replaces an earlier one. */
  soon(): void {
    this.cancelSettling?.();
    this.stopWork();
    this.set({ fall: { kind: "waiting" } });
    this.cancelSettling = this.services.later(SETTLE, () => void this.now());
  }

  /** Runs the chosen what-if on the last good rig, then the study when the verdict belongs to another rig. */
  async now(): Promise<void> {
    this.cancelSettling?.();
    this.stopWork();
    if (await this.fall()) await this.study("quick");
  }

  /** Every what-if on the standard mesh with a ± on the loads, instead of the few that usually govern. */
  async fully(): Promise<void> {
    this.cancelSettling?.();
    this.stopWork();
    await this.study("full");
  }

  /** Stops whatever computes; results so far stay. */
  stop(): void {
    const { fall, study } = this.store.getState().run;
    this.cancelSettling?.();
    this.stopWork();
    this.set({
      fall: fall.kind === "idle" ? fall : { kind: "stopped" },
      study: fall.kind === "idle" && study.kind === "idle" ? study : { kind: "stopped" },
    });
  }

  private async fall(): Promise<boolean> {
    const { document, session } = this.store.getState();
    const { rig, rigVersion } = document;
    const { whatIf, accuracy } = session;
    const id = this.services.newId();
    this.begin("fall", id, "Computing the fall");
    const answer = await this.services.runner.run({ id, rig, whatIf, accuracy, estimate: accuracy !== "quick" }, (p) =>
      this.progress("fall", id, p.done, p.doing),
    );
    if (!this.isCurrent("fall", id)) return false;
    if (!answer.ok) {
      this.set({
        fall: answer.reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message: answer.message },
      });
      return false;
    }
    const { shown } = this.store.getState().run;
    this.shelf.put(answer.value.recording);
    this.set({
      fall: { kind: "idle" },
      shown: { rig, rigVersion, whatIf, accuracy, outcome: answer.value.outcome },
      previous: shown ?? undefined,
      recordingVersion: this.store.getState().run.recordingVersion + 1,
    });
    return true;
  }

  private async study(size: "quick" | "full"): Promise<void> {
    const { document, run } = this.store.getState();
    const { rig, rigVersion } = document;
    if (size === "quick" && run.verdict?.rigVersion === rigVersion) return;
    const id = this.services.newId();
    this.begin("study", id, "Computing the what-ifs");
    // Quick while somebody edits: the verdict follows the hand. Forces over time are kept for the report.
    const effort =
      size === "quick"
        ? ({ size, accuracy: "quick" } as const)
        : ({ size, accuracy: "standard", estimate: true, traces: true } as const);
    const answer = await this.services.runner.study({ id, rig, ...effort }, (p) =>
      this.progress("study", id, p.done, p.doing),
    );
    if (!this.isCurrent("study", id)) return;
    if (!answer.ok) {
      this.set({
        study: answer.reason === "cancelled" ? { kind: "stopped" } : { kind: "failed", message: answer.message },
      });
      return;
    }
    const before = this.store.getState().run.verdict;
    this.set({
      study: { kind: "idle" },
      verdict: { outcome: answer.value, rig, rigVersion, size },
      // A second look at the same rig is no other rig to compare with.
      ...(before && before.rigVersion !== rigVersion ? { previousVerdict: before.outcome } : {}),
    });
  }

  private begin(which: "fall" | "study", id: string, doing: string): void {
    this.set({ [which]: { kind: "busy", id, progress: { done: 0, doing } } satisfies Work });
  }

  private progress(which: "fall" | "study", id: string, done: number, doing: string): void {
    if (this.isCurrent(which, id))
      this.set({ [which]: { kind: "busy", id, progress: { done, doing } } satisfies Work });
  }

  /** Answers of a run that was replaced or stopped come late and are dropped. */
  private isCurrent(which: "fall" | "study", id: string): boolean {
    const work = this.store.getState().run[which];
    return work.kind === "busy" && work.id === id;
  }

  private stopWork(): void {
    for (const which of ["fall", "study"] as const) {
      const work = this.store.getState().run[which];
      if (work.kind !== "busy") continue;
      void this.services.runner.cancel(work.id);
      this.set({ [which]: { kind: "stopped" } satisfies Work });
    }
  }

  private set(part: Partial<RunSlice>): void {
    this.store.setState((state) => ({ run: { ...state.run, ...part } }));
  }
}
