/** A weblock that lets webbing through ends the loads on a line: a verdict that rests on it says so. */
import { expect, it } from "vitest";
import { assessRig, executeRun, NO_DRAW, type Rig, type RunOrder, rigStrengths } from "../src/index.ts";
import { finish } from "./finish.ts";
import { searched } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

const slipping = (slipLoad: number): Rig => ({
  ...testRig,
  main: { ...testRig.main, endA: { ...testRig.main.endA, slipLoad } },
});
const fall: RunOrder = { event: { kind: "leashFall", at: 0.5 }, draw: NO_DRAW, accuracy: "quick" };
const made = (rig: Rig) => {
  const result = finish(executeRun(rig, rigStrengths(rig), fall));
  if (!result.ok) throw new Error(result.trouble.detail);
  return result;
};

it("a run knows the weblock that slipped in it, and its load ends there", () => {
  const firm = made(testRig);
  expect(firm).not.toHaveProperty("slipped");
  const above = 0.9 * firm.peaks.mainA;
  const slipped = made(slipping(above));
  expect(slipped.slipped).toEqual(["A"]);
  expect(slipped.peaks.mainA).toBeLessThan(1.02 * above);
  expect(made(slipping(2 * firm.peaks.mainA))).not.toHaveProperty("slipped");
});

it("is a caution that counts the what-ifs, at the end at which it happened", () => {
  const assessed = assessRig(slipping(6000));
  const inFalls = searched(assessed, {
    run: ({ event }) => (event.kind === "leashFall" ? { slipped: ["A"] } : {}),
  }).outcome;
  const falls = inFalls.whatIfs.filter(({ whatIf }) => whatIf.kind === "leashFall").length;
  expect(inFalls.cautions).toContainEqual({ kind: "slips", weblocks: [{ part: "endA", above: 6000, whatIfs: falls }] });
  expect(searched(assessed, {}).outcome.cautions.some(({ kind }) => kind === "slips")).toBe(false);
});
