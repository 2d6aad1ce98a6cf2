import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dimension, parseQuantity, quantityText } from "../src/index.ts";

const value = (text: unknown, dimension: Dimension): number => {
  const read = parseQuantity(text, dimension);
  if (!read.ok) throw new Error(read.message.code);
  return read.value;
};
const refusal = (text: unknown, dimension: Dimension): string => {
  const read = parseQuantity(text, dimension);
  return read.ok ? "accepted" : read.message.code;
};

describe("a quantity as people write it", () => {
  // Exact by definition: 1 lbf = 0.45359237 kg × 9.80665 m/s² (ISO 80000-4 annex), 1 ft = 0.3048 m, 1 in = 25.4 mm.
  it.each([
    ["60 m", "length", 60],
    ["25mm", "length", 0.025],
    ["100 ft", "length", 30.48],
    ["1 in", "length", 0.0254],
    ["2.5 kN", "force", 2500],
    ["540 lbf", "force", 540 * 0.45359237 * 9.80665],
    ["250 daN", "force", 2500],
    ["250 kgf", "force", 250 * 9.80665],
    ["80 kg", "mass", 80],
    ["176 lb", "mass", 176 * 0.45359237],
    ["0.06 kg/m", "massPerLength", 0.06],
    ["60 g/m", "massPerLength", 0.06],
    ["30 deg", "angle", Math.PI / 6],
    ["30°", "angle", Math.PI / 6],
    ["14 months", "time", (14 * 365.25 * 86400) / 12],
    ["2 weeks", "time", 14 * 86400],
    ["3 ms", "time", 0.003],
    ["800 kN/m", "stiffness", 8e5],
    ["4 %", "share", 0.04],
    ["50 %", "position", 0.5],
    [0.5, "position", 0.5],
    [" −3 m ", "length", -3],
    ["1e3 N", "force", 1000],
  ] as const)("%s as %s is %d in SI units", (text, dimension, si) => {
    expect(value(text, dimension)).toBeCloseTo(si, 9);
  });

  it("gives the same force whether written in kN or in lbf", () => {
    // 562.02 lbf is 2.5 kN rounded to five digits, hence the tolerance.
    expect(value("562.02 lbf", "force") / value("2.5 kN", "force")).toBeCloseTo(1, 5);
  });

  it.each([
    [60, "length", "quantity.noUnit"],
    ["60", "length", "quantity.noUnit"],
    ["80 kg", "force", "quantity.otherDimension"],
    ["2.5 kn", "force", "quantity.unitUnknown"],
    ["2,5 kN", "force", "quantity.comma"],
    ["3 furlong", "length", "quantity.unitUnknown"],
    ["20 degC", "angle", "quantity.unitUnknown"],
    ["3 constructor", "length", "quantity.unitUnknown"],
    ["2 m + 3 m", "length", "quantity.unitUnknown"],
    ["NaN m", "length", "quantity.noNumber"],
    ["Infinity m", "length", "quantity.noNumber"],
    ["1e999 m", "length", "number.tooLarge"],
    [Number.NaN, "ratio", "number.infinite"],
    [Number.POSITIVE_INFINITY, "position", "number.infinite"],
    [1.5, "count", "number.notWhole"],
    ["4 %", "force", "quantity.percent"],
    ["4", "share", "quantity.noUnit"],
    ["12 m", "count", "quantity.unitTooMuch"],
    ["", "force", "quantity.empty"],
    [null, "force", "quantity.needed"],
    [["60 m"], "length", "quantity.needed"],
    ["9".repeat(1000), "length", "quantity.long"],
  ] as const)("refuses %j as %s: %s", (text, dimension, code) => {
    expect(refusal(text, dimension)).toBe(code);
  });

  it.each([
    [6, "6 %"],
    [0.5, "4 %"],
    ["1", "4 %"],
  ])("does not make a per cent of the share %j, which may be one of all: its example is %s", (typed, example) => {
    expect(parseQuantity(typed, "share")).toMatchObject({ ok: false, message: { values: { example } } });
  });

  it("never throws and never returns what is not finite, whatever is typed", () => {
    const dimensions: Dimension[] = ["length", "force", "share", "position", "count", "time"];
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.anything()), fc.constantFrom(...dimensions), (typed, dimension) => {
        const read = parseQuantity(typed, dimension);
        return read.ok ? Number.isFinite(read.value) : read.message.code.length > 0;
      }),
      { seed: 20261, numRuns: 500 },
    );
  });

  it("reads back what a slider writes, in the unit that the user had", () => {
    const likes = [
      ["length", "60 m"],
      ["length", "200 ft"],
      ["force", "2.5 kN"],
      ["force", "540 lbf"],
      ["time", "14 months"],
      ["angle", "40°"],
      ["share", "4 %"],
      ["position", "0.5"],
    ] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...likes),
        fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
        ([dimension, like], si) => {
          const text = quantityText(si, dimension, like);
          const unit = like.replace(/^[\d.]+/, "");
          const typed = dimension === "position" ? Number(text) : text;
          // Six significant digits are written.
          return text.endsWith(unit) && Math.abs(value(typed, dimension) / si - 1) < 1e-5;
        },
      ),
      { seed: 20262, numRuns: 300 },
    );
  });
});
