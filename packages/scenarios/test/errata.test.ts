import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { errataOf, readErrata } from "../src/index.ts";

const erratum = { date: "2026-12-01", from: "0.1.0", to: "0.2.3", what: "Loads are 3 % low.", remedy: "Run it again." };
const list = (...errata: unknown[]) => ({ format: "secondline/errata/1", errata });

describe("known errors of a version", () => {
  it("are those whose range holds it, by number and not by letter, the newest first", () => {
    const newer = { ...erratum, date: "2027-01-01", from: "0.2.0", to: "0.10.0" };
    const errata = readErrata(list(erratum, newer))!;
    expect(errataOf("0.1.0", errata)).toEqual([erratum]);
    expect(errataOf("0.2.3", errata)).toEqual([newer, erratum]);
    expect(errataOf("0.9.0", errata)).toEqual([newer]);
    expect(errataOf("0.10.1", errata)).toEqual([]);
  });

  it("are not read from a list that is none", () => {
    for (const bad of [null, 3, [], "", {}, { errata: [] }, { format: "secondline/errata/1" }, list(null)])
      expect(readErrata(bad)).toBeUndefined();
    for (const field of ["date", "from", "to", "what", "remedy"] as const) {
      expect(readErrata(list({ ...erratum, [field]: "" }))).toBeUndefined();
      expect(readErrata(list({ ...erratum, [field]: 7 }))).toBeUndefined();
    }
    expect(readErrata(list({ ...erratum, to: "latest" }))).toBeUndefined();
  });

  it("the list that is built in can be read", () => {
    const file = new URL("../src/errata/errata.json", import.meta.url);
    expect(readErrata(JSON.parse(readFileSync(file, "utf8")))).toBeDefined();
  });
});
