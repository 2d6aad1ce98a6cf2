/** What a run leaves behind. Plain data and typed arrays only, so that it crosses to another thread as it is. */
import type { Accuracy } from "../line/mesh.ts";
import type { Problem } from "../problem.ts";

/** Names of the force signals [N] that every run records. */
export const SIGNALS = ["leash", "mainA", "mainB", "backupA", "backupB", "ringOnMain", "ringOnBackup"] as const;
/** One of `SIGNALS`. */
export type SignalName = (typeof SIGNALS)[number];

/** Largest value of a signal: raw, and as a load cell reports it (CFC 60, SAE J211-1). */
export interface Peak {
  readonly raw: number;
  readonly rawTime: number;
  readonly cfc60: number;
  readonly cfc60Time: number;
}

/** Equilibrium of the rig with the walker's weight on the line. */
export interface Standing {
  /** Tension at anchor A [N]. */
  readonly tension: number;
  /** Depth of the loaded point below the chord [m]. */
  readonly sag: number;
  /** Position of the loaded point [m]. */
  readonly point: readonly [number, number, number];
}

/** Something that happened during a run. */
export interface RunEvent {
  readonly time: number;
  readonly kind: "cut" | "break" | "leashTaut" | "ringOff" | "ground" | "letGo" | "slip" | "lowest";
  /** Part: "main", "backup", "leash", "ring", "connection", "tape", "anchorA", "anchorB". */
  readonly part: string;
  /** Fraction of natural length for lines and connections; index of the leg for anchors. */
  readonly at?: number;
  /** Load when it happened [N]; impact speed for the ground [m/s]. */
  readonly value?: number;
  readonly position?: readonly [number, number, number];
}

/** Where the energy went [J]; one entry per sample of `times`. `stored` and `moving` are states, the others running totals. */
export interface EnergyLedger {
  readonly times: Float32Array;
  readonly series: Readonly<Record<LedgerEntry, Float32Array>>;
  /** Largest rise of the mechanical energy above its start, less what the feet put in [J]. */
  readonly gain: number;
  /** Largest |start − (mechanical + dissipated + work taken out)| [J]. */
  readonly imbalance: number;
  /** Largest fall of a mechanism's total loss: energy made by the numbers [J]. */
  readonly created: number;
  /** Energy moved: total of falls of potential energy and of dissipation, the scale for `imbalance` [J]. */
  readonly moved: number;
}
/** Entries of the energy ledger [J]: where energy is held, then where it went. */
export const LEDGER = [
  "potential",
  "kinetic",
  "stretchMain",
  "stretchBackup",
  "stretchLeash",
  "stretchOther",
  "lossMain",
  "lossBackup",
  "lossLeash",
  "lossFriction",
  "lossContact",
  "lossDrag",
  "lossParting",
  "lossSlip",
  "feet",
] as const;
/** One of `LEDGER`. */
export type LedgerEntry = (typeof LEDGER)[number];

/** Frames for the eye. Nodes per frame: main, then backup, then ring, then walker; xyz each. */
export interface Frames {
  /** Frames per second [1/s]. */
  readonly rate: number;
  readonly count: number;
  readonly mainNodes: number;
  readonly backupNodes: number;
  /** count × (mainNodes + backupNodes + 2) × 3 [m]. */
  readonly positions: Float32Array;
  /** count × (mainNodes − 1 + backupNodes − 1) element tensions [N]; a parted element is NaN. */
  readonly tensions: Float32Array;
  /** Fraction of natural length of every node, main then backup [-]. */
  readonly fractions: Float32Array;
  /** Ring's place on main and backup per frame, as fractions; −1: off that line. count × 2. */
  readonly ringAt: Float32Array;
}

/** All that a run leaves: peaks, signals, heights, events, the energy ledger, frames. */
export interface Recording {
  readonly problem: Problem;
  readonly accuracy: Accuracy;
  readonly mesh: { readonly elements: number; readonly size: number; readonly step: number; readonly steps: number };
  readonly standing: Standing;
  /** Simulated time reached [s]; shorter than the problem's duration when the walker meets the ground. */
  readonly duration: number;
  /** Force signals at `rate` [N]. */
  readonly rate: number;
  readonly signals: Readonly<Record<SignalName, Float32Array>>;
  readonly peaks: Readonly<Record<SignalName, Peak>>;
  /** Height of the walker's tie-in at `rate` [m]. */
  readonly walkerHeight: Float32Array;
  readonly walker: {
    readonly start: number;
    readonly lowest: number;
    readonly drop: number;
    readonly lowestTime: number;
  };
  /** Per connection (then tape), in the problem's order: largest force [N] and when. */
  readonly connections: readonly {
    readonly at: number;
    readonly tape: boolean;
    readonly peak: number;
    readonly time: number;
    readonly parted: boolean;
    /** The force over time at `rate`, as `peak` reads it; of connections, not of tapes [N]. */
    readonly force?: Float32Array;
  }[];
  /** Anchor legs in the problem's order, A then B: largest tension [N]. */
  readonly legs: readonly {
    readonly anchor: "A" | "B";
    readonly leg: number;
    readonly peak: number;
    readonly parted: boolean;
  }[];
  /** Largest tension of every element. */
  readonly elementPeaks: { readonly main: ElementPeaks; readonly backup: ElementPeaks };
  readonly events: readonly RunEvent[];
  readonly firstBreak?: RunEvent;
  readonly energy: EnergyLedger;
  readonly frames: Frames;
}
/** The largest force of every element of a line. */
export interface ElementPeaks {
  /** Fraction of natural length of every element's middle [-]. */
  readonly at: Float32Array;
  /** As a load cell reports it: CFC 60, at every length of line and run [N]. */
  readonly peak: Float32Array;
  /** Samples per second that went through the filter [1/s]. */
  readonly rate?: number;
}

/** A run either ends with a recording or says why its numbers cannot be trusted. */
export type SimulationResult =
  | { readonly ok: true; readonly recording: Recording }
  | {
      readonly ok: false;
      readonly reason: "diverged" | "audit" | "equilibrium" | "limits" | "cancelled";
      readonly message: string;
    };

/** One fault found in a problem: where, what was got, what was expected. */
export interface ProblemIssue {
  readonly path: string;
  readonly got: string;
  readonly expected: string;
}
