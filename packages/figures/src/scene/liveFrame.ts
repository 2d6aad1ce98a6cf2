/**
 * The recording at one moment, interpolated between frames into buffers made once per recording. All drawing code reads from
 * it. It allocates nothing while time runs.
 */
import { type Recording, SIGNALS, type SignalName } from "@secondline/engine";
import { type FreeEnds, freeEndsOf } from "./shape/freeEnds.ts";
import type { Gap } from "./shape/gap.ts";
import { createPose, poseWalker, type WalkerPose } from "./shape/walkerPose.ts";

export interface LiveFrame {
  readonly recording: Recording;
  time: number;
  readonly mainNodes: number;
  readonly backupNodes: number;
  /** Main, backup, ring, walker; xyz each [m]. */
  readonly positions: Float32Array;
  /** Main elements, then backup elements [N]; NaN: parted. */
  readonly tensions: Float32Array;
  /** Offsets of ring and walker in `positions`. */
  readonly ring: number;
  readonly walker: number;
  /** Fractions of the ring on main and backup; −1: off. */
  readonly ringAt: Float32Array;
  readonly forces: Record<SignalName, number>;
  /** Lowest height of the tie-in so far [m]. */
  lowest: number;
  readonly pose: WalkerPose;
  /** Undefined where no ground is drawn. */
  readonly freeEnds: FreeEnds | undefined;
}

/** Half of the window over which a force on screen is averaged: the eye cannot read the ringing [s]. */
const FORCE_WINDOW = 0.004;

/** `gap`: the drawn ground; free ends are kept out of it. */
export function createLiveFrame(recording: Recording, gap?: Gap): LiveFrame {
  const { mainNodes, backupNodes, count, tensions } = recording.frames;
  const live: LiveFrame = {
    recording,
    time: -1,
    mainNodes,
    backupNodes,
    positions: new Float32Array((mainNodes + backupNodes + 2) * 3),
    tensions: new Float32Array(Math.floor(tensions.length / Math.max(count, 1))),
    ring: (mainNodes + backupNodes) * 3,
    walker: (mainNodes + backupNodes + 1) * 3,
    ringAt: new Float32Array(2),
    forces: { leash: 0, mainA: 0, mainB: 0, backupA: 0, backupB: 0, ringOnMain: 0, ringOnBackup: 0 },
    lowest: recording.walker.start,
    pose: createPose(),
    freeEnds: gap && freeEndsOf(recording, gap),
  };
  sampleFrame(live, 0);
  return live;
}

/** Fills `live` with the moment `time` [s]. */
export function sampleFrame(live: LiveFrame, time: number): void {
  if (time === live.time) return;
  const { frames } = live.recording;
  const last = Math.max(frames.count - 1, 0);
  const at = Math.min(Math.max(time * frames.rate, 0), last);
  const before = Math.floor(at);
  const after = Math.min(before + 1, last);
  const share = at - before;
  blendFrames(frames.positions, before, after, share, live.positions);
  blendTensions(frames.tensions, before, after, share, live.tensions);
  for (let k = 0; k < 2; k++) {
    const [a, b] = [frames.ringAt[2 * before + k]!, frames.ringAt[2 * after + k]!];
    live.ringAt[k] = a < 0 || b < 0 ? a : a + share * (b - a);
  }
  for (let i = 0; i < SIGNALS.length; i++) live.forces[SIGNALS[i]!] = forceAt(live.recording, SIGNALS[i]!, time);
  live.lowest = lowestUntil(live.recording, time);
  live.time = time;
  live.freeEnds?.keepOut(live);
  poseWalker(live.pose, live, velocity(live, before, after));
}

const walkerVelocity = new Float64Array(3);
function velocity(live: LiveFrame, before: number, after: number): Float64Array {
  const { frames } = live.recording;
  const stride = live.positions.length;
  const from = Math.max(before - 1, 0);
  const seconds = (after - from) / frames.rate;
  for (let c = 0; c < 3; c++) {
    const moved =
      frames.positions[after * stride + live.walker + c]! - frames.positions[from * stride + live.walker + c]!;
    walkerVelocity[c] = seconds > 0 ? moved / seconds : 0;
  }
  return walkerVelocity;
}

function blendFrames(all: Float32Array, before: number, after: number, share: number, out: Float32Array): void {
  const n = out.length;
  for (let i = 0; i < n; i++) {
    const a = all[before * n + i]!;
    out[i] = a + share * (all[after * n + i]! - a);
  }
}

/** An element that is parted in the later frame keeps its last tension until that frame is reached. */
function blendTensions(all: Float32Array, before: number, after: number, share: number, out: Float32Array): void {
  const n = out.length;
  for (let i = 0; i < n; i++) {
    const a = all[before * n + i]!;
    const b = all[after * n + i]!;
    out[i] = Number.isNaN(b) ? a : a + share * (b - a);
  }
}

function forceAt(recording: Recording, name: SignalName, time: number): number {
  const signal = recording.signals[name];
  const from = Math.max(Math.round((time - FORCE_WINDOW) * recording.rate), 0);
  const to = Math.min(Math.round((time + FORCE_WINDOW) * recording.rate), signal.length - 1);
  if (to < from) return signal[signal.length - 1] ?? 0;
  let sum = 0;
  for (let i = from; i <= to; i++) sum += signal[i]!;
  return sum / (to - from + 1);
}

function lowestUntil(recording: Recording, time: number): number {
  if (time >= recording.walker.lowestTime) return recording.walker.lowest;
  // The heights are searched at 1 kHz: finer than the eye, cheap enough for every drawn frame.
  const stride = Math.max(1, Math.round(recording.rate / 1000));
  const end = Math.min(Math.round(time * recording.rate), recording.walkerHeight.length - 1);
  let lowest = recording.walker.start;
  for (let i = 0; i <= end; i += stride) lowest = Math.min(lowest, recording.walkerHeight[i]!);
  return lowest;
}
