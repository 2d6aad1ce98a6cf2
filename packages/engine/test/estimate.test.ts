import { describe, expect, it } from "vitest";
import { simulateWithEstimate, uncertaintyOf } from "../src/index.ts";
import { CUT, FALL, run } from "./rigs.ts";

describe("the estimate from a second mesh", () => {
  const estimated = simulateWithEstimate(FALL, { accuracy: "quick" });
  if (!estimated.ok) throw new Error(estimated.message);
  const { recording, uncertainty } = estimated;

  it("leaves the run as it is without one", () => {
    expect(recording.peaks).toEqual(run(FALL).peaks);
    expect(uncertainty.sizes[1] / uncertainty.sizes[0]).toBeCloseTo(0.5, 1);
  });

  it("covers the distance to a mesh eight times as fine", () => {
    const fine = run(FALL, { size: recording.mesh.size / 8 });
    expect(Math.abs(fine.walker.drop - recording.walker.drop)).toBeLessThan(uncertainty.drop + 0.005);
    expect(Math.abs(fine.standing.sag - recording.standing.sag)).toBeLessThan(uncertainty.standing.sag + 1e-4);
    for (const name of ["leash", "mainA", "mainB"] as const) {
      const off = Math.abs(fine.peaks[name].cfc60 - recording.peaks[name].cfc60);
      // A ± from two meshes is an estimate, not a bound.
      expect(off).toBeLessThan(2 * uncertainty.peaks[name] + 0.02 * fine.peaks[name].cfc60);
    }
  });

  it("is a share of the peak, not a multiple of it", () => {
    expect(uncertainty.peaks.leash).toBeLessThan(0.2 * recording.peaks.leash.cfc60);
    expect(uncertainty.drop).toBeLessThan(0.05 * recording.walker.drop);
    expect(uncertainty.sameBreaks).toBe(true);
  });

  it("says when the meshes do not agree on what parts", () => {
    const marginal = run({ ...CUT, backup: { ...CUT.backup!, connections: [{ at: 0.5, strength: 1000 }] } });
    const finer = run(CUT, { size: marginal.mesh.size / 2 });
    expect(uncertaintyOf(marginal, finer).sameBreaks).toBe(false);
  });

  it("refuses a second mesh that is not finer", () => {
    expect(() => uncertaintyOf(recording, recording)).toThrow(/finer/);
  });

  it("passes on what is wrong with a run", () => {
    const wild = simulateWithEstimate(FALL, { accuracy: "quick", stepShare: 1.6 });
    expect(wild.ok).toBe(false);
  });
});
