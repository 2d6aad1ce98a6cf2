import { describe, expect, it } from "vitest";
import {
  formatAngle,
  formatEnergy,
  formatForce,
  formatLength,
  formatMass,
  formatMonths,
  formatPercent,
  formatRatio,
  formatTime,
} from "../src/index.ts";

describe("numbers for the eye", () => {
  it.each([
    [formatForce(3312), "3.3 kN"],
    [formatForce(25040), "25 kN"],
    [formatForce(11230), "11.2 kN"],
    [formatForce(847.3), "847 N"],
    [formatForce(999.6), "1 kN"],
    [formatForce(9960), "9.96 kN"],
    [formatForce(0), "0 N"],
    [formatForce(-1500), "−1.5 kN"],
    [formatForce(Number.NaN), "–"],
    [formatLength(60), "60 m"],
    [formatLength(0.025), "25 mm"],
    [formatLength(1.4), "1.4 m"],
    [formatLength(1234), "1.23 km"],
    [formatLength(-12.34), "−12.3 m"],
    [formatMass(0.1), "100 g"],
    [formatMass(80), "80 kg"],
    [formatAngle(Math.PI / 3), "60°"],
    [formatPercent(0.055), "5.5 %"],
    [formatRatio(2.449), "2.4"],
    [formatRatio(1.96), "1.9"],
    [formatRatio(2.3), "2.3"],
    [formatRatio(0.999), "0.99"],
    [formatRatio(23.7), "23"],
    [formatRatio(Number.NaN), "–"],
    [formatRatio(1.31, "up"), "1.4"],
    [formatRatio(1.3, "up"), "1.3"],
    [formatAngle((125 * Math.PI) / 180), "125°"],
    [formatMonths(14), "14 months"],
    [formatMonths(1), "1 month"],
    [formatTime(0.003), "3 ms"],
    [formatTime(1.397), "1.4 s"],
    [formatEnergy(2430), "2.4 kJ"],
  ])("%s reads %s", (text, expected) => {
    expect(text).toBe(expected);
  });
});
