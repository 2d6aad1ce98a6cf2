/** Months outside of which nobody says when in the year they were. */
import type { Rig } from "@secondline/rig";
import { seededRandom } from "@secondline/statistics";
import { describe, expect, it } from "vitest";
import { leastDose, monthDose, mostDose } from "../src/derating/sunDose.ts";
import { partStrengths } from "../src/index.ts";
import { exampleRig } from "./exampleRig.ts";

const LATITUDES = ["low", "middle", "high"] as const;
const HEMISPHERES = ["north", "south"] as const;

describe("months outside in a rig's file", () => {
  const plain = exampleRig();
  const used = (monthsOutside: number, ageYears: number, sun = 1): Rig =>
    exampleRig({
      leash: { ...plain.leash, condition: { monthsOutside, sun, ageYears, wet: false, latitude: "middle" } },
    });
  const leash = (rig: Rig) => partStrengths(rig).find(({ id }) => id === "leash")!;
  const dose = (rig: Rig) => leash(rig).factors.find(({ name }) => name === "sun")!.validity!.got;

  it("count as the sunniest of the part's years: four of one year as May to August, of two years as both Junes and Julys", () => {
    expect(dose(used(4, 1))).toBeCloseTo(1.5 + 1.65 + 1.65 + 1.45, 9);
    expect(dose(used(4, 2))).toBeCloseTo(4 * 1.65, 9);
    expect(dose(used(12, 1))).toBeCloseTo(12, 9);
    expect(dose(used(12, 3, 0.5))).toBeCloseTo(0.5 * 3 * (1.5 + 1.65 + 1.65 + 1.45), 9);
    expect(dose(used(16, 1 + 4 / 12))).toBeCloseTo(12 + 1.5 + 1.65 + 1.65 + 1.45, 9);
  });

  it("count as Junes and Julys if nobody knows how old the part is", () => {
    const { ageYears: _, ...undated } = used(12, 1).leash.condition;
    expect(dose(exampleRig({ leash: { ...plain.leash, condition: undated } }))).toBeCloseTo(12 * 1.65, 9);
  });

  it("leave a part weaker, the more there are of them", () => {
    const strengths = Array.from({ length: 31 }, (_, months) => leash(used(months, 3)).strength5);
    for (let months = 1; months < strengths.length; months++) {
      expect(strengths[months]!).toBeLessThan(strengths[months - 1]!);
    }
  });
});

it("no months of some years take more sun than is counted for so many, nor less than the row of a break test tells", () => {
  const random = seededRandom(20_261_130);
  for (const latitude of LATITUDES) {
    for (const hemisphere of HEMISPHERES) {
      for (let rig = 0; rig < 200; rig++) {
        const years = 1 + Math.floor(3 * random.uniform());
        const share = random.uniform();
        const outside = Array.from({ length: 12 * years }, (_, k) => (k % 12) + 1).filter(
          () => random.uniform() < share,
        );
        const taken = outside.reduce((sum, month) => sum + monthDose(month, 1, latitude, hemisphere), 0);
        expect(taken).toBeLessThanOrEqual(mostDose(outside.length, years, latitude) + 1e-9);
        expect(taken).toBeGreaterThanOrEqual(leastDose(outside.length, years, latitude) - 1e-9);
      }
      for (let first = 1; first <= 12; first++) {
        for (let count = 1; count <= 30; count++) {
          let taken = 0;
          for (let k = 0; k < count; k++) taken += monthDose(((first - 1 + k) % 12) + 1, 1, latitude, hemisphere);
          expect(taken).toBeLessThanOrEqual(mostDose(count, count / 12, latitude) + 1e-9);
          expect(taken).toBeGreaterThanOrEqual(leastDose(count, count / 12, latitude) - 1e-9);
        }
      }
    }
  }
});
