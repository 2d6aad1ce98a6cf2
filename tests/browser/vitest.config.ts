import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    name: "browser",
    include: ["*.test.ts"],
    // After all other tests and one file at a time: a page, its computing thread and the rasteriser fill two cores.
    sequence: { groupOrder: 1 },
    maxWorkers: 1,
    // One process for all files: they share browsers.
    isolate: false,
    // Bounds for a slow machine, not measurements: what is waited for comes in seconds.
    testTimeout: 180_000,
    hookTimeout: 120_000,
    // Against a machine that stumbles, such as a browser that does not start; the tests themselves are to pass without.
    retry: 1,
    expect: { poll: { timeout: 30_000 } },
  },
});
