import { defineConfig } from "vitest/config";

/** The long comparison of whole ensembles, apart from `npm test`. */
export default defineConfig({
  test: {
    name: "ensembles",
    include: ["**/*.long.ts"],
    root: import.meta.dirname,
    testTimeout: 3_600_000,
    hookTimeout: 3_600_000,
  },
});
