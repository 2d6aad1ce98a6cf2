/** A few of the ensembles with a few runs each, for every day; `ensembles.long.ts` holds all of them to more. */
import { describe, expect, it } from "vitest";
import { compare } from "./compare.ts";
import { drawer, drawsOf, ensembleNames, perturbed, readEnsemble } from "./ensemble.ts";

const RUNS = 8;
/** What so few runs may add to the bounds, besides their own standard errors [%]. */
const FEW = 3;

describe("catches agree in the mean with those of an independent program", () => {
  // A bare backup; a tail that whips past its connection; a main line that parts by overload.
  it.each(["cut-60-unconnected", "x-2-30-polyamide-polyamide-3", "g-parts-35"])("%s", (name) => {
    const ensemble = readEnsemble(name);
    for (const { quantity, off, chance, uncertainty } of compare(ensemble, drawsOf(ensemble.problem, RUNS, 1))) {
      const unsafe = quantity === "drop" ? 2 : Math.sqrt(16 + uncertainty * uncertainty);
      expect(off, `${name} ${quantity}`).toBeGreaterThan(-Math.max(unsafe, chance) - FEW);
      expect(off, `${name} ${quantity}`).toBeLessThan(15);
    }
  });
});

describe("an ensemble", () => {
  it("is read whole: eleven problems, each with its runs", () => {
    expect(ensembleNames).toHaveLength(11);
    for (const name of ensembleNames) expect(readEnsemble(name).runs.length).toBeGreaterThanOrEqual(7);
  });

  it("is drawn the same for the same seed, within the reference's ranges", () => {
    const { problem } = readEnsemble("g-caught-45");
    const [one, other] = [drawer(7), drawer(7)];
    for (let k = 0; k < 100; k++) {
      const drawn = perturbed(problem, one);
      expect(drawn).toEqual(perturbed(problem, other));
      expect(Math.abs(drawn.walker.mass / problem.walker.mass - 1)).toBeLessThanOrEqual(0.01 + 1e-12);
      expect(Math.abs(drawn.walker.at - problem.walker.at)).toBeLessThanOrEqual(0.004 + 1e-12);
      expect(Math.abs(drawn.cut!.time - problem.cut!.time)).toBeLessThanOrEqual(0.01 + 1e-12);
    }
  });
});
