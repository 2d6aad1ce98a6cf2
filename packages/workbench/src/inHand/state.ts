/** The state, in slices by lifetime: the document outlives the page, the session the run, the run nothing. */
import type { Accuracy } from "@secondline/engine";
import type { Issues, Rig, RigIssue } from "@secondline/rig";
import type { RunnerService } from "@secondline/runner";
import type { Assessed, Outcome, SearchResult, StudyProgress, Verdict, WhatIf, WhatIfRun } from "@secondline/scenarios";
import type { Documents, KeptWear, WrittenRig } from "../documents/documents.ts";
import type { History } from "../history/history.ts";
import type { Job } from "../job/job.ts";
import type { KeptFounds } from "./keptFounds.ts";
import type { AssessmentSlice } from "./known.ts";

export interface DocumentSlice {
  /** Rig, wear record and break log with all steps back and forward. */
  readonly history: History<Documents>;
  /** Faults of the rig as it stands. */
  readonly issues: readonly RigIssue[];
  /** The last one without faults, read and as written; what is computed takes `assessment.assessed`. */
  readonly rig: Rig;
  readonly goodDocument: WrittenRig;
}

export type SheetPlace = "verdict" | "time" | "rig";
/**
 * What the page shows: one rig in full, rigs side by side, how far a number can go, what wears, lessons, the questions of a new rig,
 * or the site card.
 */
export type ViewName = "rig" | "layouts" | "howFar" | "wear" | "lessons" | "newRig" | "card";
export type CameraName = "overview" | "event" | "elevation" | "anchor";

export interface Notice {
  readonly id: number;
  readonly tone: "word" | "fault";
  readonly text: string;
  readonly details?: readonly string[];
  readonly action?: { readonly label: string; readonly run: () => void };
}

export interface SessionSlice {
  /** Undefined: as the system has it. */
  readonly theme: "light" | "dark" | undefined;
  readonly view: ViewName;
  readonly camera: CameraName;
  readonly showForces: boolean;
  readonly compare: boolean;
  readonly rigOpen: boolean;
  /** On a narrow screen: which page of the sheet is in front. */
  readonly place: SheetPlace;
  /** Part of an outcome the user looks at, e.g. "leash". */
  readonly selectedPart: string | undefined;
  /** Path of the field being edited. */
  readonly editing: string | undefined;
  readonly whatIf: WhatIf;
  readonly accuracy: Accuracy;
  /** Wear record and break log as they are kept; the part that counts is in `LoadedEvidence`. */
  readonly wear: KeptWear | undefined;
  readonly notices: readonly Notice[];
  /** Last thing said to screen readers. */
  readonly announcement: string;
}

/** A search that has not ended: it can have found what fails or is thin, never that the rig holds. */
export type SoFar = Outcome & { readonly verdict: Exclude<Verdict, "holds"> };

/** A what-if that was run, and the state it was run of. */
export interface ShownRun extends Pick<WhatIfRun, "outcome" | "otherMesh"> {
  readonly assessed: Assessed;
  /** `assessment.key` of the state that was run. */
  readonly key: string;
  readonly whatIf: WhatIf;
  readonly accuracy: Accuracy;
}

/**
 * The verdict of the very state in `assessment`: it is withdrawn in the same step in which that state changes. Read it by
 * `foundOf` and `outcomeOf`, which also look whether an entry of the rig is being put right.
 */
export interface VerdictSlice {
  /** Result of the last complete search. */
  readonly found: SearchResult | undefined;
  /** While it is looked for, or after a stop; beside `found` only what a longer look has found to be worse than that. */
  readonly soFar: SoFar | undefined;
  /** `assessment.key` of the state. */
  readonly key: string;
}

export interface RunSlice {
  readonly fall: Job<ShownRun, StudyProgress>;
  readonly study: Job<VerdictSlice, StudyProgress>;
  /** First the few what-ifs that usually govern, on a coarse mesh; then all what-ifs. */
  readonly effort: "quick" | "full";
  readonly shown: ShownRun | undefined;
  readonly previous: ShownRun | undefined;
  readonly verdict: VerdictSlice;
  /** The complete verdict of the state before, for comparison. */
  readonly previousVerdict: Outcome | undefined;
  /** Counts changes of the recordings on the shelf. */
  readonly recordingVersion: number;
}

export interface SandboxState {
  readonly document: DocumentSlice;
  readonly assessment: AssessmentSlice;
  readonly session: SessionSlice;
  readonly run: RunSlice;
}

/** Reads a rig from text or from a document; `readRig` in the app. */
export type ReadRig = (
  source: unknown,
) =>
  | { readonly ok: true; readonly rig: Rig; readonly document: WrittenRig }
  | ({ readonly ok: false } & Issues<RigIssue>);

/** What the store needs from outside; replaced in tests. */
export interface Services {
  readonly runner: Pick<RunnerService, "run" | "study" | "cancel">;
  readonly read: ReadRig;
  readonly newId: () => string;
  /** Verdicts shared with other sandboxes; default: of this one alone. */
  readonly kept?: KeptFounds;
  /** Calls back after a pause; returns what cancels it. */
  readonly later: (milliseconds: number, action: () => void) => () => void;
}
