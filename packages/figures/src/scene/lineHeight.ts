import type { Recording } from "@secondline/engine";
import { createLiveFrame } from "./liveFrame.ts";

/** Height of the main line at the beginning of a run, at a distance from anchor A; 0 without a run [m]. */
export function lineHeight(recording: Recording | undefined): (x: number) => number {
  if (!recording) return () => 0;
  const { positions, mainNodes } = createLiveFrame(recording);
  return (x) => {
    for (let i = 1; i < mainNodes; i++) {
      const [x0, z0] = [positions[3 * i - 3]!, positions[3 * i - 1]!];
      const [x1, z1] = [positions[3 * i]!, positions[3 * i + 2]!];
      if (x <= x1 && x1 > x0) return z0 + ((z1 - z0) * (x - x0)) / (x1 - x0);
    }
    return positions[3 * mainNodes - 1] ?? 0;
  };
}
