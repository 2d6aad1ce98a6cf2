import { readFileSync } from "node:fs";
import type { MeasuredComparison } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { measuredWords } from "../src/createMeasuredWords.ts";
import { filled } from "../src/language.ts";
import { MEASURED_ENGLISH } from "../src/measuredEnglish.ts";

const root = new URL("../../../", import.meta.url);
const text = ["packages/words/src/createMeasuredWords.ts", "apps/cli/src/commands/measured.ts"]
  .map((name) => readFileSync(new URL(name, root), "utf8"))
  .join("\n");

describe("what is said of recordings", () => {
  const keys = Object.keys(MEASURED_ENGLISH) as (keyof typeof MEASURED_ENGLISH)[];

  it("has no sentence that nobody says", () => {
    const begun = [...text.matchAll(/`(\w+\.)\$\{/g)].map(([, one]) => one!);
    expect(keys.filter((key) => !text.includes(`"${key}"`) && !begun.some((one) => key.startsWith(one)))).toEqual([]);
  });

  it("tells a few of thousands of gaps, and every other fault", () => {
    const gaps = Array.from({ length: 3000 }, (_, i) => ({ kind: "gap", from: i, to: i + 0.5 }) as const);
    const notes = [...gaps, { kind: "saturated", from: 1, to: 2, force: 4000 } as const];
    const texts = measuredWords.notes({ notes, inCatch: notes } as unknown as MeasuredComparison);
    expect(texts[0]).toContain("the cell was at its limit");
    expect(texts[12]).toBe("2989 more such faults of the recording.");
    expect(texts).toHaveLength(16);
    const late = measuredWords.notes({ notes, inCatch: [gaps[2500]] } as unknown as MeasuredComparison);
    expect(late[1]).toMatch(/from 2,?500/);
  });

  it("has all braces closed", () => {
    for (const key of keys) {
      const names = [...MEASURED_ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      for (const value of [1, 2])
        expect(filled(MEASURED_ENGLISH[key], Object.fromEntries(names.map((name) => [name, value])))).not.toMatch(
          /[{}|]/,
        );
    }
  });
});
