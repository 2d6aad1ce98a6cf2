import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    // As many files at once as there are cores; the browser tests set their own.
    projects: ["packages/*", "apps/*", "tests", "tests/browser", "tests/browser/vitest.journey.config.ts"],
    maxWorkers: "100%",
  },
});
