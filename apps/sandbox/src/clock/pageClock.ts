import { type ClockOptions, createPlaybackClock, type FrameSource, type PlaybackClock } from "@secondline/workbench";

/** A clock that the page's animation frames drive. */
export const pageClock = (options: Omit<ClockOptions, "frames">): PlaybackClock =>
  createPlaybackClock({ ...options, frames: animationFrames() });

function animationFrames(): FrameSource | null {
  if (typeof requestAnimationFrame !== "function") return null;
  return {
    request: (callback) => requestAnimationFrame(callback),
    cancel: (handle) => cancelAnimationFrame(handle),
  };
}
