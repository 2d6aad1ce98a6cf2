import { normalQuantile, seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { type EventDraws, levelOf, scatterOf, scatterOfFamily } from "../src/scatter/levels.ts";

const random = seededRandom(20_261_130);
const normal = () => normalQuantile(random.uniform());

/** Eight draws of a load of 5 kN in the middle that scatters by `spread` in logarithms, whatever was drawn. */
const drawsOfSpread = (spread: number): EventDraws => ({
  values: Array.from({ length: 8 }, () => 5_000 * Math.exp(spread * normal())),
  deviates: Array.from({ length: 8 }, () => [normal()]),
});

const TAME = 0.08;
const WILD = 0.18;
const EVENTS = 400;

/** How often the 95 % interval of E lies below what 95 % of draws really stay under, and how often E itself does [-]. */
function below(spread: number) {
  const counted = Array.from({ length: EVENTS }, () => {
    const tame = Array.from({ length: 12 }, () => drawsOfSpread(TAME));
    const event = drawsOfSpread(spread);
    const level = levelOf(event, scatterOfFamily([event], scatterOf([...tame, event], 1)));
    const true95 = 5_000 * Math.exp(normalQuantile(0.95) * spread);
    return { interval: level.high < true95, value: level.value < true95 };
  });
  const share = (of: "interval" | "value") => counted.filter((one) => one[of]).length / EVENTS;
  return { interval: share("interval"), value: share("value") };
}

describe("the 95 % value of an event", () => {
  it("of a class that scatters alike lies below the truth in about one of four cases, as its confidence says, its interval in one of 20", () => {
    const { interval, value } = below(TAME);
    expect(value).toBeLessThan(0.3);
    expect(interval).toBeLessThan(0.075);
  });

  it("is told with a wide interval where the draws reach higher than the class lets one expect", () => {
    const tame = Array.from({ length: 12 }, () => drawsOfSpread(TAME));
    const scatter = scatterOf(tame, 1);
    const { deviates } = drawsOfSpread(0);
    const far = levelOf({ values: [4_000, 4_300, 4_600, 4_900, 5_100, 5_300, 5_600, 8_500], deviates }, scatter);
    expect(far.value).toBe(8_500);
    expect(far.high).toBeGreaterThan(1.15 * 8_500);
    // A few that pull less than the rest say nothing of harder ones.
    const low = levelOf({ values: [2_200, 2_400, 5_000, 5_050, 5_100, 5_150, 5_200, 5_250], deviates }, scatter);
    expect(low.high).toBeLessThan(2 * 5_250);
  });

  it("of one event that scatters more than twice as much as its class is unsettled rather than too low", () => {
    const { interval, value } = below(WILD);
    expect(value).toBeGreaterThan(0.4);
    expect(interval).toBeLessThan(0.15);
  });
});
