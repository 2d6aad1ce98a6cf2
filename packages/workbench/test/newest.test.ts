import { describe, expect, it } from "vitest";
import { Newest } from "../src/newest.ts";

function filled(most: number, keys: string): Newest<string> {
  const newest = new Newest<string>(most);
  for (const key of keys) newest.put(key, key.toUpperCase());
  return newest;
}

describe("values of which the newest stay", () => {
  it("come back by their keys, the oldest first", () => {
    const kept = filled(3, "abc");
    expect(kept.get("b")).toBe("B");
    expect(kept.get("d")).toBeUndefined();
    expect(kept.values()).toEqual(["A", "B", "C"]);
  });

  it("make room from the oldest on", () => {
    const kept = filled(2, "abc");
    expect(kept.get("a")).toBeUndefined();
    expect(kept.values()).toEqual(["B", "C"]);
  });

  it("count as new when they are put again, and not when they are looked at", () => {
    const again = filled(2, "abac");
    expect(again.values()).toEqual(["A", "C"]);
    const seen = filled(2, "ab");
    seen.get("a");
    seen.put("c", "C");
    expect(seen.values()).toEqual(["B", "C"]);
  });
});
