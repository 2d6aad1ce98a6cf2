import {
  cfc60,
  type EnergyLedger,
  LEDGER,
  type LedgerEntry,
  type Peak,
  type Problem,
  type Recording,
  SIGNALS,
  type SignalName,
} from "@secondline/engine";

/** An invented run for the time strip: a main line is cut at A and the backup catches the walker. No physics in it. */
const RATE = 10_000;
const CATCH = 1.4;

const PROBLEM: Problem = {
  name: "invented run",
  span: 60,
  rise: 0,
  main: {
    pretension: 2500,
    material: {
      mass: 0.06,
      curve: [
        [0, 0],
        [0.04, 6000],
      ],
      branches: [],
    },
  },
  leash: {
    length: 1.4,
    material: {
      mass: 0.08,
      curve: [
        [0, 0],
        [0.3, 6000],
      ],
      branches: [],
    },
  },
  ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
  walker: { mass: 80, at: 0.4, tieIn: 1, lateral: 0 },
  start: "hanging",
  cut: { at: 0, time: 0.05 },
  duration: 4,
};

/** A pull that rises at `time` to `peak` [N], swings, and settles at `rest` [N]; the raw signal rings on top. */
function pull(t: number, time: number, peak: number, rest: number, ringing: number): number {
  if (t < time - 0.12) return 0;
  const since = t - time;
  const swing = Math.exp(-Math.max(since, 0) * 1.3) * Math.cos(since * 7);
  const rise = since < 0 ? Math.sin(((since + 0.12) / 0.12) * (Math.PI / 2)) ** 2 : 1;
  const ring = ringing * Math.exp(-Math.abs(since) * 9) * Math.sin(t * 2 * Math.PI * 310);
  return Math.max(rise * (rest + (peak - rest) * swing) + ring, 0);
}

const SHAPES: Readonly<Record<SignalName, (t: number, scale: number) => number>> = {
  leash: (t, s) => (t < 0.05 ? 785 : t < 0.1 ? 785 * (1 - (t - 0.05) / 0.05) : pull(t, CATCH, 3260 * s, 760, 420)),
  mainA: (t) => (t < 0.05 ? 3510 : 3510 * Math.max(0, 1 - (t - 0.05) / 0.004)),
  mainB: (t, s) => (t < 0.09 ? 3490 : pull(t, CATCH + 0.02, 5275 * s, 420, 300) + 40 * Math.exp(-t * 3)),
  backupA: (t, s) => pull(t, CATCH + 0.01, 5540 * s, 1900, 800),
  backupB: (t, s) => pull(t, CATCH - 0.02, 708 * s, 240, 200),
  ringOnMain: (t) => (t < 0.05 ? 800 : 0),
  ringOnBackup: (t, s) => pull(t, CATCH, 3200 * s, 770, 700),
};

interface Options {
  readonly duration?: number;
  /** Of every pull after the catch [-]. */
  readonly scale?: number;
  /** Without a load on the backup. */
  readonly unloadedBackup?: boolean;
}

export function timeRecording({ duration = 4, scale = 1, unloadedBackup = false }: Options = {}): Recording {
  const count = Math.round(duration * RATE) + 1;
  const signals = Object.fromEntries(
    SIGNALS.map((name) => {
      const idle = unloadedBackup && name.toLowerCase().includes("backup");
      return [name, Float32Array.from({ length: count }, (_, i) => (idle ? 0 : SHAPES[name](i / RATE, scale)))];
    }),
  ) as Record<SignalName, Float32Array>;
  const peaks = Object.fromEntries(SIGNALS.map((name) => [name, peakOf(signals[name])])) as Record<SignalName, Peak>;
  return {
    problem: { ...PROBLEM, duration },
    accuracy: "standard",
    mesh: { elements: 60, size: 1, step: 1e-4, steps: count },
    standing: { tension: 3510, sag: 3.36, point: [24, 0, -3.36] },
    duration,
    rate: RATE,
    signals,
    peaks,
    walkerHeight: Float32Array.from({ length: count }, (_, i) => heightAt(i / RATE)),
    walker: { start: -4.84, lowest: -9.33, drop: 4.49, lowestTime: CATCH + 0.03 },
    connections: [connectionOf(count, scale)],
    legs: [],
    elementPeaks: {
      main: { at: new Float32Array(), peak: new Float32Array() },
      backup: { at: new Float32Array(), peak: new Float32Array() },
    },
    events: [
      { time: 0.05, kind: "cut", part: "main", at: 0 },
      { time: 1.27, kind: "leashTaut", part: "leash" },
      { time: 1.31, kind: "ringOff", part: "main" },
      { time: CATCH + 0.03, kind: "lowest", part: "walker" },
    ],
    energy: ledgerOf(duration),
    frames: {
      rate: 200,
      count: 0,
      mainNodes: 0,
      backupNodes: 0,
      positions: new Float32Array(),
      tensions: new Float32Array(),
      fractions: new Float32Array(),
      ringAt: new Float32Array(),
    },
  };
}

