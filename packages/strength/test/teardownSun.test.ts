import type { Rig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { samplesOn } from "../src/teardown/teardown.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { DATE, demo, demoRig, planned, recordOf } from "./oldDemo.ts";

describe("the sun in the row of a piece", () => {
  const { latitude: _1, hemisphere: _2, ...silent } = JSON.parse(demo("old-rig-wear.json")) as WearDocument;
  const { latitude: _3, ...rig } = demoRig();
  const sunOf = (of: Rig, record: Partial<WearDocument>) =>
    Object.fromEntries(
      samplesOn(of, recordOf({ ...silent, ...record }), DATE).samples.flatMap(({ kind, cuts, row }) =>
        kind === "sunOnly" || kind === "clampMark" ? [[`${kind} ${cuts[0]!.webbing}`, Number(row.sun_months)]] : [],
      ),
    );

  it("is the least that it can have been where nobody says at which latitude and on which half of the earth it hung", () => {
    const unsaid = sunOf(rig, {});
    expect(Object.keys(unsaid).length).toBeGreaterThan(1);
    for (const latitude of ["low", "middle", "high"] as const) {
      for (const hemisphere of ["north", "south"] as const) {
        for (const [piece, sun] of Object.entries(sunOf(rig, { latitude, hemisphere }))) {
          expect(unsaid[piece]).toBeLessThanOrEqual(sun + 0.3);
        }
      }
    }
    const [high] = Object.values(sunOf(rig, { latitude: "high" }));
    expect(Object.values(unsaid)[0]).toBe(high);
  });

  it("is that of the less sunny latitude if file and record differ, though strengths count the sunnier one", () => {
    expect(sunOf({ ...rig, latitude: "high" }, { latitude: "low", hemisphere: "north" })).toEqual(
      sunOf(rig, { latitude: "high", hemisphere: "north" }),
    );
  });

  it("stands in the rows of the plan", () => {
    const { pieces } = planned(rig, recordOf(silent), 2);
    const known = sunOf(rig, {});
    const webbings = pieces.filter(({ kind }) => kind === "sunOnly");
    for (const { cuts, row } of webbings) expect(Number(row.sun_months)).toBe(known[`sunOnly ${cuts[0]!.webbing}`]);
    expect(webbings.length).toBeGreaterThan(0);
  });

  it("is left out for a part of whose light nobody says anything", () => {
    const whole = (sun?: number) => {
      const condition = { monthsOutside: 10, ageYears: 2, wet: false, ...(sun === undefined ? {} : { sun }) };
      const leash = { ...rig.leash, condition };
      const record = recordOf({ ...silent, parts: [] });
      return samplesOn({ ...rig, leash }, record, DATE).samples.find(({ kind }) => kind === "leash")!.row;
    };
    expect(whole().sun_months ?? "").toBe("");
    // Ten months in two years may be November to March of both.
    expect(Number(whole(0.5).sun_months)).toBeCloseTo(0.8 * 0.5 * 2 * (0.35 + 0.4 + 0.45 + 0.6 + 0.75), 9);
  });

  it("is that of the record alone for a leash whose record begins late and of whose light the file says nothing", () => {
    const sunOfLeash = (monthsOutside: number) => {
      const leash = { ...rig.leash, condition: { monthsOutside, ageYears: 2, wet: false } };
      const entries = [{ date: "2026-08-01", event: "putUp" as const, sun: "50 %" }];
      const record = recordOf({ ...silent, parts: [{ rig: rig.name, part: "leash", entries }] });
      return samplesOn({ ...rig, leash }, record, DATE).samples.find(({ kind }) => kind === "leash")!.row.sun_months;
    };
    expect(Number(sunOfLeash(10))).toBeGreaterThan(0);
    expect(sunOfLeash(10)).toBe(sunOfLeash(0));
  });

  it("is left out where the record does not say how much light fell, though strengths count all of it", () => {
    const webbings = silent.webbings!.map((webbing) => ({
      ...webbing,
      entries: webbing.entries.map((whole) => {
        const { sun: _unsaid, ...entry } = whole as { readonly sun?: unknown };
        return entry;
      }),
    }));
    const record = { ...silent, webbings } as WearDocument;
    const rows = samplesOn(rig, recordOf(record), DATE).samples.filter(({ kind }) => kind === "sunOnly");
    expect(rows.length).toBeGreaterThan(0);
    for (const { row } of rows) expect([row.sun_months, Number(row.months_outside) > 0]).toEqual(["", true]);
  });
});
