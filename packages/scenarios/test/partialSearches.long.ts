import { expect, it } from "vitest";
import { checkPartial } from "./partialSearches.ts";

it("no partial search of 300 rigs by chance says that one holds, and what it finds stays found", () => {
  const verdicts = Array.from({ length: 300 }, (_, i) => checkPartial(1000 + i));
  expect(new Set(verdicts)).toEqual(new Set(["holds", "thin", "fails"]));
}, 1_800_000);
