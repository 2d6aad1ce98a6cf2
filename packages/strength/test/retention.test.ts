import { describe, expect, it } from "vitest";
import { type BreakTest, stockRetention } from "../src/index.ts";
import { polyesterWebbing } from "./exampleRig.ts";

const test = (sunMonths: number, value: number): BreakTest => ({
  part: "webbing",
  material: "pes",
  state: sunMonths === 0 ? "new" : "used",
  wet: false,
  outcome: "broke",
  result: { kind: "exact", value },
  sunMonths,
});

describe("retention over time", () => {
  it("two bad tests pull the curve between themselves and the built-in one, where they reach", () => {
    const { sun } = stockRetention(polyesterWebbing, [test(12, 15_000), test(12, 15_500)]);
    const { central } = sun!.posterior(12, 0.95);
    expect(central).toBeGreaterThan(15_000);
    expect(central).toBeLessThan(sun!.prior(12, 0.95).central);
    expect(sun!.slope.posterior).toBeGreaterThan(1);
  });

  it("many tests outweigh the built-in curve and narrow the bound", () => {
    const many = Array.from({ length: 40 }, (_, i) => {
      const dose = (i % 10) * 2;
      return test(dose, 28_000 * Math.exp(-0.03 * dose) * (1 + 0.02 * Math.sin(i)));
    });
    const found = stockRetention(polyesterWebbing, many).sun!;
    const posterior = found.posterior(10, 0.95);
    expect(Math.abs(posterior.central / (28_000 * Math.exp(-0.3)) - 1)).toBeLessThan(0.03);
    expect(posterior.lower / posterior.central).toBeGreaterThan(
      found.prior(10, 0.95).lower / found.prior(10, 0.95).central,
    );
    expect(found.tests(10, 0.95)!.central).toBeGreaterThan(0);
  });

  it("refuses to speak beyond the built-in range", () => {
    const { sun } = stockRetention(polyesterWebbing, [test(12, 20_000)]);
    expect(() => sun!.posterior(sun!.validTo + 1, 0.95)).toThrow(/outside 0 to 36/);
    expect(stockRetention(polyesterWebbing, [test(0, 30_000)])).toEqual({});
  });
});
