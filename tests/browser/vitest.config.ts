import { defineConfig } from "vitest/config";
import { IN_A_BROWSER } from "./inABrowser.ts";

export default defineConfig({
  test: {
    ...IN_A_BROWSER,
    name: "browser",
    include: ["*.test.ts"],
    exclude: ["journey.test.ts"],
    sequence: { groupOrder: 2 },
    // One file at a time: they share the server, and some of them change what it serves.
    maxWorkers: 1,
  },
});
