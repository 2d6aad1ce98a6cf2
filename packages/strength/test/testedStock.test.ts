import { describe, expect, it } from "vitest";
import { type BreakTest, factorsFromLog, partStrengths, stockRetention, testUseWords } from "../src/index.ts";
import { exampleRig, polyesterWebbing, section } from "./exampleRig.ts";

const testOf = (given: Partial<BreakTest>): BreakTest => ({
  part: "webbing",
  material: "pes",
  state: "used",
  wet: false,
  outcome: "broke",
  result: { kind: "exact", value: 18_000 },
  ...given,
});
const worn = exampleRig({
  main: { ...exampleRig().main, sections: [section({ condition: { monthsOutside: 12 } })] },
});
const main = (log: readonly BreakTest[]) => partStrengths(worn, factorsFromLog(log)).find((p) => p.id === "main")!;

describe("own break tests in place of published factors", () => {
  const weak = [16_000, 16_500, 15_800].map((value) => testOf({ sunMonths: 12, result: { kind: "exact", value } }));

  it("lower the strength of the same stock, and are named as its basis", () => {
    const sun = main(weak).factors.find((f) => f.name === "sun")!;
    expect(main(weak).strength).toBeLessThan(main([]).strength);
    expect(sun.basis.kind).toBe("tested");
    expect(sun.basis.note).toContain("3 own break tests of polyester webbing");
  });

  it("leave other stocks, wet tests and tests with falls as well as sun alone", () => {
    const others = [
      testOf({ sunMonths: 12, material: "another" }),
      testOf({ sunMonths: 12, wet: true }),
      testOf({ sunMonths: 12, falls: 40 }),
      testOf({ monthsOutside: 12 }),
      testOf({ sunMonths: 12, result: { kind: "above", value: 9000 } }),
    ];
    expect(main(others)).toEqual(main([]));
  });

  it("leave samples alone that something else weakened: that has a factor of its own", () => {
    const others = [
      testOf({ sunMonths: 12, state: "clamp mark" }),
      testOf({ sunMonths: 12, part: "sewn loop" }),
      testOf({ falls: 12, state: "knotted, used" }),
    ];
    expect(main([...weak, ...others])).toEqual(main(weak));
    expect(testUseWords([polyesterWebbing], others)[1]).toContain("3 weakened by something else too");
  });

  it("count for falls when there was no sun", () => {
    const found = stockRetention(polyesterWebbing, [testOf({ falls: 50 })]);
    expect(found.sun).toBeUndefined();
    expect(found.falls?.testCount).toBe(1);
  });

  it("say nothing beyond the published range", () => {
    const old = section({ condition: { monthsOutside: 60 } });
    const rig = exampleRig({ main: { ...exampleRig().main, sections: [old] } });
    const beyond = partStrengths(rig, factorsFromLog(weak)).find((p) => p.id === "main")!;
    expect(beyond.factors.find((f) => f.name === "sun")!.beyond).toBe(true);
  });

  it("with a dose beyond it are left out instead of stopping everything", () => {
    const far = [testOf({ sunMonths: 48 }), testOf({ falls: 900 })];
    expect(stockRetention(polyesterWebbing, far)).toEqual({});
    expect(main([...weak, ...far])).toEqual(main(weak));
  });

  it("are told of: how many count for what, and why the others do not", () => {
    const log = [
      ...weak,
      testOf({ sunMonths: 0, falls: 0, state: "new" }),
      testOf({ sunMonths: 48 }),
      testOf({ sunMonths: 3, wet: true }),
      testOf({ sunMonths: 3, result: { kind: "above", value: 9000 } }),
      testOf({ monthsOutside: 12 }),
      testOf({ sunMonths: 3, falls: 3 }),
      testOf({ sunMonths: 3, material: "another" }),
    ];
    const said = testUseWords([polyesterWebbing, polyesterWebbing], log);
    expect(said[0]).toContain("4 of 10 count towards this rig, for polyester webbing (4 over sun, 1 over falls)");
    for (const why of ["1 with more sun or falls", "1 pulled wet", "1 that did not break", "1 without sun_months"]) {
      expect(said[1]).toContain(why);
    }
    expect(said[1]).toContain('1 of a material that this rig does not have: "another"');
    expect(testUseWords([polyesterWebbing], [testOf({ material: "x" })])[0]).toContain("none of 1 count");
    expect(testUseWords([polyesterWebbing], [])).toEqual([]);
  });
});
