import type { PlotFrame } from "./plotFrame.ts";

/** The largest value of a trace, at its place on the plot [px]. */
export interface PeakMark {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  /** [s] */
  readonly time: number;
  readonly text: string;
  readonly colour: string;
  /** The trace is highlighted, so its peak has words however low it is. */
  readonly pointedOut: boolean;
  /** Another trace is highlighted. */
  readonly faded: boolean;
}

/** Height of a peak's words and their distance from its mark [px]. */
export const PEAK_WORDS_SIZE = { height: 16, gap: 7 };
/** Peaks lower than this share of the axis keep their mark but not their words [-]. */
const LEAST_WORDED_SHARE = 0.2;

/** Which peaks have room for words, and on which side of them: highest first. */
export function wordedPeaks(
  peaks: readonly PeakMark[],
  frame: Pick<PlotFrame, "width" | "height">,
  widthOf: (text: string) => number,
): ReadonlyMap<string, "left" | "right"> {
  const taken: { left: number; right: number; y: number; words: string }[] = [];
  const worded = new Map<string, "left" | "right">();
  const wanted = peaks.filter((peak) => peak.pointedOut || peak.y < frame.height * (1 - LEAST_WORDED_SHARE));
  for (const peak of wanted.sort((a, b) => Number(b.pointedOut) - Number(a.pointedOut) || a.y - b.y)) {
    const words = `${peak.text} ${peak.colour}`;
    // Both ends of a line often peak alike: once is enough.
    if (taken.some((other) => other.words === words && Math.abs(other.y - peak.y) < PEAK_WORDS_SIZE.height)) continue;
    const width = widthOf(peak.text) + PEAK_WORDS_SIZE.gap + 4;
    for (const side of ["right", "left"] as const) {
      const left = side === "right" ? peak.x : peak.x - width;
      const box = { left, right: left + width, y: peak.y, words };
      const free = taken.every(
        (other) =>
          box.right <= other.left || box.left >= other.right || Math.abs(box.y - other.y) >= PEAK_WORDS_SIZE.height,
      );
      if (!free || box.left < 0 || box.right > frame.width) continue;
      taken.push(box);
      worded.set(peak.key, side);
      break;
    }
  }
  return worded;
}

/** How near to a mark a press counts as that mark [px]. */
const PRESS_REACH = 12;

/** Time of the peak at which a press at (x, y) aims; null if there is none near [s]. */
export function peakUnder(peaks: readonly PeakMark[], x: number, y: number): number | null {
  let best: { time: number; distance: number } | null = null;
  for (const peak of peaks) {
    const distance = Math.hypot(peak.x - x, peak.y - y);
    if (distance <= PRESS_REACH && (best === null || distance < best.distance)) best = { time: peak.time, distance };
  }
  return best?.time ?? null;
}
