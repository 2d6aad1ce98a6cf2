/**
 * The one clock that every view of a run follows: scene, traces, read-outs. It knows no React and no drawing.
 * Times are seconds of the simulated run, from 0 to its duration; `speed` is simulated seconds per second of the viewer.
 */

/** Playback speeds on offer, slowest first [-]. */
export const SPEEDS = [1 / 50, 1 / 20, 1 / 10, 1 / 4, 1 / 2, 1] as const;
export type Speed = (typeof SPEEDS)[number];

/** How far `seekBy` moves [s]: to the sample, by eye, across the run. */
export const SEEK_SIZES = { fine: 0.001, medium: 0.05, coarse: 0.5 } as const;
export type SeekSize = keyof typeof SEEK_SIZES;
export type Direction = -1 | 1;

export interface LoopRange {
  /** [s] */
  readonly from: number;
  /** [s] */
  readonly to: number;
}

/** What the clock shows at one moment. A new object whenever anything changed, the same object otherwise. */
export interface ClockState {
  /** [s] */
  readonly time: number;
  /** [s] */
  readonly duration: number;
  /** Length of one step of `stepFrame`, the same at every speed [s]. */
  readonly frameStep: number;
  readonly playing: boolean;
  readonly speed: Speed;
  /** Playback repeats this range; null: it runs to the end and stops. */
  readonly loop: LoopRange | null;
}

export interface PlaybackClock {
  readonly getSnapshot: () => ClockState;
  /** Calls `listener` after every change; returns what ends the subscription. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Moves to `time` [s], clamped to the run. */
  readonly seek: (time: number) => void;
  readonly seekBy: (size: SeekSize, direction: Direction) => void;
  /** Pauses and moves to the neighbouring frame, so that a step there and a step back end on the same frame. */
  readonly stepFrame: (direction: Direction) => void;
  /** Starts; from the beginning (or the start of the loop) when the time stands at the end. */
  readonly play: () => void;
  readonly pause: () => void;
  readonly toggle: () => void;
  readonly setSpeed: (speed: Speed) => void;
  /** Range clamped to the run; an empty one or null ends the loop. */
  readonly setLoop: (loop: LoopRange | null) => void;
  /** Takes over another run's duration and frame step; time and loop are clamped to it. */
  readonly setRun: (run: { readonly duration: number; readonly frameStep?: number }) => void;
  /** Advances a playing clock by `seconds` of the viewer's time [s]. */
  readonly tick: (seconds: number) => void;
  /** Stops and asks for no further animation frame. */
  readonly dispose: () => void;
}

/** Where animation frames come from. */
export interface FrameSource {
  readonly request: (callback: (milliseconds: number) => void) => number;
  readonly cancel: (handle: number) => void;
}

export interface ClockOptions {
  /** Length of the run [s]. */
  readonly duration: number;
  /** Length of a frame step [s]; normally 1 / recording.frames.rate. */
  readonly frameStep?: number;
  readonly speed?: Speed;
  /** Drives the clock; without it, only calls of `tick` drive the clock. */
  readonly frames?: FrameSource | null;
}

const DEFAULT_FRAME_STEP = 1 / 200;
/** A longer gap between two animation frames (hidden tab, a stall) is not played through [s]. */
const LONGEST_TICK = 0.1;

