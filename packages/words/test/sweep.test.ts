import { readdirSync, readFileSync } from "node:fs";
import { KNOB_FAULTS, type Knob } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { knobValue } from "../src/createSweepWords.ts";
import { filled } from "../src/language.ts";
import { SWEEP_ENGLISH } from "../src/sweepEnglish.ts";

const root = new URL("../../../", import.meta.url);
const sources = ["packages/words/src", "apps/cli/src"].flatMap((folder) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith("sweepEnglish.ts"))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, root), "utf8")),
);

describe("what is said of sweeps and studies", () => {
  const keys = Object.keys(SWEEP_ENGLISH) as (keyof typeof SWEEP_ENGLISH)[];

  it("has no sentence that nobody says", () => {
    const text = sources.join("\n");
    // A key that is put together: what stands before the first brace, and the shape of the rest.
    const patterns = [...text.matchAll(/`([\w.]+\.(?:\$\{[^}]*\}[\w.]*)+)`/g)].map(
      ([, one]) => new RegExp(`^${one!.replace(/\$\{[^}]*\}/g, "[\\w]+").replaceAll(".", "\\.")}$`),
    );
    const said = (key: string) => text.includes(`"${key}"`) || patterns.some((one) => one.test(key));
    expect(keys.filter((key) => !said(key))).toEqual([]);
  });

  it("has all braces closed, and a sentence for every fault of a range", () => {
    for (const key of keys) {
      const names = [...SWEEP_ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      for (const value of [1, 2]) {
        expect(filled(SWEEP_ENGLISH[key], Object.fromEntries(names.map((name) => [name, value])))).not.toMatch(/[{}|]/);
      }
    }
    for (const kind of KNOB_FAULTS) expect(keys).toContain(`fault.${kind}`);
  });
});

it("a value of what is swept has no more digits than it needs, also below zero", () => {
  const rise: Knob = {
    kind: "field",
    name: "rise",
    path: "rise",
    dimension: "length",
    unit: "m",
    from: -3,
    to: 12,
    whole: false,
  };
  expect([-1.2, -2, 0, 9.4, 10].map((value) => knobValue(rise, value, "nearest"))).toEqual([
    "−1.2 m",
    "−2 m",
    "0 m",
    "9.4 m",
    "10 m",
  ]);
});
