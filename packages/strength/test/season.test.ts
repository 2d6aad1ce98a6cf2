/** Months outside of which nobody says when in the year they were. */
import type { Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { leastDose, monthDose, mostDose } from "../src/derating/sunDose.ts";
import { partStrengths } from "../src/index.ts";
import { exampleRig } from "./exampleRig.ts";

const LATITUDES = ["low", "middle", "high"] as const;
const HEMISPHERES = ["north", "south"] as const;
const MONTHS = Array.from({ length: 12 }, (_, i) => i + 1);

describe("months outside in a rig's file", () => {
  const plain = exampleRig();
  const used = (monthsOutside: number, sun = 1): Rig =>
    exampleRig({
      leash: { ...plain.leash, condition: { monthsOutside, sun, ageYears: 3, wet: false, latitude: "middle" } },
    });
  const leash = (rig: Rig) => partStrengths(rig).find(({ id }) => id === "leash")!;
  const dose = (rig: Rig) => leash(rig).factors.find(({ name }) => name === "sun")!.validity!.got;

  it("count as the sunniest of the year: four as May to August, sixteen as a year and four such months", () => {
    expect(dose(used(4))).toBeCloseTo(1.5 + 1.65 + 1.65 + 1.45, 9);
    expect(dose(used(12))).toBeCloseTo(12, 9);
    expect(dose(used(16, 0.5))).toBeCloseTo(0.5 * (12 + 1.5 + 1.65 + 1.65 + 1.45), 9);
  });

  it("leave a part weaker, the more there are of them", () => {
    const strengths = Array.from({ length: 31 }, (_, months) => leash(used(months)).strength5);
    for (let months = 1; months < strengths.length; months++) {
      expect(strengths[months]!).toBeLessThan(strengths[months - 1]!);
    }
  });
});

it("no months in a row take more sun than is counted for so many, nor less than the row of a break test tells", () => {
  for (const latitude of LATITUDES) {
    for (const hemisphere of HEMISPHERES) {
      for (let count = 1; count <= 30; count++) {
        for (const first of MONTHS) {
          let taken = 0;
          for (let k = 0; k < count; k++) taken += monthDose(((first - 1 + k) % 12) + 1, 1, latitude, hemisphere);
          expect(taken).toBeLessThanOrEqual(mostDose(count, latitude) + 1e-9);
          expect(taken).toBeGreaterThanOrEqual(leastDose(count, latitude) - 1e-9);
        }
      }
    }
  }
});
