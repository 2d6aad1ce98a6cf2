/** The verbs of the runner, the same in the caller's thread and across a worker boundary. Errors cross as data. */
import type {
  Accuracy,
  Assessed,
  BadPoint,
  Chances,
  ChancesOptions,
  Knob,
  RunOrder,
  RunResult,
  SearchOptions,
  SearchResult,
  StudyProgress,
  SweepOptions,
  Swept,
  SweptRig,
  WhatIf,
  WhatIfRun,
} from "@secondline/scenarios";
import type { Failure } from "./failure.ts";

/** How far a request is: facts, no words. */
export type Progress = StudyProgress;

interface Asked {
  /** Id by which the request is cancelled. A second request under the same id takes the place of the first. */
  readonly id: string;
  readonly assessed: Assessed;
  /** Gives way to other requests, such as layouts that wait for the edited rig. */
  readonly background?: boolean;
}

/** One what-if with its recording, for the eye; it goes before everything else that waits. */
export interface RunRequest extends Asked {
  readonly whatIf: WhatIf;
  readonly accuracy: Accuracy;
  /** Makes the run again on another mesh, to see how far the peaks depend on the mesh. */
  readonly estimate?: boolean;
  /** Simulated time [s]; default: long enough for the deepest drop. */
  readonly duration?: number;
}

/** The search for a rig's worst events. */
export type StudyRequest = Asked & SearchOptions;

/** How likely parts are to fail, and to be first, in one what-if: many runs, then many draws. */
export type ChancesRequest = Asked & ChancesOptions;

/** A sweep of a number of the rig. Strengths and curve are worked out in the thread that deals out the runs. */
export interface SweepRequest {
  readonly id: string;
  readonly knobs: readonly Knob[];
  readonly rigs: readonly SweptRig[];
  /** Values of the number that give no valid rig. */
  readonly bad: readonly BadPoint[];
  readonly options: SweepOptions;
}

/** Result of a finished sweep. Without enough rigs, or without a run that gave numbers, there is no curve. */
export type SweepAnswer =
  | { readonly kind: "swept"; readonly swept: Swept }
  | { readonly kind: "fewPoints"; readonly points: number; readonly bad: readonly BadPoint[] }
  | { readonly kind: "nothing" };

/** Runs of any rigs that the caller has chosen. */
export interface OrdersRequest {
  readonly id: string;
  readonly orders: readonly { readonly assessed: Assessed; readonly order: RunOrder }[];
}

export type ServiceAnswer<T> = { readonly ok: true; readonly value: T } | ({ readonly ok: false } & Failure);

type OnProgress = (progress: Progress) => void;

export interface RunnerService {
  run(request: RunRequest, onProgress?: OnProgress): Promise<ServiceAnswer<WhatIfRun>>;
  study(request: StudyRequest, onProgress?: OnProgress): Promise<ServiceAnswer<SearchResult>>;
  chances(request: ChancesRequest, onProgress?: OnProgress): Promise<ServiceAnswer<Chances>>;
  sweep(request: SweepRequest, onProgress?: OnProgress): Promise<ServiceAnswer<SweepAnswer>>;
  /** Stops a request; its promise answers `cancelled` at once. */
  cancel(id: string): Promise<void>;
  /** Starts no further run of a study until `resume`; the runs that are being made are finished. */
  pause(id: string): Promise<void>;
  resume(id: string): Promise<void>;
  /** Sets how many runs are made at a time. */
  setJobs(jobs: number): Promise<void>;
}

/** Makes runs as they are ordered; results in the order of the orders. */
export interface OrdersService {
  orders(request: OrdersRequest, onProgress?: OnProgress): Promise<ServiceAnswer<readonly RunResult[]>>;
  cancel(id: string): Promise<void>;
}

export type SweepService = Pick<RunnerService, "sweep" | "cancel">;
export type ChancesService = Pick<RunnerService, "chances" | "cancel">;
