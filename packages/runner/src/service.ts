/** What the runner offers, the same in-process and across a worker boundary. Errors cross as data. */
import type {
  Accuracy,
  Assessed,
  Chances,
  ChancesOptions,
  Found,
  SearchOptions,
  StudyProgress,
  WhatIf,
  WhatIfRun,
} from "@secondline/scenarios";

/** How far a request is: facts, no words. */
export type Progress = StudyProgress;

interface Asked {
  readonly id: string;
  readonly assessed: Assessed;
  /** Gives way to what others ask for: layouts beside the rig that is edited, say. */
  readonly background?: boolean;
}

/** One what-if, with its recording. `estimate` adds a second mesh. */
export interface RunRequest extends Asked {
  readonly whatIf: WhatIf;
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  /** Simulated time [s]; default: long enough for the deepest drop, at least 4. */
  readonly duration?: number;
}

/** The search for a rig's worst events. */
export type StudyRequest = Asked & SearchOptions;

/** How likely parts are to fail, and to be first, in one what-if: many runs, then many draws. */
export type ChancesRequest = Asked & ChancesOptions;

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: "cancelled" | "failed"; readonly message: string };

export interface RunnerService {
  run(request: RunRequest, onProgress?: (progress: Progress) => void): Promise<Answer<WhatIfRun>>;
  study(request: StudyRequest, onProgress?: (progress: Progress) => void): Promise<Answer<Found>>;
  /** Stops a run or study; its promise answers `cancelled`. */
  cancel(id: string): Promise<void>;
}

/** What both runners offer besides. */
export interface ChancesService {
  /** Cancelled by its id, like a run. */
  chances(request: ChancesRequest, onProgress?: (progress: Progress) => void): Promise<Answer<Chances>>;
}
