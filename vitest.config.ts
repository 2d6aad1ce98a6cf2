import { defineConfig } from "vitest/config";

export default defineConfig({
  // As many files at once as there are cores; the browser tests set their own.
  test: { projects: ["packages/*", "apps/*", "tests", "tests/browser"], maxWorkers: "100%" },
});
