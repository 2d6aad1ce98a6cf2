import { describe, expect, it } from "vitest";
import { englishWords as words } from "../src/index.ts";

const said = (value: number) => words.chance(value).replaceAll("\u202f", " ");
const range = (value: number, low: number, high: number) =>
  words.chanceRange({ value, low, high }).replaceAll("\u202f", " ");

describe("a chance is never shown smaller than it is", () => {
  it.each([
    [0.00149, "0.2 %"],
    [0.00249, "0.3 %"],
    [0.002, "0.2 %"],
    [0.0421, "4.3 %"],
    [0.0993, "10 %"],
    [0.1041, "11 %"],
    [0.62, "62 %"],
    [0.6201, "63 %"],
    [0.9899, "99 %"],
    [0.9901, "over 99 %"],
    [1, "100 %"],
    [1 / 23_400, "1 in 23 000"],
    [1 / 23_999, "1 in 23 000"],
    [1 / 23_000, "1 in 23 000"],
    [0.000999, "1 in 1 000"],
    [1 / 999_999, "1 in 990 000"],
    [1e-7, "less than 1 in a million"],
  ])("%f reads %s", (value, text) => {
    expect(said(value)).toBe(text);
  });

  it("over the whole range", () => {
    for (let log = -5.99; log < 0; log += 0.0137) {
      const [value, text] = [10 ** log, said(10 ** log)];
      const [, one] = /^1 in ([\d ]+)$/.exec(text) ?? [];
      const shown = one ? 1 / Number(one.replaceAll(" ", "")) : Number.parseFloat(text.replace("over ", "")) / 100;
      if (!text.startsWith("over")) expect(shown, text).toBeGreaterThanOrEqual(value * (1 - 1e-9));
    }
  });
});

describe("an interval is never shown narrower than it is", () => {
  it.each([
    [[0.62, 0.6049, 0.6401], "62 % (60 to 65 %)"],
    [[0.00149, 0.00119, 0.00249], "0.2 % (0.1 to 0.3 %)"],
    [[1 / 23_400, 1 / 61_200, 1 / 9_470], "1 in 23 000 (1 in 62 000 to 1 in 9 400)"],
    [[0.0149, 0.0000001, 0.0349], "1.5 % (up to 3.5 %)"],
    [[0, 0, 0.0341], "less than 3.5 %"],
    [[0.995, 0.991, 0.999], "over 99 %"],
    [[0.985, 0.9899, 0.992], "99 % (98 to over 99 %)"],
  ] as const)("%j reads %s", ([value, low, high], text) => {
    expect(range(value, low, high)).toBe(text);
  });
});
