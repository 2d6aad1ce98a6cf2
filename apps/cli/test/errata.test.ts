import { describe, expect, it } from "vitest";
import { errataLines } from "../src/errata.ts";

const erratum = { date: "2026-12-01", from: "0.1.0", to: "0.2.0", what: "Loads are 3 % low.", remedy: "Run it again." };

describe("a known error of a version", () => {
  it("is told with its date and what to do, to that version only", () => {
    const text = errataLines("0.1.5", [erratum]).join("\n");
    expect(text).toBe("Known error of this version, told on 1 Dec 2026: Loads are 3 % low. Run it again.");
    expect(errataLines("0.3.0", [erratum])).toEqual([]);
  });
});
