/** Every number is rounded to the side that is safe. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayText } from "../src/dates.ts";
import { quantity } from "../src/index.ts";
import { moreText } from "../src/moreText.ts";
import { unbrokenDays } from "../src/unbrokenDays.ts";

const number = (text: string) => Number(text.replace("−", "-").replace(/ (kN|m|%|m\/s)$/, ""));
const newton = fc.double({ min: 1, max: 3e5, noNaN: true });
const metre = fc.double({ min: -50, max: 200, noNaN: true });
/** What the last bit of a number may be off. */
const CLOSE = 1e-6;

const never = (what: string, values: fc.Arbitrary<number>, holds: (value: number) => boolean) =>
  it(what, () => {
    fc.assert(fc.property(values, holds), { seed: 11, numRuns: 500 });
  });

it("a day is written as the language writes it, and what is no day stays", () => {
  expect(dayText("2026-12-18")).toBe("18 Dec 2026");
  expect(["2026-02-30", "2026", "soon", ""].map(dayText)).toEqual(["2026-02-30", "2026", "soon", ""]);
});

it("a day stays on one line where letters are large, and nothing else is joined", () => {
  expect(unbrokenDays("One walker, until 4 Jul 2026 or for 12 more falls.")).toBe(
    "One walker, until 4\u00a0Jul\u00a02026 or for 12 more falls.",
  );
});

describe("a number", () => {
  never("of a load is never shown smaller than it is", newton, (n) => number(quantity.load(n)) * 1000 >= n - CLOSE * n);
  never(
    "of a strength is never shown larger than it is",
    newton,
    (n) => number(quantity.strength(n)) * 1000 <= n + CLOSE * n,
  );
  never("of a margin is never shown larger than it is", fc.double({ min: 0.01, max: 80, noNaN: true }), (r) => {
    return number(quantity.margin(r)) <= r + CLOSE * r;
  });
  never("of what is required is never shown smaller", fc.double({ min: 1, max: 10, noNaN: true }), (r) => {
    return number(quantity.required(r)) >= r - CLOSE;
  });
  never("of a drop is never shown smaller", metre, (m) => number(quantity.drop(m)) >= m - CLOSE);
  never("of a height is never shown larger", metre, (m) => number(quantity.height(m)) <= m + CLOSE);
  never("stays within a step of its value", newton, (n) => {
    return Math.abs(number(quantity.load(n)) * 1000 - n) < (n < 9995 ? 10.1 : 101);
  });

  it.each([
    [quantity.margin(1.996), "1.99"],
    [quantity.margin(2.3), "2.30"],
    [quantity.percent(-0.05), "−5 %"],
    [quantity.percent(-0.123), "−12 %"],
    [quantity.percent(-0.00001), "0 %"],
    [quantity.percent(0.04), "4 %"],
    [quantity.percent(Number.NaN), "– %"],
    [quantity.along(-0.34), "−0.3 m"],
    [quantity.along(4.02), "4 m"],
    [quantity.margin(14.9), "14"],
    [quantity.load(9999), "10.0 kN"],
    [quantity.load(5020), "5.02 kN"],
    [quantity.required(2), "2"],
    [quantity.required(1.5), "1.5"],
    [quantity.limit(6000), "6 kN"],
    [quantity.drop(-0.04), "0.0 m"],
    [quantity.height(-0.04), "−0.1 m"],
    [quantity.rounded(Number.POSITIVE_INFINITY, 2, "down"), "–"],
  ])("%s reads %s", (text, expected) => {
    expect(text).toBe(expected);
  });
});

it("loads are never shown smaller than they are, strengths never larger", () => {
  expect([3264, 3261, 12_345, 123_456, 0].map(quantity.load)).toEqual([
    "3.27 kN",
    "3.27 kN",
    "12.4 kN",
    "123.5 kN",
    "0.00 kN",
  ]);
  expect([3269, 12_399].map(quantity.strength)).toEqual(["3.26 kN", "12.3 kN"]);
  expect(quantity.loadIn(-1500)).toBe("\u22121.50");
});

it("a drop is rounded up, and a height left above the ground down", () => {
  expect([quantity.drop(4.41), quantity.height(4.49)]).toEqual(["4.5 m", "4.4 m"]);
});

it("times have the decimals of the view, energies their unit", () => {
  expect([quantity.seconds(1.4034), quantity.seconds(1.4034, 3)]).toEqual(["1.40 s", "1.403 s"]);
  expect([50, 340, 3400, 12_000].map(quantity.energy)).toEqual(["50 J", "0.34 kJ", "3.40 kJ", "12.0 kJ"]);
});

it("a number and its unit stay on one line, and nothing else is joined", () => {
  expect(quantity.unbroken("24 m from A, 6 members, 4 % of 3.2 kN at 7 m/s")).toBe(
    "24\u00a0m from A, 6 members, 4\u00a0% of 3.2\u00a0kN at 7\u00a0m/s",
  );
});

it("counts the items that a list leaves out, with digits in threes", () => {
  expect(moreText(79_980)).toBe("… and 79,980 more");
  expect(moreText(12)).toBe("… and 12 more");
});
