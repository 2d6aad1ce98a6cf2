import { defineConfig } from "vitest/config";

/** Studies on GNU parallel and on a Slurm of two nodes, for real, and killed at random moments. `npm test` takes none of them. */
export default defineConfig({
  test: {
    name: "cluster",
    include: ["tests/cluster/**/*.cluster.ts"],
    maxWorkers: 1,
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
