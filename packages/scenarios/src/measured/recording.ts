/** A load cell's recording of a fall, as it was read from a file: samples in SI, and what is wrong with them. */

/** Where a cell can sit: in the leash, at an end of a line, or behind an anchor's legs, where it carries both lines. */
export const CHANNELS = ["leash", "mainA", "mainB", "backupA", "backupB", "anchorA", "anchorB"] as const;
export type Channel = (typeof CHANNELS)[number];

/** What a reader of the comparison must know of the samples. Times from the first sample [s], forces [N]. */
export type RecordingNote =
  | { readonly kind: "gap"; readonly from: number; readonly to: number }
  /** The largest value stands for several samples between these times: the cell, or what records it, was at its limit. */
  | { readonly kind: "saturated"; readonly from: number; readonly to: number; readonly force: number }
  /** The recorder wrote no number between these times but that the cell was beyond its limit. */
  | { readonly kind: "overload"; readonly from: number; readonly to: number }
  /** Below zero by more than a zero that is a little off. */
  | { readonly kind: "negative"; readonly least: number; readonly samples: number }
  /** All that pulls was written with a minus; it was turned round. */
  | { readonly kind: "reversed" }
  /** Fewer samples a second than the filter of load cells needs [1/s]. */
  | { readonly kind: "slow"; readonly rate: number }
  /** The time axis does not begin at 0: where it begins, as written [s]. */
  | { readonly kind: "begins"; readonly at: number }
  | { readonly kind: "uneven"; readonly least: number; readonly most: number };

export interface MeasuredFall {
  readonly channel: Channel;
  /** The what-if that happened, as the command line writes one. */
  readonly event: string;
  /** Walker's mass, where the file says it [kg]. */
  readonly mass?: number;
  /** Who measured it, where and when; or that it was computed. */
  readonly source: string;
  readonly synthetic: boolean;
  readonly filtered: boolean;
  /** Even samples [N]; NaN in gaps. */
  readonly force: Float64Array;
  /** Samples a second [1/s]. */
  readonly rate: number;
  readonly notes: readonly RecordingNote[];
}

export interface RecordingFault {
  /** Line of the file, from 1. */
  readonly line: number;
  readonly column: string;
  readonly got: string;
  readonly expected: string;
  readonly message: string;
}

export type RecordingReading =
  | { readonly ok: true; readonly fall: MeasuredFall }
  | { readonly ok: false; readonly faults: readonly RecordingFault[] };