export function createPlaybackClock(options: ClockOptions): PlaybackClock {
  const frames = options.frames ?? null;
  const listeners = new Set<() => void>();
  let state: ClockState = {
    time: 0,
    duration: checkedLength(options.duration, "duration"),
    frameStep: checkedLength(options.frameStep ?? DEFAULT_FRAME_STEP, "frameStep"),
    playing: false,
    speed: options.speed ?? 1 / 10,
    loop: null,
  };
  let request: number | null = null;
  let lastFrame: number | null = null;

  function change(patch: Partial<ClockState>): void {
    const keys = Object.keys(patch) as (keyof ClockState)[];
    if (keys.every((key) => Object.is(patch[key], state[key]))) return;
    state = { ...state, ...patch };
    if (state.playing) drive();
    else rest();
    for (const listener of [...listeners]) listener();
  }

  function onFrame(milliseconds: number): void {
    request = null;
    const elapsed = lastFrame === null ? 0 : Math.min(Math.max((milliseconds - lastFrame) / 1000, 0), LONGEST_TICK);
    lastFrame = milliseconds;
    tick(elapsed);
    if (state.playing) drive();
  }

  function drive(): void {
    if (frames !== null && request === null) request = frames.request(onFrame);
  }

  function rest(): void {
    if (frames !== null && request !== null) frames.cancel(request);
    request = null;
    lastFrame = null;
  }

  function seek(time: number): void {
    if (!Number.isNaN(time)) change({ time: clamp(time, state.duration) });
  }

  function tick(seconds: number): void {
    if (!state.playing || !(seconds > 0)) return;
    change(advance(state, seconds * state.speed));
  }

  function play(): void {
    const { duration, loop } = state;
    const end = loop?.to ?? duration;
    change({ playing: duration > 0, time: state.time >= end ? (loop?.from ?? 0) : state.time });
  }

  function pause(): void {
    change({ playing: false });
  }

  return {
    getSnapshot: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    seek,
    seekBy: (size, direction) => seek(state.time + direction * SEEK_SIZES[size]),
    stepFrame(direction) {
      change({ playing: false, time: clamp(neighbouringFrame(state, direction), state.duration) });
    },
    play,
    pause,
    toggle: () => (state.playing ? pause() : play()),
    setSpeed: (speed) => change({ speed }),
    setLoop: (loop) => change({ loop: clampLoop(loop, state.duration) }),
    setRun(run) {
      const duration = checkedLength(run.duration, "duration");
      change({
        duration,
        frameStep: checkedLength(run.frameStep ?? state.frameStep, "frameStep"),
        time: clamp(state.time, duration),
        loop: clampLoop(state.loop, duration),
        playing: state.playing && duration > 0,
      });
    },
    tick,
    dispose() {
      change({ playing: false });
      rest();
      listeners.clear();
    },
  };
}

/** Time and playing after `step` simulated seconds: around the loop, or to the end and stop. */
function advance(state: ClockState, step: number): Partial<ClockState> {
  const { time, duration, loop } = state;
  const next = time + step;
  if (loop === null) return next >= duration ? { time: duration, playing: false } : { time: next };
  if (next < loop.to) return { time: next };
  // From behind the loop (after a seek) playback enters it at its start.
  const beyond = time > loop.to ? 0 : (next - loop.to) % (loop.to - loop.from);
  return { time: loop.from + beyond };
}

/** Frames lie on multiples of the frame step; a time between two frames moves to the nearer one in that direction. */
function neighbouringFrame(state: ClockState, direction: Direction): number {
  const at = state.time / state.frameStep;
  // Times that are a frame but for rounding must step to the next one, not to themselves.
  const tolerance = 1e-6;
  const frame = direction > 0 ? Math.floor(at + tolerance) + 1 : Math.ceil(at - tolerance) - 1;
  return frame * state.frameStep;
}

function clampLoop(loop: LoopRange | null, duration: number): LoopRange | null {
  if (loop === null) return null;
  const from = clamp(Math.min(loop.from, loop.to), duration);
  const to = clamp(Math.max(loop.from, loop.to), duration);
  return to > from ? { from, to } : null;
}

function clamp(time: number, duration: number): number {
  return Math.min(Math.max(time, 0), duration);
}

function checkedLength(value: number, name: string): number {
  if (!Number.isFinite(value) || value < 0 || (name === "frameStep" && value === 0)) {
    throw new RangeError(`playback clock: ${name} is ${value}; expected a finite length in seconds`);
  }
  return value;
}
