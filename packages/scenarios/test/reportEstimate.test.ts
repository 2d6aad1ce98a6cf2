import { beforeAll, describe, expect, it } from "vitest";
import { type Outcome, report, study } from "../src/index.ts";
import { finish } from "./finish.ts";
import { testRig } from "./testRig.ts";

const whatIfs = [{ kind: "leashFall", at: 0.5 }] as const;
let plain: Outcome;
let estimated: Outcome;
beforeAll(() => {
  plain = finish(study(testRig, { accuracy: "quick", whatIfs }));
  estimated = finish(study(testRig, { accuracy: "quick", whatIfs, estimate: true }));
});
const page = (outcome: Outcome) => report(outcome, { rig: testRig, date: "2026-07-01" });
/** Second cells of the table of parts: the loads. */
const loads = (outcome: Outcome) => {
  const [, table] = /Every part<\/h2>([\s\S]*?)<\/table>/.exec(page(outcome))!;
  return [...table!.matchAll(/<tr><t[hd][^>]*>[^<]*<\/t[hd]><td[^>]*>([^<]*)<\/td>/g)].map(([, text]) => text!);
};

describe("a report with an estimate", () => {
  it("gives every load its ±, and says what that is", () => {
    expect(loads(estimated)).toHaveLength(estimated.parts.length);
    for (const load of loads(estimated)) expect(load).toMatch(/^[\d.]+ k?N ± [\d.]+ k?N$/);
    expect(page(estimated)).toContain("from a second mesh");
  });

  it("says of a part whose second run failed that its ± is not known", () => {
    const parts = estimated.parts.map((part) => {
      if (part.id !== "leash") return part;
      const { loadUncertainty: _, ...rest } = part;
      return { ...rest, uncertaintyUnknown: true as const };
    });
    expect(loads({ ...estimated, parts }).filter((load) => load.endsWith("± not known"))).toHaveLength(1);
  });

  it("is silent about it when none was asked for", () => {
    expect(loads(plain)).toHaveLength(plain.parts.length);
    for (const load of loads(plain)) expect(load).not.toContain("±");
    expect(page(plain)).not.toContain("second mesh");
  });
});
