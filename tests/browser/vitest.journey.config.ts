import { defineConfig } from "vitest/config";
import { IN_A_BROWSER } from "./inABrowser.ts";

/** The journey of a first visit, before the other visits: it makes the whole search of the demo rig, whose results they find. */
export default defineConfig({
  test: {
    ...IN_A_BROWSER,
    name: "journey",
    include: ["journey.test.ts"],
    // After all tests without a browser: the search fills two cores.
    sequence: { groupOrder: 1 },
    maxWorkers: 1,
  },
});
