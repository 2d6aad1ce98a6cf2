/** Where a rig hangs, which its file, its wear record, or neither says. */
import type { Condition, Rig } from "@secondline/rig";
import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import {
  applyWear,
  futureFromRecord,
  futureFromRig,
  latitudeNotes,
  partStrengths,
  readWearRecord,
  type WearRecord,
} from "../src/index.ts";
import { nextLine } from "../src/teardown/nextLine.ts";
import { atLatitude } from "../src/wear/atLatitude.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { exampleRig, section } from "./exampleRig.ts";

const USED: Condition = { monthsOutside: 12, sun: 0.5, ageYears: 1, wet: false };
const plain = exampleRig();
const used = exampleRig({
  main: { ...plain.main, sections: [section({ condition: USED })] },
  leash: { ...plain.leash, condition: USED },
  harness: { ...plain.harness, condition: USED },
});
const part = (rig: Rig, id: string) => partStrengths(rig).find((one) => one.id === id)!;
const sunOf = (rig: Rig, id: string) => part(rig, id).factors.find(({ name }) => name === "sun")!;
const LATITUDES = ["low", "middle", "high"] as const;
const WEIGHTS = { low: 1.3, middle: 1, high: 0.8 };
const codes = (notes: readonly { readonly code: string }[]) => notes.map(({ code }) => code);

function recordOf(given: Partial<WearDocument>): WearRecord {
  const reading = readWearRecord({ secondline: "wear/1", name: "record", hemisphere: "north", ...given });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}
const leashUp = (from: string) => [
  { rig: "test rig", part: "leash" as const, entries: [{ date: from, event: "putUp" as const, sun: "100 %" }] },
];

describe("months outside in a rig's file", () => {
  it.each(LATITUDES)("count with the sun of the latitude that it says: %s", (latitude) => {
    const rig = atLatitude(used, latitude);
    for (const id of ["main", "leash", "harness"]) {
      expect(sunOf(rig, id).validity!.got).toBeCloseTo(12 * 0.5 * WEIGHTS[latitude], 12);
    }
  });

  it("count as at a low latitude if it does not say one, which is told and named as a blank with its price", () => {
    for (const id of ["main", "leash", "harness"]) {
      expect(sunOf(used, id).value).toBe(sunOf(atLatitude(used, "low"), id).value);
      const [none, high] = [part(used, id), part(atLatitude(used, "high"), id)];
      expect(none.blanks!.find(({ field }) => field === "latitude")!.costs).toBeCloseTo(
        none.strength / high.strength,
        9,
      );
    }
    expect(codes(latitudeNotes(used))).toEqual(["rig.latitude"]);
    expect(latitudeNotes(atLatitude(used, "low"))).toEqual([]);
  });

  it("do not ask where a part was that was never outside, or always in deep shade, nor where a bolt was", () => {
    expect(latitudeNotes(plain)).toEqual([]);
    expect(part(plain, "main").blanks ?? []).toEqual([]);
    const shaded = { ...USED, sun: 0 };
    expect(latitudeNotes(exampleRig({ harness: { ...plain.harness, condition: shaded } }))).toEqual([]);
    const bolts = plain.anchorA.points.map((point) => ({ ...point, condition: USED }));
    const bolted = exampleRig({ anchorA: { ...plain.anchorA, points: bolts } });
    expect(latitudeNotes(bolted)).toEqual([]);
    expect(partStrengths(atLatitude(bolted, "high"))).toEqual(partStrengths(bolted));
  });

  it("that nobody wrote down count as at a low latitude wherever the rig hangs now", () => {
    const blank = exampleRig({ harness: { ...plain.harness, condition: { ageYears: 2, wet: false } } });
    expect(part(atLatitude(blank, "high"), "harness").strength5).toBe(part(blank, "harness").strength5);
  });

  it("to come have the sun of where the rig hangs, and the most if it does not say", () => {
    const year = (rig: Rig) => futureFromRig(rig, "2026-05-01")(Temporal.PlainDate.from("2027-05-01")).leash.condition;
    for (const latitude of LATITUDES) {
      expect(year(atLatitude(used, latitude)).sunMonths).toBeCloseTo(WEIGHTS[latitude] * (6 + 6), 9);
    }
    expect(year(used).sunMonths).toBeCloseTo(1.3 * (6 + 6), 9);
  });
});

