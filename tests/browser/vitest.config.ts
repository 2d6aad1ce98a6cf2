import { defineConfig } from "vitest/config";
import { IN_A_BROWSER } from "./inABrowser.ts";

export default defineConfig({
  test: {
    ...IN_A_BROWSER,
    name: "browser",
    include: ["*.test.ts"],
    exclude: ["journey.test.ts"],
    sequence: { groupOrder: 2 },
    // Two files at a time, each with a server and a browser of its own: a page alone does not keep two cores busy.
    maxWorkers: 2,
  },
});
