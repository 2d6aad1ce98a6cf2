import { defineConfig } from "vitest/config";

/** Engines, searches and fits take seconds, on a busy machine more: bounds, not measurements. */
const PATIENCE = { testTimeout: 60_000, hookTimeout: 120_000 };
/** It stands in for a package that others have loaded by then. */
const STANDS_IN = "packages/scenarios/test/incomplete.test.ts";

export default defineConfig({
  test: {
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
          exclude: [STANDS_IN],
        },
      },
      { test: { ...PATIENCE, name: "apart", include: [STANDS_IN] } },
      "apps/*",
      "tests/browser",
      "tests/browser/vitest.journey.config.ts",
    ],
    // As many files at once as there are cores; the browser tests set their own.
    maxWorkers: "100%",
  },
});
