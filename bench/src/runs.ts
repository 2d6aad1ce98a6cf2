/** What the tables show, measured wherever this runs: in Node or in a browser's worker. */
import {
  BareLine,
  type LineKernel,
  type Material,
  type Problem,
  resultOf,
  Simulation,
  typescriptKernel,
  wasmKernel,
} from "@secondline/engine";
import { checksum, QuietTime } from "./measure.ts";

export type KernelName = LineKernel["name"];
export const KERNELS: readonly KernelName[] = ["typescript", "wasm"];

/**
 * Steps in a slice. A browser's clock ticks only every 0.1 ms, and the least of many rounded times would lean to the low side:
 * there slices are long.
 */
let slice = 250;
export function useLongSlices(): void {
  slice = 8000;
}

const makers: Record<KernelName, (size: number) => LineKernel> = {
  typescript: typescriptKernel,
  wasm: (size) => {
    const kernel = wasmKernel(size);
    if (!kernel) throw new Error("no WebAssembly with vectors here");
    return kernel;
  },
};

/** Times of one whole problem, from the problem to the recording. */
export interface RunTimes {
  readonly name: string;
  readonly kernel: KernelName;
  readonly elements: number;
  readonly steps: number;
  /** Mesh, equilibrium and everything made ready [ms]; the first time, before anything is compiled, and the least. */
  readonly firstBuild: number;
  readonly build: number;
  /** All steps [ms]. */
  readonly run: number;
  /** Peaks and the recording [ms]. */
  readonly result: number;
  readonly total: number;
  /** Simulated time over `total` [-]. */
  readonly realTime: number;
  /** `run` over elements and steps [ns]. */
  readonly perElementStep: number;
  readonly checksum: string;
  /** Of all that a recording holds [bytes]. */
  readonly memory: number;
}

export function timeRun(problem: Problem, kernel: KernelName, rounds: number, size?: number): RunTimes {
  const [build, run, result] = [new QuietTime(), new QuietTime(), new QuietTime()];
  const options = { kernel: makers[kernel], ...(size === undefined ? {} : { size }) };
  let firstBuild = Number.NaN;
  let last: { simulation: Simulation; outcome: ReturnType<typeof resultOf> } | undefined;
  for (let round = 0; round < rounds; round++) {
    for (const time of [build, run, result]) time.begin();
    const simulation = build.slice(() => new Simulation(problem, options));
    if (round === 0) firstBuild = build.total;
    while (simulation.status === "running") run.slice(() => simulation.advance(slice));
    last = { simulation, outcome: result.slice(() => resultOf(simulation)) };
  }
  const { simulation, outcome } = last!;
  if (!outcome.ok) throw new Error(`${problem.name}: ${outcome.message}`);
  const { mesh, duration, signals, walkerHeight } = outcome.recording;
  const total = build.total + run.total + result.total;
  return {
    name: problem.name,
    kernel,
    elements: mesh.elements,
    steps: simulation.steps,
    firstBuild,
    build: build.total,
    run: run.total,
    result: result.total,
    total,
    realTime: (1000 * duration) / total,
    perElementStep: (1e6 * run.total) / mesh.elements / simulation.steps,
    checksum: checksum([...Object.values(signals), walkerHeight]),
    memory: bytesOf(outcome.recording),
  };
}

/** Bytes of all array buffers in a value, each counted once. */
function bytesOf(value: unknown, seen = new Set<ArrayBufferLike>()): number {
  if (ArrayBuffer.isView(value)) {
    const { buffer } = value;
    const size = seen.has(buffer) ? 0 : buffer.byteLength;
    seen.add(buffer);
    return size;
  }
  if (typeof value !== "object" || value === null) return 0;
  return Object.values(value).reduce((sum: number, part) => sum + bytesOf(part, seen), 0);
}

export interface LineTimes {
  readonly kernel: KernelName;
  readonly branches: number;
  readonly curve: "straight" | "table";
  readonly elements: number;
  readonly perElementStep: number;
  readonly checksum: string;
}

/** A line by itself, plucked: the kernel and next to nothing else. */
export function timeLine(material: Material, elements: number, kernel: KernelName, rounds: number): LineTimes {
  const total = 8000;
  const time = new QuietTime();
  let line: BareLine | undefined;
  for (let round = 0; round < rounds; round++) {
    time.begin();
    line = new BareLine({ make: { material }, length: elements / 2, elements, kernel: makers[kernel] });
    line.lay([0, 0, 0], [(elements / 2) * 1.02, 0, 0]);
    line.push(elements >> 1, [0, 3, 5]);
    for (let done = 0; done < total; done += slice) time.slice(() => line!.advance(slice));
  }
  const state = Float64Array.from({ length: line!.nodes }, (_, i) => line!.position(i)[2]);
  return {
    kernel,
    branches: material.branches.length,
    curve: material.curve.length > 2 ? "table" : "straight",
    elements,
    perElementStep: (1e6 * time.total) / (total * elements),
    checksum: checksum([state]),
  };
}

export interface PlainTimes {
  readonly elements: number;
  readonly time: number;
  readonly peak: number;
}

/** A plain line with a mass in its middle that falls with it from the straight: seconds, and peak tension at an end. */
export function timePlainLine(material: Material, elements: number, seconds: number, rounds: number): PlainTimes {
  const time = new QuietTime();
  let peak = 0;
  for (let round = 0; round < rounds; round++) {
    time.begin();
    const line = time.slice(() => {
      const made = new BareLine({
        make: { material },
        length: 60,
        elements,
        masses: [{ node: elements >> 1, mass: 80 }],
        stepShare: 0.9,
      });
      made.lay([0, 0, 0], [60.9, 0, 0]);
      return made;
    });
    peak = 0;
    while (line.time < seconds) {
      time.slice(() => {
        for (let k = 0; k < slice; k += 10) {
          line.advance(10);
          peak = Math.max(peak, line.tension(0));
        }
      });
    }
  }
  return { elements, time: time.total, peak };
}
