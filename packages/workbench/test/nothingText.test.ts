import { expect, it } from "vitest";
import { nothingText } from "../src/howFar/nothingText.ts";

it("says in words when too few values give a rig, and when no run gave numbers", () => {
  const what = { kind: "margin" } as const;
  expect(nothingText({ answer: { kind: "fewPoints", points: 1, bad: [] }, what })).toContain(
    "Only 1 value of the range gives a rig; a curve needs 2.",
  );
  expect(nothingText({ answer: { kind: "nothing" }, what })).toBe("No run gave numbers to be trusted.");
});
