/** The examples of the packages that others can install run as they stand. `tests/long/packed.long.ts` runs them as installed. */
import * as engine from "@secondline/engine";
import * as statistics from "@secondline/statistics";
import { expect, it } from "vitest";
import { readmeExample } from "../support/readmeExample.ts";

function said(name: "engine" | "statistics", from: Readonly<Record<string, unknown>>): string[] {
  const { names, body } = readmeExample(name);
  for (const one of names) expect(from, one).toHaveProperty(one);
  const lines: string[] = [];
  const run = new Function(...names, "console", body);
  run(...names.map((one) => from[one]), { log: (line: string) => lines.push(line) });
  return lines;
}
const numbersIn = (line: string) => [...line.matchAll(/\d+\.\d+/g)].map(([number]) => Number(number));

it("the engine solves a fall", () => {
  const [line] = said("engine", engine);
  const [pull, drop] = numbersIn(line!) as [number, number];
  // An 80 kg walker on 1.5 m of leash and a soft line: some body weights, and leash, sag and stretch.
  expect(pull).toBeGreaterThan(1000);
  expect(pull).toBeLessThan(6000);
  expect(drop).toBeGreaterThan(2);
  expect(drop).toBeLessThan(8);
});

it("the statistics fit, bound and give an exact factor", () => {
  const [fitted, bound, factor] = said("statistics", statistics).map((line) => numbersIn(line).at(-1)!);
  // A bound lies below the curve's own point, and both below the least breaking load's neighbourhood.
  expect(bound!).toBeLessThan(fitted!);
  expect(fitted!).toBeLessThan(27_100);
  expect(bound!).toBeGreaterThan(20_000);
  // Natrella, NBS Handbook 91, table A-7: n = 5, P = 0.95, γ = 0.75.
  expect(factor!).toBeCloseTo(2.463, 3);
});
