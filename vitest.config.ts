import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Engines, searches and fits take seconds, on a busy machine more: bounds, not measurements. */
const PATIENCE = { testTimeout: 60_000, hookTimeout: 120_000 };
/** They stand in for modules that others have loaded by then. */
const STAND_IN = ["packages/scenarios/test/incomplete.test.ts", "packages/words/test/stockNames.test.ts"];

/** Files that take long though they are small: begun last, they would keep one core busy while the others have nothing to do. */
const SLOW = ["twoFaces.test.ts", "partialSearches.test.ts", "catcher.test.ts", "poolRunner.test.ts", "search.test.ts"];

class SlowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isSlow = ({ moduleId }: TestSpecification) => SLOW.some((name) => moduleId.endsWith(`/${name}`));
    const sorted = await super.sort(files);
    return [...sorted.filter(isSlow), ...sorted.filter((one) => !isSlow(one))];
  }
}

export default defineConfig({
  test: {
    sequence: { sequencer: SlowFirst },
    projects: [
      {
        test: {
          ...PATIENCE,
          name: "packages",
          // One process loads each package once for all of its files.
          isolate: false,
          include: [
            "packages/*/test/**/*.test.ts",
            "tests/{published,reference,properties,ensembles,evidence,house}/**/*.test.ts",
          ],
          exclude: STAND_IN,
        },
      },
      { test: { ...PATIENCE, name: "apart", include: STAND_IN } },
      "apps/*",
      "tests/browser",
      "tests/browser/vitest.journey.config.ts",
    ],
    // As many files at once as there are cores; the browser tests set their own.
    maxWorkers: "100%",
  },
});
