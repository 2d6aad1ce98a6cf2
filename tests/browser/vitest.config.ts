import { defineConfig } from "vitest/config";
import { IN_A_BROWSER } from "./inABrowser.ts";

export default defineConfig({
  test: {
    ...IN_A_BROWSER,
    name: "browser",
    include: ["*.test.ts"],
    exclude: ["journey.test.ts"],
    sequence: { groupOrder: 2 },
    // Two files at a time: while one waits for its page, or for the browser to start, the other has a core of its own.
    maxWorkers: 2,
  },
});
