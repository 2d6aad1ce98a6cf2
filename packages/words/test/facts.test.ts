/** The few lines of the first page follow their facts. */
import type { Outcome } from "@secondline/scenarios";
import { beforeAll, describe, expect, it } from "vitest";
import { facts } from "../src/factWords.ts";
import { englishWords as words } from "../src/index.ts";
import { demoRig, quickOutcome } from "./outcomes.ts";

const rig = demoRig("sound-rig.json");
let outcome: Outcome;
beforeAll(() => {
  outcome = quickOutcome(rig).outcome;
});

it("of many blanks five are named, and their heading says that there may be more", () => {
  const bare = { ...rig, leash: { ...rig.leash, condition: {} }, harness: { ...rig.harness, condition: {} } };
  const many = quickOutcome(bare).outcome;
  expect(words.blanks(bare, many)).toHaveLength(5);
  const fact = facts(words.language, bare, many).find(({ name }) => name.startsWith("Not written down"))!;
  expect(fact.name).toBe("Not written down: at most the five that cost most");
});

describe("the height of the feet on the first page", () => {
  const feetOf = (falls: Partial<Outcome["falls"]>) =>
    facts(words.language, rig, { ...outcome, falls: { ...outcome.falls, ...falls } })[1]!;
  const lowest = (height: number, whatIf: number) => ({ height, whatIf, interval: [height, height] as const });

  it("names an event that brings the feet to the ground, not another one that keeps a height", () => {
    expect(feetOf({ onGround: [], leastFeet: lowest(2.34, 1) }).value).toMatch(/^2\.3 m \(main line fails at anchor A/);
    // One run of many of the fall reaches the ground; 95 % of them stay higher than those of the other event do.
    expect(feetOf({ onGround: [0], leastFeet: lowest(0.4, 1) }).value).toMatch(
      /^none: the feet reach the ground \(leash fall in the middle/,
    );
    expect(feetOf({ onGround: [0, 1], leastFeet: lowest(-0.4, 1) }).value).toMatch(
      /^none: the feet reach the ground \(main line fails at anchor A/,
    );
  });
});
