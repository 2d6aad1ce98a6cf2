import { defineConfig } from "vitest/config";

/** The simulations that take minutes: `vitest run --config packages/strength/vitest.long.config.ts`. */
export default defineConfig({
  root: import.meta.dirname,
  test: { name: "strength, long", include: ["test/**/*.long.ts"], testTimeout: 1_200_000 },
});
