import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    name: "tests",
    isolate: false,
    include: ["{published,reference,properties,ensembles,evidence,house}/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