describe("a rig's file and a wear record", () => {
  it("that say different latitudes count both with the sun of the sunnier one, and the difference is told", () => {
    const on = "2026-08-01";
    for (const [ofRig, ofRecord] of [
      ["middle", "low"],
      ["low", "high"],
      ["high", "middle"],
    ] as const) {
      const worn = applyWear(
        atLatitude(used, ofRig),
        recordOf({ latitude: ofRecord, parts: leashUp("2026-06-01") }),
        on,
      );
      const weight = Math.max(WEIGHTS[ofRig], WEIGHTS[ofRecord]);
      expect(worn.rig.leash.condition.sunMonths).toBeCloseTo(weight * (6 + 1.65 + 1.65), 9);
      expect(sunOf(worn.rig, "harness").validity!.got).toBeCloseTo(weight * 6, 9);
      expect(worn.notes).toContainEqual({
        code: "record.otherLatitude",
        values: { rig: ofRig, record: ofRecord },
      });
    }
  });

  it("count each with its own sun if only one of them says where it hangs, and the silent one is told", () => {
    const parts = leashUp("2026-06-01");
    const silentFile = applyWear(used, recordOf({ latitude: "high", parts }), "2026-08-01");
    expect(silentFile.rig.leash.condition.sunMonths).toBeCloseTo(1.3 * 6 + 0.8 * 3.3, 9);
    expect(codes(silentFile.notes)).toContain("rig.latitude");
    const silentRecord = applyWear(atLatitude(used, "high"), recordOf({ parts }), "2026-08-01");
    expect(silentRecord.rig.leash.condition.sunMonths).toBeCloseTo(0.8 * 6 + 1.3 * 3.3, 9);
    expect(codes(silentRecord.notes)).toContain("record.latitude");
    expect(codes(silentRecord.notes)).not.toContain("rig.latitude");
  });

  it("differ on later days as on the day itself", () => {
    const record = recordOf({ latitude: "low", parts: leashUp("2026-06-01") });
    const rigOn = futureFromRecord(atLatitude(used, "high"), record, "2026-08-01");
    const later = rigOn(Temporal.PlainDate.from("2027-08-01"));
    expect(later.leash.condition.sunMonths).toBeCloseTo(1.3 * (6 + 3.3 + 12), 9);
    expect(later.harness.condition!.sunMonths).toBeCloseTo(1.3 * (6 + 6), 9);
  });
});

it.each(LATITUDES)("the next leash takes as much sun as the last one took, at a latitude that is %s", (latitude) => {
  const entries = [{ date: "2025-06-01", event: "putUp" as const, sun: "50 %" }];
  const firstUse = "2025-06-01";
  const record = recordOf({ latitude, parts: [{ rig: "test rig", part: "leash", firstUse, entries }] });
  const rig = atLatitude(used, latitude);
  const taken = applyWear(rig, record, "2026-06-01").rig.leash.condition.sunMonths!;
  const next = nextLine(rig, record, "2026-06-01")(Temporal.PlainDate.from("2027-06-01"));
  expect(next.leash.condition.sunMonths).toBeCloseTo(taken, 9);
});

it("the next leash of one that hung in winter alone takes the sun of its summer too", () => {
  const entries = [{ date: "2025-12-01", event: "putUp" as const, sun: "100 %" }];
  const record = recordOf({
    latitude: "middle",
    parts: [{ rig: "test rig", part: "leash", firstUse: "2025-12-01", entries }],
  });
  const next = nextLine(used, record, "2026-02-01")(Temporal.PlainDate.from("2027-02-01"));
  expect(next.leash.condition.sunMonths).toBeCloseTo(12, 1);
});
