/** What reaches a run is made of + − × ÷ √, which every JavaScript engine rounds alike. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { portable } from "../src/index.ts";

const source = new URL("../src/", import.meta.url);
/** What ECMAScript fixes to the last bit. */
const EXACT = ["sqrt", "abs", "min", "max", "floor", "ceil", "round", "trunc", "sign", "fround", "imul"];
const CONSTANTS = ["PI", "SQRT2", "SQRT1_2", "LN2", "LN10", "E", "LOG2E", "LOG10E"];

/** Code without its comments and texts. */
const codeOf = (text: string): string =>
  text
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/"(?:[^"\\\n]|\\.)*"/g, '""')
    .replace(/^(\s*|.*?\s)\/\/.*$/gm, "$1");

describe("a run is the same in every JavaScript engine", () => {
  const files = readdirSync(source, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
  it.each(files)("for %s uses no function that is left to the engine in its last bits", (name) => {
    const code = codeOf(readFileSync(new URL(name, source), "utf8"));
    const used = [...code.matchAll(/\bMath\.(\w+)/g)].map((found) => found[1]!);
    expect(used.filter((one) => !EXACT.includes(one) && !CONSTANTS.includes(one))).toEqual([]);
    // By another name, or by key.
    expect(code).not.toMatch(/\bMath\b(?!\.)/);
    expect(code).not.toContain("**");
  });

  it("finds what it looks for", () => {
    expect(codeOf("/* 2 ** 3 */ a; // b ** c\nMath.exp(1)")).not.toContain("**");
    expect(codeOf("a ** b")).toContain("**");
  });
});

/** Off by so many units in the last place of the expected value. */
function ulps(got: number, expected: number): number {
  if (Object.is(got, expected) || got === expected) return 0;
  const size = Math.max(Math.abs(expected), 2.2250738585072014e-308);
  const unit = 2 ** (Math.floor(Math.log2(size)) - 52);
  return Math.abs(got - expected) / unit;
}

describe("portable functions", () => {
  /** The nearest doubles, from mpmath 1.3 with 60 digits, so that no engine's own function is trusted. */
  const KNOWN: readonly (readonly [keyof typeof portable, number, number])[] = [
    ["exp", 1, Math.E],
    ["exp", -0.3, 0.7408182206817179],
    ["exp", 0.1, 1.1051709180756477],
    ["exp", 20.5, 799902177.4755054],
    ["exp", -700.25, 7.678723813110872e-305],
    ["exp", 709.5, 1.3549863193146328e308],
    ["exp", -740.0, 4.2e-322],
    ["expm1", 1e-10, 1.00000000005e-10],
    ["expm1", 0.25, 0.2840254166877415],
    ["expm1", -0.25, -0.22119921692859512],
    ["expm1", 1.2, 2.3201169227365472],
    ["expm1", -3.7, -0.9752764735296606],
    ["expm1", 30.5, 17619017951354.633],
    ["log", 2, Math.LN2],
    ["log", 10, Math.LN10],
    ["log", 0.2, -1.6094379124341003],
    ["log", 1.0000001, 9.999999505838704e-8],
    ["log", 1e-300, -690.7755278982137],
    ["log", 12345.678, 9.421061321291832],
    ["log1p", 1e-10, 9.999999999500001e-11],
    ["log1p", 0.3, 0.26236426446749106],
    ["log1p", -0.9, -Math.LN10],
    ["log1p", 1000000.0, 13.815511557963774],
    ["sin", 1, 0.8414709848078965],
    ["sin", 3, 0.1411200080598672],
    ["sin", Math.PI, 1.2246467991473532e-16],
    ["sin", 100.5, -0.030959966783271346],
    ["sin", -22, 0.008851309290403876],
    ["sin", 1000000.0, -0.34999350217129294],
    ["cos", 1, 0.5403023058681398],
    ["cos", 0.5 * Math.PI, 6.123233995736766e-17],
    ["cos", 3, -0.9899924966004454],
    ["cos", 100.5, 0.9995206253283515],
    ["cos", 1000000.0, 0.9367521275331447],
    ["tan", 0.02, 0.020002667093402423],
    ["tan", 0.7, 0.8422883804630794],
    ["tan", 1.5, 14.101419947171719],
    ["sinh", 0.01, 0.010000166667500003],
    ["sinh", 0.9, 1.0265167257081753],
    ["sinh", 5.5, 122.34392274639096],
    ["sinh", -30, -5343237290762.231],
    ["sinh", 710, 1.1169973830808555e308],
    ["cosh", 0.1, 1.0050041680558035],
    ["cosh", 2.5, 6.132289479663686],
    ["cosh", -30, 5343237290762.231],
    ["asinh", 0.001, 0.0009999998333334083],
    ["asinh", 1, 0.881373587019543],
    ["asinh", -5.5, -2.4060591252980172],
    ["asinh", 10000000000.0, 23.7189981105004],
  ];
  it.each(KNOWN)("%s(%f) is %f to the last bit but one", (name, x, expected) => {
    expect(ulps((portable[name] as (x: number) => number)(x), expected)).toBeLessThanOrEqual(1);
  });

  const within = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  const ONE: readonly (readonly [
    name: "exp" | "expm1" | "log" | "log1p" | "sin" | "cos" | "tan" | "sinh" | "cosh" | "asinh",
    low: number,
    high: number,
    most: number,
  ])[] = [
    ["exp", -745, 709.7, 1],
    ["exp", -1, 1, 1],
    ["expm1", -40, 709.7, 1],
    ["expm1", -1, 1, 1],
    ["log", 0, 1.7e308, 1],
    ["log", 0.5, 2, 1],
    ["log1p", -1, 1e10, 1],
    ["log1p", -0.5, 1, 1],
    ["sin", -1e6, 1e6, 1],
    ["sin", -10, 10, 1],
    ["cos", -1e6, 1e6, 1],
    ["cos", -10, 10, 1],
    ["tan", -10, 10, 2.5],
    ["sinh", -710, 710, 2.5],
    ["sinh", -2, 2, 2.5],
    ["cosh", -710, 710, 2.5],
    ["cosh", -2, 2, 2.5],
    ["asinh", -1e300, 1e300, 2.5],
    ["asinh", -3, 3, 2.5],
  ];
  it.each(ONE)(
    "%s from %f to %f is this engine's own within %f units of the last place more",
    (name, low, high, most) => {
      // The engine's own may be off by a unit itself.
      fc.assert(
        fc.property(within(low, high), (x) => ulps(portable[name](x), Math[name](x)) <= most + 1),
        { seed: 20260101, numRuns: 20_000 },
      );
    },
  );

  it("hypot is the length of a vector", () => {
    expect(portable.hypot(3, 4)).toBe(5);
    expect(portable.hypot(-2, 3, 6)).toBe(7);
    fc.assert(
      fc.property(within(-1e5, 1e5), within(-1e5, 1e5), within(-1e5, 1e5), (x, y, z) => {
        fc.pre(Math.abs(x) > 1e-100);
        return ulps(portable.hypot(x, y, z), Math.hypot(x, y, z)) <= 3;
      }),
      { seed: 20260101 },
    );
  });

  it("know their limits", () => {
    expect(portable.exp(1000)).toBe(Number.POSITIVE_INFINITY);
    expect(portable.exp(-1000)).toBe(0);
    expect(portable.exp(0)).toBe(1);
    expect(portable.expm1(-100)).toBe(-1);
    expect(portable.log(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(portable.log(-1)).toBeNaN();
    expect(portable.log(1)).toBe(0);
    expect(ulps(portable.log(5e-324), -744.4400719213812)).toBeLessThanOrEqual(1);
    expect(ulps(portable.log(2.5e-310), Math.log(2.5e-310))).toBeLessThanOrEqual(1);
    expect(portable.log1p(-1)).toBe(Number.NEGATIVE_INFINITY);
    expect(portable.asinh(0)).toBe(0);
    expect(portable.sinh(0)).toBe(0);
    expect(() => portable.sin(1e9)).toThrow(RangeError);
    expect(() => portable.cos(Number.NaN)).toThrow(RangeError);
  });
});
