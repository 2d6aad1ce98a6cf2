import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readRig } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import {
  analyseBreakLog,
  applyWear,
  factorsFromLog,
  futureFromRecord,
  partStrengths,
  readBreakLog,
  readWearRecord,
} from "../src/index.ts";
import { takeDown } from "../src/takeDown/takeDown.ts";

const demo = (name: string) =>
  readFileSync(fileURLToPath(new URL(`../../../demo-data/${name}`, import.meta.url)), "utf8");

const log = readBreakLog(demo("break-log.csv"));
const record = readWearRecord(demo("old-rig-wear.json"));
const rig = readRig(demo("old-rig.json"));
const DATE = "2026-11-10";

describe("the demonstration data", () => {
  it("is sound, and says that it is invented", () => {
    expect(log.ok || log.faults).toBe(true);
    expect(record.ok || record.issues).toBe(true);
    expect(record.ok && record.record.invented).toBe(true);
    expect(demo("break-log.csv")).toMatch(/^# Invented/);
  });

  it("old rig and wear record tell the same story: the clamp mark at 4.3 m is the weakest place", () => {
    if (!record.ok || !rig.ok) throw new Error("the demonstration data is not sound");
    const worn = applyWear(rig.rig, record.record, DATE);
    const main = partStrengths(worn.rig).find((part) => part.id === "main")!;
    expect(main.weakest?.at).toBeCloseTo(4.3, 1);
    expect(main.weakest?.reason).toBe("clamp mark");
    expect(
      worn.notes.some((note) => note.code === "flag.clampMark" && /"months":(13\.[5-9]|14)/.test(JSON.stringify(note))),
    ).toBe(true);
    expect(worn.notes.filter((note) => note.code === "record.lengthOff")).toEqual([]);
    expect(worn.rig.main.endA.monthsClamped).toBeCloseTo(1, 1);
    expect(worn.rig.main.sections[0]!.condition.monthsOutside).toBeCloseTo(18, 0);
  });

  it("gives a report per group, with its doubts, and tests that count for the webbing", () => {
    if (!log.ok || !rig.ok) throw new Error("the demonstration data is not sound");
    const { groups } = analyseBreakLog(log.tests);
    expect(groups.map((g) => g.tests.length)).toEqual([4, 1, 2, 4, 1, 6, 1, 3, 1, 2]);
    for (const g of groups) {
      expect(g.characteristic.at95.value).toBeGreaterThan(0);
      expect(g.characteristic.at95.value).toBeLessThan(g.characteristic.at75.value);
    }
    const bases = partStrengths(rig.rig, factorsFromLog(log.tests)).find((p) => p.id === "main")!.bases;
    // They count, but nothing that rests on them is called tested.
    expect(
      bases.some(({ kind, note }) => kind === "assumed" && typeof note === "object" && note.code === "basis.invented"),
    ).toBe(true);
    expect(bases.some(({ kind }) => kind === "tested")).toBe(false);
  });

  it("has a take-down date for a load that the line just bears", () => {
    if (!record.ok || !rig.ok) throw new Error("the demonstration data is not sound");
    const now = partStrengths(applyWear(rig.rig, record.record, DATE).rig).find((part) => part.id === "main")!;
    const found = takeDown({
      rigOn: futureFromRecord(rig.rig, record.record, DATE),
      on: DATE,
      loads: { main: 0.49 * now.strength5 },
      requiredFactor: 2,
      confidence: 0.95,
    });
    expect(found.parts[0]).toMatchObject({ id: "main", when: "later", date: found.date });
    expect(found.date! > DATE && found.date! < found.horizon).toBe(true);
  });
});
