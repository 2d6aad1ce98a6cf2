import { describe, expect, it } from "vitest";
import { type Problem, startRun } from "../src/index.ts";
import { CUT, webbing } from "./rigs.ts";

/** Twice as quick as the main line's. */
const STIFF = webbing(0.04, 0.015);
const RIG: Problem = { ...CUT, span: 60, backup: { slack: 0.05, material: STIFF, connections: [{ at: 0.5 }] } };
const { cut: _, ...WHOLE } = RIG;

/** How much longer the backup's elements are than the main line's size. */
function backupScale(problem: Problem): number {
  const started = startRun({ ...problem, duration: 0.001 });
  if (!started.ok) throw new Error(started.message);
  const { backup, size } = started.run.model;
  return Math.max(...backup!.lengths) / size;
}

describe("elements of a backup stiffer than the main line", () => {
  it("are longest where the main line stays whole, shorter where it is cut, shortest where it may part anywhere", () => {
    const whole = backupScale(WHOLE);
    const cut = backupScale(RIG);
    const parting = backupScale({ ...WHOLE, main: { ...RIG.main, strength: 5000 } });
    expect(whole).toBeGreaterThan(1.8);
    expect(cut).toBeGreaterThan(1.4);
    expect(cut).toBeLessThan(1.6);
    expect(parting).toBeLessThan(1.3);
  });

  it("are short where a short bay catches", () => {
    const bays = Array.from({ length: 5 }, (__, k) => ({ at: (k + 1) / 6 }));
    expect(backupScale({ ...RIG, backup: { ...RIG.backup!, connections: bays } })).toBeLessThan(1.3);
  });

  it("are as long as the main line's where the backup is softer", () => {
    const soft = { ...RIG.backup!, material: webbing(0.06, 0.1) };
    expect(backupScale({ ...RIG, backup: soft })).toBeLessThan(1.1);
  });
});