function peakOf(samples: Float32Array): Peak {
  const filtered = cfc60(samples, RATE);
  const raw = highest(samples);
  const smooth = highest(filtered);
  return { raw: samples[raw]!, rawTime: raw / RATE, cfc60: filtered[smooth]!, cfc60Time: smooth / RATE };
}

function connectionOf(count: number, scale: number): Recording["connections"][number] {
  const force = Float32Array.from({ length: count }, (_, i) => pull(i / RATE, CATCH - 0.1, 2100 * scale, 300, 0));
  const at = highest(force);
  return { at: 0.5, tape: false, peak: force[at]!, time: at / RATE, parted: false, force };
}

function highest(samples: Float32Array | Float64Array): number {
  let best = 0;
  for (let i = 1; i < samples.length; i++) if (samples[i]! > samples[best]!) best = i;
  return best;
}

function heightAt(t: number): number {
  const fall = Math.max(t - 0.1, 0);
  if (t < CATCH + 0.03) return -4.84 - 4.49 * Math.min((fall / (CATCH - 0.07)) ** 2, 1);
  return -9.33 + 1.6 * (1 - Math.exp(-(t - CATCH) * 1.3) * Math.cos((t - CATCH - 0.03) * 7));
}

/** Sums to the same total at every time: height and the main line's stretch give, the others take. */
function ledgerOf(duration: number): EnergyLedger {
  const count = Math.round(duration * 500) + 1;
  const times = Float32Array.from({ length: count }, (_, i) => i / 500);
  const series = Object.fromEntries(LEDGER.map((name) => [name, new Float32Array(count)])) as Record<
    LedgerEntry,
    Float32Array
  >;
  const drop = (t: number) => 785 * (-4.84 - heightAt(t));
  for (let i = 0; i < count; i++) {
    const t = times[i]!;
    const caught = 1 / (1 + Math.exp(-(t - CATCH + 0.1) * 22));
    const lost = caught * (1 - 0.55 * Math.exp(-Math.max(t - CATCH, 0) * 1.4));
    const freed = t < 0.05 ? 0 : 150 * Math.min((t - 0.05) * 20, 1);
    const given = drop(t) + freed;
    series.potential[i] = -2000 - drop(t);
    series.stretchMain[i] = 210 - freed;
    series.lossLeash[i] = given * lost * 0.5;
    series.lossBackup[i] = given * lost * 0.2;
    series.lossMain[i] = given * lost * 0.1;
    series.lossFriction[i] = given * lost * 0.12;
    series.lossDrag[i] = given * lost * 0.03;
    series.stretchLeash[i] = given * (caught - lost) * 0.6;
    series.stretchBackup[i] = given * (caught - lost) * 0.4;
    const used = LEDGER.filter((e) => e.startsWith("loss") || e === "stretchLeash" || e === "stretchBackup");
    series.kinetic[i] = Math.max(given - used.reduce((sum, entry) => sum + series[entry][i]!, 0), 0);
  }
  const created = Math.max(...LEDGER.filter((entry) => entry.startsWith("loss")).map((e) => largestFall(series[e])));
  return { times, series, gain: 1.2, imbalance: 6, created, moved: 3700 };
}

/** Largest fall of a running total below what it was before. */
function largestFall(total: Float32Array): number {
  let [top, fall] = [0, 0];
  for (const value of total) {
    top = Math.max(top, value);
    fall = Math.max(fall, top - value);
  }
  return fall;
}
