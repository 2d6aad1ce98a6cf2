import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    name: "tests",
    include: ["{published,reference,properties,ensembles,evidence,house}/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
