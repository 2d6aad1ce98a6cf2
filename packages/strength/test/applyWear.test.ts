import { describe, expect, it } from "vitest";
import { applyWear, partStrengths, readWearRecord, zoneAt } from "../src/index.ts";
import { wearToRig } from "../src/wear/applyWear.ts";
import { exampleRig } from "./exampleRig.ts";

const record = (() => {
  const reading = readWearRecord(
    JSON.stringify({
      secondline: "wear/1",
      name: "record",
      invented: true,
      webbings: [
        {
          id: "w",
          name: "webbing",
          length: "80 m",
          mark: "red thread",
          entries: [
            {
              date: "2025-04-01",
              event: "rigged",
              rig: "other",
              line: "main",
              markedEnd: "A",
              from: "6 m",
              to: "70 m",
              clampedAt: ["A", "B"],
            },
            { date: "2025-11-01", event: "takenDown" },
            {
              date: "2026-04-01",
              event: "rigged",
              rig: "test rig",
              line: "main",
              markedEnd: "A",
              from: "3 m",
              to: "62.01 m",
              clampedAt: ["A", "B"],
            },
            { date: "2026-06-01", event: "falls", from: "30 m", to: "36 m", falls: 40 },
            { date: "2026-07-01", event: "falls", from: "33 m", to: "39 m", falls: 30 },
          ],
        },
      ],
      parts: [
        {
          rig: "test rig",
          part: "leash",
          made: "2025-01-01",
          entries: [
            { date: "2025-04-01", event: "putUp", sun: "50 %" },
            { date: "2026-06-01", event: "falls", falls: 70 },
          ],
        },
        { rig: "test rig", part: "anchorA.hardware.0", entries: [{ date: "2025-04-01", event: "putUp" }] },
        { rig: "test rig", part: "windmill", entries: [] },
      ],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
})();

describe("a rig as it is on a date", () => {
  const worn = applyWear(exampleRig(), record, "2026-08-01");

  it("carries the old clamp mark into the loaded span, where it is the weakest place", () => {
    const main = partStrengths(worn.rig).find((part) => part.id === "main")!;
    expect(main.weakest).toEqual({ at: expect.closeTo(3, 6), reason: "clamp mark" });
    expect(worn.notes[0]).toMatchObject({
      code: "flag.clampMark",
      values: { name: "webbing", middle: { length: expect.closeTo(6, 6) } },
    });
  });

  it("adds falls where fall zones overlap", () => {
    const { zones } = partStrengths(worn.rig).find((part) => part.id === "main")!;
    const falls = (at: number) => zoneAt(zones!, at).factors.find((f) => f.name === "falls")?.validity?.got;
    expect([falls(28), falls(31), falls(35), falls(40)]).toEqual([40, 70, 30, undefined]);
  });

  it("counts the months in the weblocks, and the wear of other parts", () => {
    expect(worn.rig.main.endA.monthsClamped).toBeCloseTo(4.01, 2);
    expect(worn.rig.leash).toMatchObject({ falls: 70, condition: { ageYears: expect.closeTo(1.58, 2) } });
    expect(worn.rig.anchorA.hardware[0]!.condition.monthsOutside).toBeCloseTo(487 / 30.436875, 10);
    expect(worn.notes.at(-1)).toMatchObject({ code: "record.unknownPart", values: { part: "windmill" } });
  });

  it("gets weaker with every day it hangs, and leaves the given rig as it was", () => {
    const rig = exampleRig();
    const before = JSON.stringify(rig);
    const strengths = ["2026-04-02", "2026-08-01", "2027-04-01"].map(
      (on) => partStrengths(wearToRig(rig, record, on)).find((p) => p.id === "main")!.strength5,
    );
    expect(strengths).toEqual([...strengths].sort((a, b) => b - a));
    expect(JSON.stringify(rig)).toBe(before);
  });

  it("says so when the record knows nothing of the rig", () => {
    const { notes, rig } = applyWear(exampleRig({ name: "elsewhere" }), record, "2026-08-01");
    expect(notes).toHaveLength(1);
    expect(notes[0]).toMatchObject({
      code: "record.silentOn.both",
      values: { rig: "elsewhere", on: { day: "2026-08-01" } },
      next: { code: "record.hangsElsewhere", values: { rigs: { list: ['"test rig"'] } } },
    });
    expect(rig).toEqual(exampleRig({ name: "elsewhere" }));
  });
});

it("a loop's own condition in the rig document gives way to what its webbing has been through", () => {
  const { main } = exampleRig();
  const asNew = { kind: "sewnLoop" as const, rated: main.endB.rated, condition: { monthsOutside: 0 } };
  const rig = exampleRig({ main: { ...main, endB: asNew } });
  const holds = (on: string) => partStrengths(wearToRig(rig, record, on)).find((part) => part.id === "endB")!.strength;
  expect(holds("2026-10-01")).toBeLessThan(holds("2026-05-01"));
  expect(holds("2026-05-01")).toBeLessThan(partStrengths(rig).find((part) => part.id === "endB")!.strength);
});
