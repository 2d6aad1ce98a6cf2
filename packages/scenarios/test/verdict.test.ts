import { describe, expect, it } from "vitest";
import { cautions } from "../src/cautions.ts";
import { CAUTIONS } from "../src/index.ts";
import { firstToFail, judgedMargin, verdictOf } from "../src/margins.ts";
import type { PartOutcome } from "../src/outcome.ts";
import { lower, partPlace, verdictSentence } from "../src/sentence.ts";

describe("a part's verdict", () => {
  it("holds when it keeps the factor and a weak specimen holds the load", () => {
    expect(verdictOf(2.5, 1.8, 2, false)).toBe("holds");
  });
  it("is thin below the required factor", () => {
    expect(verdictOf(1.9, 1.5, 2, false)).toBe("thin");
  });
  it("is thin when one in twenty would not hold the load, however good the central value", () => {
    expect(verdictOf(2.5, 0.9, 2, false)).toBe("thin");
  });
  it("fails below the load, and whenever it gave way in a run", () => {
    expect(verdictOf(0.99, 0.5, 2, false)).toBe("fails");
    expect(verdictOf(1, 0.8, 2, true)).toBe("fails");
  });
});

const part = (id: string, margin: number, whatIf = 0): PartOutcome =>
  ({ id, name: id, margin, whatIf, load: 1, strength: margin }) as unknown as PartOutcome;

describe("first to fail", () => {
  it("is the part with the least margin", () => {
    expect(firstToFail([part("a", 3), part("b", 1.2), part("c", 2)], () => false).id).toBe("b");
  });
  it("is, of parts that gave way, the one that caused the others to", () => {
    expect(firstToFail([part("later", 1), part("cause", 1)], (id) => id === "cause").id).toBe("cause");
  });
});

describe("a load with a ±", () => {
  const unsure = (id: string, margin: number, loadUncertainty: number): PartOutcome =>
    ({ ...part(id, margin), loadUncertainty, verdict: "fails" }) as PartOutcome;

  it("is judged at its upper end, also when it says who goes first", () => {
    expect(judgedMargin(unsure("a", 1.1, 0.25))).toBeCloseTo(1.1 / 1.25, 12);
    expect(firstToFail([part("sure", 1.05), unsure("unsure", 1.1, 0.25)], () => false).id).toBe("unsure");
  });
  it("is told with its ±, never as a part that fails under less than it holds", () => {
    const first = { ...unsure("leash", 1.1, 1000), load: 10_000, strength: 10_500, margin: 1.05 };
    const facts = { first, parts: [first], verdict: "fails" as const, required: 2, incomplete: 0, allowance: 1 };
    const whatIfs = [
      { title: "Leash fall", ok: true, caught: true, broke: [], whatIf: { kind: "leashFall", at: 0.5 } },
    ] as const;
    expect(verdictSentence({ ...facts, whatIfs, rig: {} as never })).toContain("10.5 kN and gets 10 kN ± 1 kN");
  });
  it("never reads as keeping what is asked for when it does not", () => {
    const first = { ...part("leash", 2.2), verdict: "thin" } as PartOutcome;
    const facts = {
      first,
      parts: [first],
      verdict: "thin" as const,
      required: 2.25,
      incomplete: 0,
      allowance: 1,
      whatIfs: [],
    };
    expect(verdictSentence({ ...facts, rig: {} as never })).toContain("2.2 times its largest load; you require 2.3");
  });
});

describe("cautions", () => {
  const facts = {
    invented: false,
    failedWhatIfs: 0,
    unfoundedParts: 0,
    parts: 10,
    hasBackup: true,
    feetClearance: 20,
    endedOnGround: 0,
  };
  it("always begin with the general ones", () => {
    expect(cautions(facts).slice(0, CAUTIONS.length)).toEqual(CAUTIONS);
  });
  it("defer to inspection, makers, codes and practice", () => {
    expect(CAUTIONS.join(" ")).toMatch(/inspection.*makers' instructions.*codes.*qualified practice/);
  });
  it("say when a what-if could not be computed, nothing is known of the ground, or there is no backup", () => {
    expect(cautions({ ...facts, failedWhatIfs: 2 }).join(" ")).toContain("2 what-ifs could not be computed");
    const { feetClearance: _, ...groundless } = facts;
    expect(cautions(groundless).join(" ")).toContain("No ground was given");
    expect(cautions({ ...facts, feetClearance: 0.4 }).join(" ")).toContain("feet come within 0.4 m of the ground");
    expect(cautions({ ...facts, feetClearance: 0 }).join(" ")).toContain("feet reach the ground");
    expect(cautions({ ...facts, reduced: { run: 3, full: 40 } }).join(" ")).toContain("3 here, 40 in the full set");
    expect(cautions({ ...facts, coarse: true }).join(" ")).toContain("coarse mesh");
    expect(cautions({ ...facts, withoutUncertainty: ["Leash"] }).join(" ")).toContain(
      "failed, or other parts broke in it, for: Leash",
    );
    expect(cautions({ ...facts, endedOnGround: 1 }).join(" ")).toContain("One what-if ends on the ground");
    expect(cautions({ ...facts, hasBackup: false }).join(" ")).toContain("no backup");
    expect(cautions(facts).join(" ")).toContain("partly a matter of chance");
    expect(cautions({ ...facts, hasBackup: false }).join(" ")).not.toContain("partly a matter of chance");
  });
});

describe("words in a sentence", () => {
  it("begin small, but for names", () => {
    expect(lower("Leash fall in the middle")).toBe("leash fall in the middle");
    expect(lower("A frame")).toBe("A frame");
  });
  it("name the place where webbing is weakest", () => {
    const main = { ...part("main", 1), name: "Main line", weakest: { at: 3.04, reason: "clamp mark" } };
    expect(partPlace(main)).toBe("the main line at its clamp mark 3 m from A");
  });
});

describe("a load known to within ±", () => {
  it("is judged at its upper end, and shown as it is", async () => {
    const { Margins } = await import("../src/margins.ts");
    const { rigStrengths } = await import("../src/index.ts");
    const { testRig } = await import("./testRig.ts");
    const margins = new Margins(testRig, rigStrengths(testRig));
    const recording = {
      problem: {},
      peaks: Object.fromEntries(
        ["leash", "mainA", "mainB", "backupA", "backupB"].map((name) => [name, { cfc60: 3000 }]),
      ),
      signals: Object.fromEntries(
        ["mainA", "mainB", "backupA", "backupB"].map((name) => [name, new Float32Array(100).fill(1500)]),
      ),
      rate: 10_000,
      connections: [],
      elementPeaks: { main: { at: [0.5], peak: [3000] }, backup: { at: [0.5], peak: [1] } },
    };
    margins.add(0, { broke: [] } as never, recording as never);
    const required = margins.parts(0, 1).find((one) => one.id === "leash")!.margin - 0.1;
    const of = (uncertainty?: Map<string, number>) =>
      margins.parts(required, 1, uncertainty).find((one) => one.id === "leash")!;
    expect(of().verdict).toBe("holds");
    const unsure = of(new Map([["leash", 600]]));
    expect(unsure.verdict).toBe("thin");
    expect(unsure.load).toBe(of().load);
  });
});
