/** Catches of both programs, as `docs/evidence-catches.svg` draws them: kept by the long test that makes them. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Comparison } from "../ensembles/compare.ts";
import { readEnsemble } from "../ensembles/ensemble.ts";
import { WRITES } from "./evidence.ts";

/** A load or drop of one ensemble: every run of the reference, and range and mean of ours; [N], drop in [m]. */
export interface Catch {
  readonly ensemble: string;
  readonly quantity: string;
  readonly theirs: readonly number[];
  readonly ours: { readonly low: number; readonly mean: number; readonly high: number };
}

const FILE = new URL("kept/catches.json", import.meta.url);
export const keptCatches = (): readonly Catch[] =>
  existsSync(FILE) ? JSON.parse(readFileSync(FILE, "utf8")).catches : [];

const four = (x: number) => Number(x.toPrecision(4));

function catchesOf(comparisons: readonly Comparison[]): Catch[] {
  return comparisons.map(({ ensemble, quantity, range, here }) => ({
    ensemble,
    quantity,
    theirs: readEnsemble(ensemble).runs.map(({ reference }) => four(reference[quantity])),
    ours: { low: four(range[0]), mean: four(here), high: four(range[1]) },
  }));
}

/** The test that compares the catches with those kept, or writes them. */
export function keepsCatches(comparisons: readonly Comparison[]): void {
  it("draws the catches that it finds", () => {
    const catches = catchesOf(comparisons);
    if (WRITES) writeFileSync(FILE, `${JSON.stringify({ catches })}\n`);
    else expect(keptCatches()).toEqual(catches);
  });
}
