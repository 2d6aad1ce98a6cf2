import { describe, expect, it } from "vitest";
import { doubtful, plusMinus, richardson, sameBreaks, uncertaintyOf } from "../src/index.ts";
import { CUT, FALL, run } from "./rigs.ts";

describe("the distance from an endlessly fine mesh", () => {
  it("is found exactly of a quantity that errs in proportion to the mesh, from a finer one or a coarser", () => {
    const at = (size: number) => 5000 + 300 * size;
    expect(richardson(at(0.5), at(0.25), 2)).toBeCloseTo(300 * 0.5, 9);
    expect(richardson(at(0.25), at(0.5), 0.5)).toBeCloseTo(300 * 0.25, 9);
  });

  it("is not told from two runs of one mesh", () => {
    for (const ratio of [1, 1.04, 0.97, 0, Number.NaN]) expect(() => richardson(1, 2, ratio)).toThrow(/say nothing/);
  });
});

describe("the ± with a third run that differs by chance alone", () => {
  it("is not extrapolated where chance is what sets the meshes apart, and covers all three", () => {
    expect(plusMinus(3600, 2000, 2, 2400)).toBe(1600);
    expect(plusMinus(3000, 2900, 2, 3400)).toBe(500);
  });

  it("is Richardson's distance where chance is small, and never less than chance", () => {
    expect(plusMinus(3600, 3000, 2, 3590)).toBe(1200);
    expect(plusMinus(3000, 3001, 0.5, 3000.4)).toBe(1);
    expect(plusMinus(3600, 3000, 2)).toBe(1200);
  });

  it("is asked for when meshes differ by more than a tenth of the value", () => {
    expect(doubtful(1000, 1101)).toBe(true);
    expect(doubtful(1000, 901)).toBe(false);
  });
});

describe("the estimate from a second mesh", () => {
  const recording = run(FALL);
  const finer = run(FALL, { size: recording.mesh.size / 2 });
  const uncertainty = uncertaintyOf(recording, finer);

  it("names both meshes, and refuses a second that is the first", () => {
    expect(uncertainty.sizes).toEqual([recording.mesh.size, finer.mesh.size]);
    expect(() => uncertaintyOf(recording, recording)).toThrow(/say nothing/);
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

  it("gives the finer of two meshes the smaller ±, by their difference", () => {
    const turned = uncertaintyOf(finer, recording);
    const difference = Math.abs(finer.peaks.leash.cfc60 - recording.peaks.leash.cfc60);
    expect(uncertainty.peaks.leash - turned.peaks.leash).toBeCloseTo(difference, 6);
  });

  it("leaves tapes aside, which are made to part", () => {
    const taped = run({ ...CUT, backup: { ...CUT.backup!, tapes: [{ at: 0.3, strength: 300 }] } });
    expect(taped.events.some(({ kind, part }) => kind === "break" && part === "tape")).toBe(true);
    const untaped = { ...taped, events: taped.events.filter(({ part }) => part !== "tape") };
    expect(sameBreaks(taped, untaped)).toBe(true);
  });

  it("says when the meshes do not agree on what parts", () => {
    const marginal = run({ ...CUT, backup: { ...CUT.backup!, connections: [{ at: 0.5, strength: 1000 }] } });
    const holding = run(CUT, { size: marginal.mesh.size / 2 });
    expect(uncertaintyOf(marginal, holding).sameBreaks).toBe(false);
  });
});
