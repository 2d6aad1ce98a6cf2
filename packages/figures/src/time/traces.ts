import { type Recording, SIGNALS, type SignalName } from "@secondline/engine";
import { sayTime } from "@secondline/words/page/time";
import type { Palette } from "../palette.ts";

/** Filtered: as a load cell reports it (CFC 60 of SAE J211-1). Raw: every sample as computed. */
export type Reading = "filtered" | "raw";

export type TraceId = SignalName | `connection ${number}`;

/**
 * Name and look of a trace. The colour tells the part; the pattern tells the place on the part, or which of several parts it
 * is.
 */
export interface TraceStyle {
  readonly id: TraceId;
  /** At the end of the trace: "main at A". */
  readonly name: string;
  /** In a sentence: "the main line at A". */
  readonly inWords: string;
  /** For narrow places. */
  readonly shortName: string;
  readonly colour: keyof Palette;
  /** [px] */
  readonly width: number;
  /** Lengths of dash and gap, empty for a full line [px]. */
  readonly dash: readonly number[];
}

/** Largest force [N], and when [s]. */
export interface TracePeak {
  readonly force: number;
  readonly time: number;
}

/** A force over a run, at the recording's rate. */
export interface PlottedTrace extends TraceStyle {
  /** [N] */
  readonly samples: Float32Array;
  /** The engine records connections as a load cell reads them: there is nothing more to filter. */
  readonly readAlready: boolean;
  readonly peaks: Readonly<Record<Reading, TracePeak>>;
}

const FULL_LINE: readonly number[] = [];
const LONG_DASH = [9, 4];
const DOTS = [2, 3];
const DASH_DOT = [9, 3, 2, 3];

const SIGNAL_STYLES: Readonly<Record<SignalName, TraceStyle>> = {
  leash: signalStyle("leash", "lineLeash", FULL_LINE),
  mainA: signalStyle("mainA", "lineMain", FULL_LINE),
  mainB: signalStyle("mainB", "lineMain", LONG_DASH),
  backupA: signalStyle("backupA", "lineBackup", FULL_LINE),
  backupB: signalStyle("backupB", "lineBackup", LONG_DASH),
  ringOnMain: signalStyle("ringOnMain", "lineMain", DOTS),
  ringOnBackup: signalStyle("ringOnBackup", "lineBackup", DOTS),
};

function signalStyle(id: SignalName, colour: keyof Palette, dash: readonly number[]): TraceStyle {
  const names = [sayTime(`trace.${id}.name`), sayTime(`trace.${id}.inWords`), sayTime(`trace.${id}.short`)] as const;
  return traceStyle(id, names, colour, dash);
}

function traceStyle(
  id: TraceId,
  [name, inWords, shortName]: readonly [string, string, string],
  colour: keyof Palette,
  dash: readonly number[],
): TraceStyle {
  // The walker feels the leash, so it is the strongest line.
  return { id, name, inWords, shortName, colour, width: id === "leash" ? 2.25 : 1.75, dash };
}

const known = new WeakMap<Recording, readonly PlottedTrace[]>();

/** The force traces of a run: leash, lines and ring, then connections from A to B. */
export function tracesOf(recording: Recording): readonly PlottedTrace[] {
  const made = known.get(recording) ?? [...signalTraces(recording), ...connectionTraces(recording)];
  known.set(recording, made);
  return made;
}

function signalTraces(recording: Recording): readonly PlottedTrace[] {
  return SIGNALS.map((signal) => {
    const { raw, rawTime, cfc60, cfc60Time } = recording.peaks[signal];
    const peaks = { raw: { force: raw, time: rawTime }, filtered: { force: cfc60, time: cfc60Time } };
    return { ...SIGNAL_STYLES[signal], samples: recording.signals[signal], readAlready: false, peaks };
  });
}

/** Tapes part at little load, many at once. They are told as events and have no trace. */
function connectionTraces(recording: Recording): readonly PlottedTrace[] {
  const connections = recording.connections.filter(({ tape }) => !tape);
  return connections.flatMap(({ force, peak, time }, i) => {
    if (!force) return [];
    const said = (form: "name" | "inWords" | "short") =>
      connections.length > 1
        ? sayTime(`connectionTrace.many.${form}`, { number: i + 1 })
        : sayTime(`connectionTrace.one.${form}`);
    const names = [said("name"), said("inWords"), said("short")] as const;
    const look = traceStyle(
      `connection ${i + 1}`,
      names,
      "lineConnection",
      [FULL_LINE, LONG_DASH, DOTS, DASH_DOT][i % 4]!,
    );
    const read = { force: peak, time };
    return [{ ...look, samples: force, readAlready: true, peaks: { raw: read, filtered: read } }];
  });
}

/** Below this a trace counts as never loaded [N]: a metre of webbing weighs about as much. */
const UNLOADED_FORCE = 1;

export function loadedTraces(recording: Recording): readonly PlottedTrace[] {
  return tracesOf(recording).filter(({ peaks }) => peaks.raw.force >= UNLOADED_FORCE);
}

export function unloadedTraces(recording: Recording): readonly PlottedTrace[] {
  return tracesOf(recording).filter(({ peaks }) => !(peaks.raw.force >= UNLOADED_FORCE));
}

/** Number of connections drawn at first, the hardest pulled; the reader can choose more [-]. */
const CONNECTIONS_AT_FIRST = 2;

/** Traces drawn until the reader chooses: the ring's pull on a line hardly differs from the leash's. */
export function shownAtFirst(recording: Recording): ReadonlySet<TraceId> {
  const loaded = loadedTraces(recording);
  const connections = loaded
    .filter(({ id }) => id.startsWith("connection"))
    .sort((a, b) => b.peaks.filtered.force - a.peaks.filtered.force)
    .slice(0, CONNECTIONS_AT_FIRST);
  const lines = loaded.filter(({ id }) => !id.startsWith("ring") && !id.startsWith("connection"));
  return new Set([...lines, ...connections].map(({ id }) => id));
}
