/** What is said of the days to come beside each verdict: no date is never good news by itself. */
import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import type { Outcome } from "@secondline/scenarios";
import { futureFromRig } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { outlook, outlookText } from "../src/outlook.ts";
import { demo } from "./support/command.ts";

const ON = "2026-06-01";
const reading = readRig(readFileSync(demo("old-rig.json"), "utf8"));
if (!reading.ok) throw new Error("the demo rig is not readable");
const rigOn = futureFromRig(reading.rig, ON);

/** What is said of a rig whose leash gets `load` newtons, under a verdict. */
function said(verdict: Outcome["verdict"], load: number | undefined, incomplete: readonly number[] = []): string {
  const parts = load === undefined ? [] : [{ id: "leash", load }];
  const outcome = { verdict, incomplete, requiredFactor: 2, parts } as unknown as Outcome;
  return outlookText(outlook(outcome, { rigOn, breakTests: [] }, ON)).join(" ");
}

describe("the outlook", () => {
  it("says that every part keeps its margin only under a verdict that holds", () => {
    expect(said("holds", 10)).toContain("every part keeps the required margin until 2028-");
    for (const text of [said("thin", 10), said("fails", 10), said("holds", 10, [0]), said("thin", undefined)]) {
      expect(text).not.toContain("every part keeps");
    }
  });

  it("beside a thin verdict that wear has no part in says that it is thin today", () => {
    expect(said("thin", 10)).toMatch(/no date up to 2028-\d\d-\d\d.*the verdict above is thin today/);
  });

  it("gives no date to wait for under a verdict that fails, and a date under one that does not", () => {
    // The demo leash holds about 11.5 kN in its knot: twice 5.6 kN is reached within two years.
    expect(said("holds", 5600)).toMatch(/take down before 202[678]-/);
    expect(said("thin", 5600)).toMatch(/take down before 202[678]-.*The verdict above is thin today already/);
    expect(said("fails", 5600)).toMatch(/no date to wait for.*By wear alone, from 202[678]-/);
  });

  it("says that a part is without its margin already", () => {
    expect(said("thin", 9000)).toContain("already without the required margin: Leash");
  });
});
