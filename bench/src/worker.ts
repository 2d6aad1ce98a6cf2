/** The kernel and run tables inside a browser's worker. */
import type { Material, Problem } from "@secondline/engine";
import { KERNELS, type LineTimes, type RunTimes, timeLine, timeRun, useLongSlices } from "./runs.ts";

export interface WorkerOrder {
  readonly problems: readonly Problem[];
  readonly materials: readonly Material[];
  readonly elements: number;
  readonly rounds: number;
}
export interface WorkerAnswer {
  readonly lines: readonly LineTimes[];
  readonly runs: readonly RunTimes[];
}

self.onmessage = ({ data }: MessageEvent<WorkerOrder>) => {
  const { problems, materials, elements, rounds } = data;
  useLongSlices();
  const answer: WorkerAnswer = {
    lines: materials.flatMap((material) => KERNELS.map((kernel) => timeLine(material, elements, kernel, rounds))),
    runs: problems.flatMap((problem) => KERNELS.map((kernel) => timeRun(problem, kernel, rounds))),
  };
  postMessage(answer);
};
