/** What the runner offers, the same in-process and across a worker boundary. Errors cross as data. */
import type {
  Accuracy,
  BreakTest,
  Chances,
  ChancesOptions,
  Outcome,
  Rig,
  WhatIf,
  WhatIfRun,
} from "@secondline/scenarios";

export interface Progress {
  /** Share done, 0 to 1 [-]. */
  readonly done: number;
  /** What is being computed, in words. */
  readonly doing: string;
}

/** One what-if, with its recording. `estimate` adds a second mesh and a ± to the peaks. */
export interface RunRequest {
  readonly id: string;
  readonly rig: Rig;
  readonly whatIf: WhatIf;
  readonly accuracy: Accuracy;
  readonly estimate?: boolean;
  /** Simulated time [s]; default: long enough for the deepest drop, at least 4. */
  readonly duration?: number;
  /** Own break tests, in place of published factors where there are some. */
  readonly breakTests?: readonly BreakTest[];
}

/** The full set of what-ifs of a rig, or the ones given. */
export interface StudyRequest {
  readonly id: string;
  readonly rig: Rig;
  readonly whatIfs?: readonly WhatIf[];
  /** Without `whatIfs`: the full set, or the few that usually govern; default full. */
  readonly size?: "quick" | "full";
  readonly accuracy: Accuracy;
  /** Run what governs on a second mesh too and give every load a ±. */
  readonly estimate?: boolean;
  /** Keep thinned-out forces of every run, for plots and the report. */
  readonly traces?: boolean;
  /** Own break tests, in place of published factors where there are some. */
  readonly breakTests?: readonly BreakTest[];
}

/** How likely parts are to fail, and to be first, in one what-if: many runs, then many draws. */
export type ChancesRequest = ChancesOptions & { readonly id: string; readonly rig: Rig };

export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: "cancelled" | "failed"; readonly message: string };

export interface RunnerService {
  run(request: RunRequest, onProgress?: (progress: Progress) => void): Promise<Answer<WhatIfRun>>;
  study(request: StudyRequest, onProgress?: (progress: Progress) => void): Promise<Answer<Outcome>>;
  /** Stops a run or study; its promise answers `cancelled`. */
  cancel(id: string): Promise<void>;
}

/** What both runners offer besides. */
export interface ChancesService {
  /** Cancelled by its id, like a run. */
  chances(request: ChancesRequest, onProgress?: (progress: Progress) => void): Promise<Answer<Chances>>;
}
