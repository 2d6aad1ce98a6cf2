/** Makes the state of one sandbox from the services it is handed. Actions are what a user means to do. */
import { editRig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Documents, WrittenRig } from "../documents/documents.ts";
import { adopt, closeGroup, groupStart, type History, record, redo, startHistory, undo } from "../history/history.ts";
import { KeptFounds } from "./keptFounds.ts";
import { assessmentOf, type LoadedEvidence, NOTHING_KNOWN } from "./known.ts";
import { RecordingShelf, type Recordings } from "./recordings.ts";
import { Runs } from "./runs.ts";
import type { DocumentSlice, Notice, RunSlice, SandboxState, Services, SessionSlice } from "./state.ts";

/** What a sandbox starts with. `document` may have faults; `goodDocument` must have none. */
export interface Start {
  readonly document: WrittenRig;
  readonly goodDocument: WrittenRig;
  readonly session?: Partial<SessionSlice>;
  /** What is known besides the rig; default: nothing. */
  readonly known?: LoadedEvidence;
  readonly leftOut?: boolean;
  /** Keep the recording before the newest, for comparison; default true. */
  readonly keepsPrevious?: boolean;
}

export interface Actions {
  /** Puts what was typed at a path; `undefined` takes it out. `group`: joins the letters of one field into one step. */
  edit: (path: string, value: unknown, label: string, group?: string) => void;
  /** Changes the document as it was before the open `group`: rounding does not add up while somebody types or slides. */
  change: (to: (before: WrittenRig) => WrittenRig, label: string, group?: string) => void;
  /** Puts other documents into the place of those that are open, as one step. */
  write: (documents: Partial<Documents>, label: string, group?: string) => void;
  /** Takes documents in beside the rig, without a step; `onStep` is called after every step back or forward. */
  adopt: (documents: Partial<Documents>, onStep: (before: SandboxState) => void) => void;
  /** The field was left: the next change is a step of its own. */
  finishEdit: () => void;
  /** Takes another rig as the document; undo brings the old one back. */
  replaceRig: (document: WrittenRig, label: string) => void;
  undo: () => void;
  redo: () => void;
  /** Another record, day or log: it is taken into account where it speaks of the rig. */
  know: (known: LoadedEvidence) => void;
  /** Leaves record and break tests out of the assessment, or takes them in again. */
  leaveOut: (leftOut: boolean) => void;
  chooseWhatIf: (whatIf: WhatIf) => void;
  chooseAccuracy: (accuracy: SessionSlice["accuracy"]) => void;
  runNow: () => void;
  /** Searches on for the verdict, after a stop. */
  lookOn: () => Promise<void>;
  /** Makes more runs for a verdict that is there, to settle what lies near a limit. */
  lookLonger: () => Promise<void>;
  stop: () => void;
  look: (change: Partial<Omit<SessionSlice, "whatIf" | "accuracy" | "notices" | "announcement">>) => void;
  tell: (notice: Omit<Notice, "id">) => void;
  dismiss: (id: number) => void;
  announce: (text: string) => void;
}

export interface Sandbox {
  readonly store: StoreApi<SandboxState>;
  readonly actions: Actions;
  readonly recordings: Recordings;
}

