import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
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
