import { expect, it } from "vitest";
import { quantity } from "../src/index.ts";

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

it("a drop is rounded up and what is left above the ground down", () => {
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
