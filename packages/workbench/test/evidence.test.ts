/** What is told of the checks behind the numbers. */
import { CONSTANTS } from "@secondline/strength";
import { expect, it } from "vitest";
import summary from "../src/evidence/evidence.json" with { type: "json" };
import { checksCounted, evidenceParts } from "../src/index.ts";

const parts = evidenceParts();

it("every source of a check stands in the list of its part, once", () => {
  const told = parts.flatMap(({ list }) => list?.items ?? []).map(({ what }) => what);
  for (const { title, year, part } of summary.sources.filter(({ part }) => part === "theory" || part === "programs"))
    expect(
      told.filter((what) => what === `${title} (${year})`),
      `${part}: ${title}`,
    ).toHaveLength(1);
});

it("a share of a tolerance is rounded up, and a check that does not agree is said to", () => {
  const source = { ...summary.sources[0]!, part: "theory", checks: 3, most: 0.901 };
  const told = (disagree: number) =>
    evidenceParts({ ...summary, sources: [{ ...source, disagree }] })[0]!.list!.items[0]!.how;
  expect(told(0)).toContain("91 %");
  expect(told(0)).not.toContain("not agree");
  expect(told(2)).toContain("2 of them do not agree");
});

it("the strengths in the list are all that are not assumed, and the text counts the others", () => {
  const strengths = parts.find(({ says }) => says.includes(`${CONSTANTS.size} numbers`))!;
  const assumed = [...CONSTANTS.values()].filter(({ status }) => status === "assumed").length;
  expect(strengths.list!.items).toHaveLength(CONSTANTS.size - assumed);
  expect(strengths.says).toContain(`${assumed} assumed`);
});

it("no part claims a fall that somebody measured, and the checks are counted by where their numbers come from", () => {
  expect(parts.at(-1)!.says).toMatch(/^None yet against a measured fall/);
  expect(checksCounted()).toContain(`${summary.counts.outside} checks are against numbers from outside`);
});
