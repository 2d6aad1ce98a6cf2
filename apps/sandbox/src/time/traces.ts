import { type Peak, type Recording, SIGNALS, type SignalName } from "@secondline/engine";
import type { Palette } from "../design/palette.ts";

/** Filtered: as a load cell reports it (CFC 60 of SAE J211-1). Raw: every sample as computed. */
export type Reading = "filtered" | "raw";

/** How a force signal is named and drawn. Colour says which line it is, pattern where on it: A, B or the ring. */
export interface TraceStyle {
  readonly signal: SignalName;
  /** At the end of the trace: "main at A". */
  readonly name: string;
  /** In a sentence: "main line at A". */
  readonly inWords: string;
  /** For narrow places. */
  readonly shortName: string;
  readonly colour: keyof Palette;
  /** [px] */
  readonly width: number;
  /** Lengths of dash and gap, empty for a full line [px]. */
  readonly dash: readonly number[];
}

const FULL: readonly number[] = [];
const LONG_DASH = [9, 4];
const DOTS = [2, 3];

export const TRACES: readonly TraceStyle[] = [
  {
    signal: "leash",
    name: "leash",
    inWords: "leash",
    shortName: "leash",
    colour: "lineLeash",
    width: 2.25,
    dash: FULL,
  },
  {
    signal: "mainA",
    name: "main at A",
    inWords: "main line at A",
    shortName: "main A",
    colour: "lineMain",
    width: 1.75,
    dash: FULL,
  },
  {
    signal: "mainB",
    name: "main at B",
    inWords: "main line at B",
    shortName: "main B",
    colour: "lineMain",
    width: 1.75,
    dash: LONG_DASH,
  },
  {
    signal: "backupA",
    name: "backup at A",
    inWords: "backup at A",
    shortName: "backup A",
    colour: "lineBackup",
    width: 1.75,
    dash: FULL,
  },
  {
    signal: "backupB",
    name: "backup at B",
    inWords: "backup at B",
    shortName: "backup B",
    colour: "lineBackup",
    width: 1.75,
    dash: LONG_DASH,
  },
  {
    signal: "ringOnMain",
    name: "ring on main",
    inWords: "ring on the main line",
    shortName: "ring, main",
    colour: "lineMain",
    width: 1.75,
    dash: DOTS,
  },
  {
    signal: "ringOnBackup",
    name: "ring on backup",
    inWords: "ring on the backup",
    shortName: "ring, backup",
    colour: "lineBackup",
    width: 1.75,
    dash: DOTS,
  },
];

/** The ring's pull on a line hardly differs from the leash's: it is there to be asked for. */
export const SHOWN_AT_FIRST: readonly SignalName[] = SIGNALS.filter((name) => !name.startsWith("ring"));

/** Below this a signal counts as never loaded [N]: a metre of webbing weighs about as much. */
const UNLOADED = 1;

/** Whether a force signal stays (next to) zero during the whole run. */
export function staysZero(recording: Recording, signal: SignalName): boolean {
  return !(recording.peaks[signal].raw >= UNLOADED);
}

export function loadedTraces(recording: Recording): readonly TraceStyle[] {
  return TRACES.filter((trace) => !staysZero(recording, trace.signal));
}

export function unloadedTraces(recording: Recording): readonly TraceStyle[] {
  return TRACES.filter((trace) => staysZero(recording, trace.signal));
}

/** Largest force of a signal as read, and when. */
export function peakAs(peak: Peak, reading: Reading): { readonly force: number; readonly time: number } {
  return reading === "raw" ? { force: peak.raw, time: peak.rawTime } : { force: peak.cfc60, time: peak.cfc60Time };
}
