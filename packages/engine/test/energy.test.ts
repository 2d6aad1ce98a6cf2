/** Energy accounted for where lines whip, go slack and snap taut, and where joints lie close together. */
import { describe, expect, it } from "vitest";
import { type Problem, resultOf, startRun } from "../src/index.ts";
import { CUT } from "./rigs.ts";

/** What a ledger may miss, as a share of the energy moved. */
const BALANCE = 1e-4;

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
