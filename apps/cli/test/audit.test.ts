/** What the command does when a run cannot be trusted; the failing run is put in its place, for none is known that fails. */
import type { Assessed, SearchOptions, SearchResult } from "@secondline/scenarios";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { check } from "../src/commands/check.ts";
import { demo } from "./support/command.ts";

/** One of the runs in that place fails its audit, whatever it gave. */
vi.mock(import("../src/study.ts"), async () => {
  const { executeRun, rigStrengths, search } = await import("@secondline/scenarios");
  const runStudy = async (assessed: Assessed, options: SearchOptions): Promise<SearchResult> => {
    const strengths = rigStrengths(assessed.rig, assessed.tests);
    const work = search(assessed, options, () => ({ whatIf: 0, parts: [] }));
    let step = work.next();
    while (!step.done) {
      const results = step.value.orders.map((order) => {
        if (order.event.at === 0.75) return { ok: false, trouble: { reason: "audit", detail: "3 % missing" } } as const;
        const run = executeRun(assessed.rig, strengths, order);
        let slice = run.next();
        while (!slice.done) slice = run.next();
        return slice.value;
      });
      step = work.next(results);
    }
    return step.value;
  };
  return { runStudy };
});

let [out, err] = ["", ""];
beforeEach(() => {
  [out, err] = ["", ""];
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    out += text;
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    err += text;
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
  process.exitCode = undefined;
});

it("leaves with 3 when a run failed its audit, says which, and never that the rig holds", async () => {
  const whatIf = ["fall@0.5", "fall@0.75"];
  await check(demo("sound-rig.json"), { whatIf, set: "full", accuracy: "quick" });
  expect(process.exitCode).toBe(3);
  expect(err).toMatch(/^Leash fall .* from anchor B: The run does not balance its own energy, .*3 % missing/);
  const text = out.replace(/\s+/g, " ");
  expect(text).toMatch(/from anchor B: not computed/);
  expect(text).toContain("One what-if could not be computed reliably. The verdict is incomplete");
  expect(text).not.toMatch(/● (Holds|holds)/);
});
