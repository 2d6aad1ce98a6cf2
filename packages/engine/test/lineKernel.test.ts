import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it, vi } from "vitest";
import { type LineKernel, typescriptKernel } from "../src/kernel/lineKernel.ts";
import { fastestKernel, wasmKernel } from "../src/kernel/lineKernelWasm.ts";
import { COLUMN, COLUMNS } from "../src/kernel/lineLayout.ts";
import type { Material, Problem } from "../src/problem.ts";
import { Simulation } from "../src/run/simulation.ts";

const polyester: Material = {
  mass: 0.06,
  curve: [
    [0, 0],
    [0.04, 6000],
  ],
  branches: [
    [15000, 0.003],
    [15000, 0.03],
    [15000, 0.3],
    [15000, 3],
  ],
};
const curved: Material = {
  mass: 0.05,
  curve: [
    [0, 0],
    [0.02, 800],
    [0.06, 4000],
    [0.12, 14000],
  ],
  branches: [
    [8000, 0.004],
    [6000, 0.05],
  ],
};
const sixBranches: Material = {
  ...polyester,
  branches: [...polyester.branches, [5000, 0.0015], [4000, 0.8]],
};
const leashRope: Material = {
  mass: 0.08,
  curve: [
    [0, 0],
    [0.3, 6000],
  ],
  branches: [
    [4000, 0.003],
    [4000, 0.3],
  ],
};
const fall: Problem = {
  name: "fall",
  span: 25.3,
  rise: 1.5,
  main: { pretension: 2000, material: polyester },
  leash: { length: 1.4, material: leashRope },
  ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
  walker: { mass: 80, at: 0.37, tieIn: 1, lateral: 0.2 },
  start: "standing",
  letGo: 0.2,
  duration: 1.1,
};
const backup = { slack: 0.05, material: polyester, connections: [{ at: 0.25 }, { at: 0.6, strength: 1500 }] };
const cases: Record<string, Problem> = {
  "a fall": fall,
  "a curved slow-pull law": { ...fall, main: { pretension: 2000, material: curved } },
  "more than four branches": { ...fall, main: { pretension: 2000, material: sixBranches } },
  "no branches at all": {
    ...fall,
    main: { pretension: 2000, material: { ...polyester, branches: [] } },
    duration: 0.6,
  },
  "sections of different webbing": {
    ...fall,
    main: {
      pretension: 2000,
      sections: [
        { to: 0.31, material: curved },
        { to: 0.55, material: sixBranches },
        { to: 1, material: polyester },
      ],
    },
  },
  "a slack backup and a cut inside the main line": {
    ...fall,
    start: "hanging",
    backup,
    cut: { at: 0.2, time: 0.05 },
    duration: 1.5,
  },
  "elements that part": {
    ...fall,
    main: { pretension: 2000, material: polyester, strength: 3400 },
    backup: { ...backup, strength: 6000 },
    duration: 1.5,
  },
};

/** Everything that a run kept, and the state it ended in. */
function record(problem: Problem, kernel: (size: number) => LineKernel, size?: number) {
  const run = new Simulation(problem, { kernel, accuracy: "quick", ...(size === undefined ? {} : { size }) });
  run.advance(Number.POSITIVE_INFINITY);
  const { channels, positions, tensions, ringAt } = run.recorder;
  const { main, backup, memory: end } = run.model;
  const { status, steps, lowest, events } = run;
  const state = Float64Array.from(run.memory.subarray(0, end));
  // The vector kernel's own columns.
  for (const { base, pitch } of backup ? [main, backup] : [main])
    state.fill(0, base + COLUMN.N * pitch, base + COLUMNS * pitch);
  const elements = main.elements + (backup?.elements ?? 0);
  return {
    status,
    steps,
    lowest,
    events,
    elements,
    channels,
    positions,
    tensions,
    ringAt,
    energy: run.ledger.result(),
    peaks: run.recorder.elementPeaks().map(({ peak }) => peak),
    state,
  };
}
/** Fails unless all of both is the same to the last bit; large arrays are compared as bytes. */
function expectSame(one: unknown, other: unknown, what: string): void {
  if (ArrayBuffer.isView(one) && ArrayBuffer.isView(other)) {
    const bytes = (view: ArrayBufferView) => Buffer.from(view.buffer, view.byteOffset, view.byteLength);
    expect(bytes(one).equals(bytes(other)), what).toBe(true);
  } else if (typeof one === "object" && one !== null) {
    expect(Object.keys(other as object), what).toEqual(Object.keys(one));
    for (const [key, value] of Object.entries(one))
      expectSame(value, (other as typeof one)[key as never], `${what}.${key}`);
  } else expect(other, what).toBe(one);
}

const wasm = (size: number): LineKernel => {
  const kernel = wasmKernel(size);
  if (!kernel) throw new Error("no WebAssembly with vectors here");
  return kernel;
};

describe("the two kernels", () => {
  for (const [name, problem] of Object.entries(cases)) {
    it(`give the same bits for ${name}`, () => {
      const one = record(problem, typescriptKernel);
      const other = record(problem, wasm);
      expect(one.status).toBe("done");
      expect(one.steps).toBeGreaterThan(1000);
      expectSame(one, other, name);
    }, 60_000);
  }

  it("were compared on lines that did part", () => {
    const { events } = record(cases["elements that part"]!, wasm);
    expect(events.filter(({ kind, part }) => kind === "break" && part === "main")).not.toEqual([]);
  });

  it("run odd and even lines alike", () => {
    const elements = [0.9, 0.913, 0.95, 1.03].map((size) => {
      const one = record({ ...fall, duration: 0.3 }, typescriptKernel, size);
      expectSame(one, record({ ...fall, duration: 0.3 }, wasm, size), `size ${size}`);
      return one.elements;
    });
    expect(new Set(elements.map((count) => count % 2))).toEqual(new Set([0, 1]));
  });
});

describe("the kernel in WebAssembly", () => {
  it("is what a run uses when nothing else is asked for", () => {
    expect(fastestKernel(100).name).toBe("wasm");
  });

  it("gives way to the one in TypeScript where there is no WebAssembly, or none allowed", async () => {
    const forbidden = {
      validate: () => true,
      Module: class {
        constructor() {
          throw new Error("forbidden");
        }
      },
    };
    for (const platform of [undefined, { validate: () => false }, forbidden]) {
      vi.stubGlobal("WebAssembly", platform);
      vi.resetModules();
      const fresh = await import("../src/kernel/lineKernelWasm.ts");
      expect(fresh.fastestKernel(100).name).toBe("typescript");
      vi.unstubAllGlobals();
    }
  });

  it("was built from the source that is here", () => {
    const script = fileURLToPath(new URL("../../../scripts/build-wasm.mjs", import.meta.url));
    expect(execFileSync(process.execPath, [script, "--check"], { encoding: "utf8" })).toContain("up to date");
  }, 60_000);

  it("lets its memory go with the run that had it", () => {
    // Were they kept, so many memories would use up the address space that an engine has for them.
    for (let run = 0; run < 600; run++) expect(wasmKernel(20_000)?.memory.length).toBeGreaterThanOrEqual(20_000);
  }, 60_000);
});
