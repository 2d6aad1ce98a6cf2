/** Energy accounted for where lines whip, go slack and snap taut, and where joints lie close together. */
import { describe, expect, it } from "vitest";
import { type Problem, resultOf, startRun } from "../src/index.ts";
import { CUT, run, webbing } from "./rigs.ts";

/** What a ledger may miss, as a share of the energy moved. */
const BALANCE = 1.5e-4;

function ledgerOf(problem: Problem) {
  const started = startRun(problem, { accuracy: "quick", stepShare: 1 });
  if (!started.ok) throw new Error(started.message);
  started.run.advance(Number.POSITIVE_INFINITY);
  const result = resultOf(started.run);
  if (!result.ok) throw new Error(result.message);
  const { imbalance, created, moved } = result.recording.energy;
  return { imbalance: imbalance / moved, created: created / moved };
}

describe("the energy of a cut rig", () => {
  it("is accounted for while ends whip and the backup snaps taut", () => {
    const { imbalance, created } = ledgerOf(CUT);
    expect(imbalance).toBeLessThan(BALANCE);
    expect(created).toBeLessThan(BALANCE);
  });

  it("is accounted for with a tape right beside a connection: a node that both hold has its mass once", () => {
    const [{ at }] = CUT.backup!.connections as [{ at: number }];
    const taped = { ...CUT, backup: { ...CUT.backup!, tapes: [{ at: at + 0.002, strength: 300 }] } };
    const { imbalance, created } = ledgerOf(taped);
    expect(imbalance).toBeLessThan(BALANCE);
    expect(created).toBeLessThan(BALANCE);
  });
});

describe("a rig at rest", () => {
  it.each([20, 60])("of %f m with the walker hanging in the middle stays there, and its energy balances", (span) => {
    const { cut: _, backup: __, ...still } = CUT;
    const walker = { mass: 80, at: 0.5, tieIn: 1, lateral: 0 };
    for (const strain of [0.04, 0.01]) {
      const main = { pretension: 2500, material: webbing(0.04, strain) };
      const { energy } = run({ ...still, span, main, walker, ring: { ...still.ring, friction: 0 }, duration: 10 });
      expect(Math.max(energy.imbalance, energy.created)).toBeLessThan(1e-6);
      // A hundredth of the walker's weight over a centimetre.
      expect(energy.moved).toBeCloseTo(7.845, 3);
    }
  });
});