const FIRST_WHAT_IF: WhatIf = { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" };

export function createSandbox(services: Services, start: Start): Sandbox {
  const store = createStore<SandboxState>(() => firstState(services, start));
  const shelf = new RecordingShelf(start.keepsPrevious ?? true);
  const kept = services.kept ?? new KeptFounds();
  const runs = new Runs(store, services, shelf, kept);
  let lastNotice = 0;

  const session = (part: Partial<SessionSlice>) =>
    store.setState((state) => ({ session: { ...state.session, ...part } }));

  /** Takes over a history and, when its rig has no faults, that too; a new rig is run. */
  function takeOver(history: History<Documents>): void {
    const { document } = store.getState();
    const { rig: written } = history.present;
    if (written === document.history.present.rig) {
      store.setState({ document: { ...document, history } });
      return;
    }
    const read = services.read(written);
    if (!read.ok) {
      store.setState({ document: { ...document, history, issues: read.issues } });
      return;
    }
    assess({ history, issues: [], rig: read.rig, goodDocument: written });
  }

  /** Works the assessment out anew; where it is another one, the verdict of the one before goes in the same step. */
  function assess(document: DocumentSlice, known?: LoadedEvidence, leftOut?: boolean): void {
    const { assessment: before, run } = store.getState();
    const assessment = assessmentOf(document.rig, known ?? before.known, leftOut ?? before.leftOut);
    const isSame = assessment.key === before.key && assessment.issues.length === before.issues.length;
    store.setState({ document, assessment, ...(isSame ? {} : { run: withdrawn(run, assessment.key) }) });
    if (!isSame) runs.stateChanged();
  }

  function withdrawn(run: RunSlice, key: string): RunSlice {
    return {
      ...run,
      verdict: { key, found: kept.recall(key), soFar: undefined },
      previousVerdict: run.verdict.found?.outcome ?? run.previousVerdict,
    };
  }
  function forget(): void {
    const { run } = store.getState();
    shelf.clear();
    store.setState({
      run: { ...run, shown: undefined, previous: undefined, recordingVersion: run.recordingVersion + 1 },
    });
  }
  function step(to: History<Documents>): void {
    const before = store.getState();
    takeOver(to);
    stepped(before);
  }
  let stepped: (before: SandboxState) => void = () => undefined;
  const history = () => store.getState().document.history;

  const actions: Actions = {
    edit: (path, value, label, group) =>
      actions.write({ rig: editRig(history().present.rig, path, value) }, label, group),
    change: (to, label, group) => actions.write({ rig: to(groupStart(history(), group).rig) }, label, group),
    write: (documents, label, group) => takeOver(record(history(), label, documents, group)),
    adopt(documents, onStep) {
      takeOver(adopt(history(), documents));
      stepped = onStep;
    },
    finishEdit: () => takeOver(closeGroup(history())),
    replaceRig(document, label) {
      actions.write({ rig: document }, label);
      // The fall in sight is another rig's.
      const { run, assessment } = store.getState();
      if (run.shown && run.shown.key !== assessment.key) forget();
    },
    undo: () => step(undo(history())),
    redo: () => step(redo(history())),
    know: (known) => assess(store.getState().document, known),
    leaveOut: (leftOut) => assess(store.getState().document, undefined, leftOut),
    chooseWhatIf(whatIf) {
      session({ whatIf });
      runs.soon();
    },
    chooseAccuracy(accuracy) {
      session({ accuracy });
      runs.soon();
    },
    runNow: () => void runs.now(),
    lookOn: () => runs.look(),
    lookLonger: () => runs.lookLonger(),
    stop: () => runs.stop(),
    look: session,
    tell(notice) {
      lastNotice += 1;
      // The newest three: older ones have been read or do not matter any more.
      session({ notices: [...store.getState().session.notices, { ...notice, id: lastNotice }].slice(-3) });
    },
    dismiss: (id) => session({ notices: store.getState().session.notices.filter((notice) => notice.id !== id) }),
    announce: (announcement) => session({ announcement }),
  };
  return { store, actions, recordings: shelf };
}

function firstState(services: Services, start: Start): SandboxState {
  const good = services.read(start.goodDocument);
  if (!good.ok) throw new Error(`The rig to start with has faults: ${JSON.stringify(good.issues)}`);
  const now = start.document === start.goodDocument ? good : services.read(start.document);
  const current = now.ok ? now : good;
  const assessment = assessmentOf(current.rig, start.known ?? NOTHING_KNOWN, start.leftOut ?? false);
  const found = services.kept?.recall(assessment.key);
  return {
    document: {
      history: startHistory({ rig: start.document }),
      issues: now.ok ? [] : now.issues,
      rig: current.rig,
      goodDocument: now.ok ? start.document : start.goodDocument,
    },
    assessment,
    session: {
      theme: undefined,
      view: "rig",
      camera: "event",
      showForces: false,
      compare: false,
      rigOpen: false,
      place: "verdict",
      selectedPart: undefined,
      editing: undefined,
      whatIf: FIRST_WHAT_IF,
      accuracy: "quick",
      wear: undefined,
      notices: [],
      announcement: "",
      ...start.session,
    },
    run: {
      fall: { kind: "idle" },
      study: { kind: "idle" },
      effort: "quick",
      shown: undefined,
      previous: undefined,
      verdict: { key: assessment.key, found, soFar: undefined },
      previousVerdict: undefined,
      recordingVersion: 0,
    },
  };
}
