import { defineConfig } from "vitest/config";

/** The tests that take minutes: more draws, larger rigs, finer meshes. `npm test` takes none of them. */
export default defineConfig({
  test: {
    name: "long",
    include: ["packages/*/test/**/*.long.ts", "apps/*/test/**/*.long.ts", "tests/**/*.long.ts"],
    maxWorkers: "100%",
    testTimeout: 1_800_000,
    hookTimeout: 120_000,
  },
});
