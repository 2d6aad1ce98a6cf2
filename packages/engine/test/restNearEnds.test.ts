import { describe, expect, it } from "vitest";
import { type Problem, resultOf, startRun } from "../src/index.ts";
import { CUT } from "./rigs.ts";

/** Shares of the line from its ends, the nearest well within the first element of the coarse mesh. */
const PLACES = [0.004, 0.01, 0.02, 0.05, 0.1];
const BOTH_ENDS = [...PLACES, ...PLACES.map((place) => 1 - place)];
const { cut: _, ...STILL } = CUT;

function begin(problem: Problem) {
  const started = startRun(problem, { accuracy: "quick" });
  if (!started.ok) throw new Error(started.message);
  return started.run;
}

describe("the rest to start from, with the walker close to an anchor", () => {
  for (const at of BOTH_ENDS) {
    const walker = { ...CUT.walker, at };

    it(`is found of one who stands at ${at} of the line, and stays`, () => {
      const run = begin({ ...STILL, start: "standing", letGo: 100, walker, duration: 0.05 });
      const { base, pitch } = run.model.main;
      const before = run.memory.slice(base, base + 3 * pitch);
      run.advance(Number.POSITIVE_INFINITY);
      expect(run.status).toBe("done");
      const moved = before.map((place, i) => Math.abs(run.memory[base + i]! - place));
      // A hundredth of the ring's clearance.
      expect(Math.max(...moved)).toBeLessThan(2.5e-4);
    });

    it(`is found of one who hangs at ${at} of the line, whose ring then slides`, () => {
      const run = begin({ ...STILL, walker, duration: 0.5 });
      run.advance(Number.POSITIVE_INFINITY);
      expect(resultOf(run)).toMatchObject({ ok: true });
    });
  }
});
