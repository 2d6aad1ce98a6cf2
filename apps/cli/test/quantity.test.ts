import { expect, it } from "vitest";
import { margin } from "../src/quantity.ts";

it.each([
  [1.996, "1.99"],
  [2, "2.00"],
  [2.3, "2.30"],
  [9.999, "9.99"],
  [14.9, "14"],
  [99.9, "99"],
  [100, "> 99"],
])("a margin of %d reads %s: never larger than it is", (ratio, text) => {
  expect(margin(ratio)).toBe(text);
});
