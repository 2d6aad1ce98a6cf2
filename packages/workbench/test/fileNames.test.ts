import { expect, it } from "vitest";
import { fileName } from "../src/index.ts";

it("makes file names that any system takes", () => {
  expect(fileName("Üben / am Fels: 60 m!", "json")).toBe("uben-am-fels-60-m.json");
  expect(fileName("高空", "csv")).toBe("rig.csv");
});
