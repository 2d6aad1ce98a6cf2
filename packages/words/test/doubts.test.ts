import { describe, expect, it } from "vitest";
import { DOUBT_FACTS_ENGLISH } from "../src/doubtFactsEnglish.ts";
import { tellNote } from "../src/laterNoteWords.ts";

describe("what speaks against the numbers of a group of tests", () => {
  it("is said of one test, of two and of a few", () => {
    expect(tellNote({ code: "doubt.fewTests", values: { count: 1 } })).toMatch(/^One test says next to nothing/);
    expect(tellNote({ code: "doubt.fewTests", values: { count: 2 } })).toMatch(/^Two tests say next to nothing/);
    expect(tellNote({ code: "doubt.severalTests", values: { count: 4 } })).toBe(
      "4 tests give a wide answer: the exact factors are large for so few.",
    );
  });

  it("counts the bounds among the results", () => {
    expect(tellNote({ code: "doubt.censored", values: { count: 1, of: 6 } })).toBe(
      "1 of 6 results is a bound, not a breaking load, and counts as such: they say little about the scatter.",
    );
    expect(tellNote({ code: "doubt.censored", values: { count: 3, of: 6 } })).toBe(
      "3 of 6 results are bounds, not breaking loads, and count as such: they say little about the scatter.",
    );
  });

  it("asks whether rows that repeat others are pieces of their own", () => {
    expect(tellNote({ code: "doubt.copies", values: { count: 5, of: 10 } })).toMatch(
      /^5 of 10 rows repeat another one/,
    );
  });

  it("names loads, ways of failing and scatter with their numbers", () => {
    expect(tellNote({ code: "doubt.outlier", values: { load: { force: 12_340 } } })).toMatch(/^12\.3 kN does not/);
    expect(tellNote({ code: "doubt.modes", values: { list: { list: ["at the bend", "in the middle"] } } })).toMatch(
      /^They failed in different ways \(at the bend, in the middle\)\. /,
    );
    expect(tellNote({ code: "doubt.spread", values: { percent: { rounded: 26.6, decimals: 0 } } })).toMatch(
      /^The results scatter by 27 %: /,
    );
  });

  it("ends every sentence", () => {
    for (const sentence of Object.values(DOUBT_FACTS_ENGLISH)) expect(sentence).toMatch(/[a-z}]\.$/);
  });
});
