import { logSpread } from "@secondline/strength";
import { expect, it } from "vitest";
import { assessRig, INPUT_IDS } from "../src/index.ts";
import { planChances } from "../src/reliability/chances.ts";
import { DRAWS, EXACT, interfered, LAW, leashFails, OF_LOAD, OF_STRENGTH } from "./interference.ts";
import { testRig } from "./testRig.ts";

it.each(EXACT)("a known chance, %d deviations off, is found through draws and loads", (beta, exact) => {
  const found = interfered(beta, { seed: 5 });
  const fails = leashFails(found);
  expect(fails.low).toBeLessThan(fails.value);
  expect(fails.high).toBeGreaterThan(fails.value);
  // From so many draws middle and spread of the loads are known to 1 ÷ √n and 1 ÷ √2n of the spread: that moves the deviations to spare,
  // and the logarithm of the chance by about as many times as much. How often the intervals hold it is counted in interference.long.ts.
  const ofLoad = OF_LOAD ** 2 / (OF_LOAD ** 2 + OF_STRENGTH ** 2);
  const moved = Math.sqrt(ofLoad / DRAWS + (beta * ofLoad) ** 2 / (2 * DRAWS));
  expect(Math.abs(Math.log(fails.value / exact))).toBeLessThan(3 * (beta + 0.5) * moved);
  expect(found.anyFails.value).toBeCloseTo(fails.value, 9);
  expect(found.parts[0]).toMatchObject({ id: "leash", first: { value: expect.closeTo(1, 2) } });
});

it("draws the walker's mass as it says: one deviation is one of its spread", () => {
  const { samples } = planChances(assessRig(testRig), { whatIf: { kind: "leashFall", at: 0.5 }, runs: 16 });
  for (const { draw, deviates } of samples) {
    expect(Math.log(draw.mass!) / logSpread(0.1)).toBeCloseTo(deviates[INPUT_IDS.indexOf("mass")]!, 6);
  }
});

it("shares the scatter out between mass, leash and chance as the law does", () => {
  const { shares } = interfered(3, { seed: 21, runs: 512 });
  const whole = OF_STRENGTH ** 2 + OF_LOAD ** 2;
  const share = (kind: string, name?: string) =>
    shares.sources.find((source) => source.kind === kind && (name === undefined || source.name === name))!.share;
  const exact = [
    [share("input", "Walker's mass"), LAW.mass ** 2],
    [share("input", "Length of the leash"), LAW.leashLength ** 2],
    [share("chance"), LAW.chance ** 2],
  ] as const;
  expect(shares.part).toBe("leash");
  for (const [{ low, high }, square] of exact) {
    expect(low).toBeLessThan(square / whole);
    expect(high).toBeGreaterThan(square / whole);
  }
});
