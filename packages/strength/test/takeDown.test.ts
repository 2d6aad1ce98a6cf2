import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { futureFromRecord, futureFromRig, partStrengths, readWearRecord } from "../src/index.ts";
import { takeDown } from "../src/takeDown/takeDown.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { asNew, exampleRig, section } from "./exampleRig.ts";

const rig = exampleRig({
  main: { ...exampleRig().main, sections: [section({ condition: { ...asNew, monthsOutside: 1 } })] },
});
const question = {
  rigOn: futureFromRig(rig, "2026-05-01"),
  on: "2026-05-01",
  requiredFactor: 2,
  confidence: 0.95,
};

describe("the take-down date", () => {
  it("is the first day on which the margin is no longer met", () => {
    const found = takeDown({ ...question, loads: { main: 11_000 } });
    const [main] = found.parts;
    expect(main).toMatchObject({ id: "main", when: "later", date: found.date });
    expect(main!.strengthThen).toBeLessThan(22_000);
    const dayBefore = partStrengths(question.rigOn(yesterday(found.date!))).find((p) => p.id === "main")!;
    expect(dayBefore.strength5).toBeGreaterThanOrEqual(22_000);
  });

  it("comes sooner with a larger load, and with more confidence", () => {
    const on = (load: number, confidence: number) =>
      takeDown({ ...question, confidence, loads: { main: load } }).date ?? "9999";
    expect(on(11_500, 0.95) < on(11_000, 0.95)).toBe(true);
    expect(on(11_000, 0.99) < on(11_000, 0.95)).toBe(true);
  });

  it("says now when it is thin already, and beyond when it lasts", () => {
    const found = takeDown({ ...question, loads: { main: 1000, leash: 9000 } });
    expect(found.parts.map((p) => [p.id, p.when])).toEqual([
      ["leash", "now"],
      ["main", "beyond"],
    ]);
    expect(found.already.map((p) => p.id)).toEqual(["leash"]);
    const both = takeDown({ ...question, loads: { main: 14_000, leash: 9000, harness: 100 } });
    expect(both.already.map((p) => p.id)).toEqual(["leash", "main"]);
    expect(found.date).toBe("2026-05-01");
    expect(found.horizon).toBe("2028-04-30");
  });

  it("follows the record at the present rate of use, and winter slows the sun", () => {
    const reading = readWearRecord(
      JSON.stringify({
        secondline: "wear/1",
        name: "record",
        webbings: [
          {
            id: "w",
            name: "webbing",
            length: "80 m",
            mark: "red",
            entries: [
              {
                date: "2026-04-01",
                event: "rigged",
                rig: "test rig",
                line: "main",
                markedEnd: "A",
                from: "3 m",
                to: "62 m",
              },
              { date: "2026-06-01", event: "falls", from: "30 m", to: "36 m", falls: 60 },
            ],
          },
        ],
      }),
    );
    if (!reading.ok) throw new Error("the record is not sound");
    const rigOn = futureFromRecord(exampleRig(), reading.record, "2026-07-01");
    const falls = (day: string) => {
      const wear = rigOn(Temporal.PlainDate.from(day)).main.sections[0]!.wear[0]!;
      return wear.kind === "fallZone" ? wear.falls : Number.NaN;
    };
    expect(falls("2026-07-01")).toBe(60);
    expect(falls("2026-09-30")).toBeCloseTo(120, 9);
    const sun = (day: string) => rigOn(Temporal.PlainDate.from(day)).main.sections[0]!.condition.sunMonths!;
    const summer = sun("2026-08-01") - sun("2026-07-01");
    const winter = sun("2027-01-01") - sun("2026-12-01");
    expect(summer).toBeGreaterThan(4 * winter);
  });
});

describe("on later days, without a record", () => {
  const used = { monthsOutside: 12, sun: 0.5, latitude: "middle", ageYears: 1, wet: false } as const;
  const usedRig = exampleRig({ main: { ...exampleRig().main, sections: [section({ condition: used })] } });
  const taken = (from: string, to: string, climate?: Parameters<typeof futureFromRig>[2]) => {
    const later = futureFromRig(usedRig, from, climate)(Temporal.PlainDate.from(to));
    return later.main.sections[0]!.condition.sunMonths! - 12 * 0.5;
  };

  it("the sun of the season ahead counts, and that of the half of the earth where it is more", () => {
    const middle = { latitude: "middle", hemisphere: "north" } as const;
    expect(taken("2026-05-01", "2026-09-01", middle)).toBeCloseTo(0.5 * (1.5 + 1.65 + 1.65 + 1.45), 9);
    expect(taken("2026-11-01", "2027-03-01", middle)).toBeCloseTo(0.5 * (0.45 + 0.35 + 0.4 + 0.6), 9);
    // Where it hangs a rig document does not say: never less than an average month, in summer or winter.
    for (const [from, to] of [
      ["2026-05-01", "2026-09-01"],
      ["2026-11-01", "2027-03-01"],
    ] as const) {
      for (const latitude of ["low", "middle", "high"] as const) {
        for (const hemisphere of ["north", "south"] as const) {
          expect(taken(from, to)).toBeGreaterThanOrEqual(taken(from, to, { latitude, hemisphere }));
        }
      }
      expect(taken(from, to)).toBeGreaterThan(0.5 * 4);
    }
  });

  it("what is blank in the file stays blank, and a new part takes the sun of its first months", () => {
    const blank = exampleRig({ main: { ...exampleRig().main, sections: [section({ condition: {} })] } });
    const later = futureFromRig(blank, "2026-05-01")(Temporal.PlainDate.from("2026-09-01"));
    expect(later.main.sections[0]!.condition).toEqual({});
    const fresh = exampleRig({ main: { ...exampleRig().main, sections: [section({ condition: asNew })] } });
    const year = futureFromRig(fresh, "2026-05-01")(Temporal.PlainDate.from("2027-05-01"));
    expect(year.main.sections[0]!.condition.sunMonths).toBeCloseTo(12 * 1.3, 9);
  });
});

describe("on later days, with a record", () => {
  const CLIMATE = { latitude: "middle", hemisphere: "north" } as const;
  const TODAY = "2026-07-01";
  const LATER = "2027-07-01";
  const used = { monthsOutside: 6, sun: 1, latitude: "middle", ageYears: 2, wet: false } as const;
  const plain = exampleRig();
  const usedRig = exampleRig({
    latitude: "middle",
    main: { ...plain.main, sections: [section({ condition: used })] },
    backup: {
      ...plain.backup!,
      sections: [section({ condition: used })],
      connections: plain.backup!.connections.map((part) => ({ ...part, condition: used })),
    },
    leash: { ...plain.leash, condition: used, falls: 40 },
    harness: { ...plain.harness, condition: used },
    anchorA: { ...plain.anchorA, hardware: plain.anchorA.hardware.map((part) => ({ ...part, condition: used })) },
  });
  const rigged = { event: "rigged", rig: "test rig", line: "main", markedEnd: "A", from: "3 m", to: "62 m" } as const;
  const webbing = {
    id: "w",
    name: "webbing",
    length: "80 m",
    mark: "red",
    firstUse: "2026-04-01",
    entries: [{ date: "2026-04-01", ...rigged }],
  };
  const rigOn = (record: Partial<WearDocument>, day = LATER) => {
    const base = { secondline: "wear/1", name: "record", ...CLIMATE };
    const reading = readWearRecord({ ...base, ...record });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    return futureFromRecord(usedRig, reading.record, TODAY)(Temporal.PlainDate.from(day));
  };
  const months = 365 / 30.436875;

  it("a part that it does not follow ages as it does without one", () => {
    const [followed, alone] = [
      rigOn({ webbings: [webbing] }),
      futureFromRig(usedRig, TODAY, CLIMATE)(Temporal.PlainDate.from(LATER)),
    ];
    expect(followed.leash.falls).toBeCloseTo(40 * (1 + months / 6), 9);
    for (const one of ["leash", "harness", "anchorA", "anchorB", "backup"] as const) {
      expect(followed[one]).toEqual(alone[one]);
    }
    const backup = rigOn({ webbings: [{ ...webbing, entries: [{ ...webbing.entries[0]!, line: "backup" }] }] });
    expect(backup.main).toEqual(alone.main);
  });

  it("a part that it follows ages once, and so does one of which it does not say when it was up", () => {
    const condition = (entries: readonly object[]) =>
      rigOn({ parts: [{ rig: "test rig", part: "harness", entries } as never] }).harness.condition!;
    const up = { date: "2026-06-01", event: "putUp" };
    const before = 30 / 30.436875;
    expect(condition([up]).monthsOutside).toBeCloseTo(6 + before + months, 9);
    expect(condition([up]).ageYears).toBeCloseTo(2 + (before + months) / 12, 9);
    const dry = condition([{ date: "2026-06-01", event: "wet", wet: false }]);
    expect(dry.monthsOutside).toBeCloseTo(6 + months, 9);
    expect(dry.ageYears).toBeCloseTo(2 + (before + months) / 12, 9);
    const down = condition([up, { date: "2026-06-11", event: "takenDown" }]);
    expect(down.monthsOutside).toBeCloseTo(6 + 10 / 30.436875, 9);
  });

  it("a leash goes on being fallen on, whether or not it says when that was up", () => {
    const falls = { date: "2026-06-16", event: "falls", falls: 10 } as const;
    const leash = (entries: readonly object[]) =>
      rigOn({ parts: [{ rig: "test rig", part: "leash", entries } as never] }).leash.falls!;
    const file = 40 * (1 + months / 6);
    expect(leash([falls])).toBeCloseTo(file + 10 * (1 + months), 9);
    expect(leash([{ date: "2026-06-16", event: "putUp" }, falls])).toBeCloseTo(file + 10 * (1 + months), 9);
  });

  it("no part is stronger than without one, as long as the record does not go back to its first use", () => {
    const { firstUse: _none, ...late } = webbing;
    const records: Partial<WearDocument>[] = [
      { webbings: [late] },
      { webbings: [{ ...late, entries: [{ ...webbing.entries[0]!, line: "backup" }] }] },
      ...(["leash", "harness", "connection.0", "anchorA.hardware.0"] as const).map((id) => ({
        parts: [{ rig: "test rig", part: id, entries: [{ date: "2026-06-01", event: "wet" as const, wet: false }] }],
      })),
      { parts: [{ rig: "test rig", part: "leash", entries: [{ date: "2026-06-01", event: "putUp" as const }] }] },
    ];
    for (const day of [TODAY, "2026-12-01", LATER]) {
      const alone = partStrengths(futureFromRig(usedRig, TODAY, CLIMATE)(Temporal.PlainDate.from(day)));
      for (const record of records) {
        const strengths = partStrengths(rigOn(record, day));
        for (const [i, { id, strength5 }] of strengths.entries()) {
          expect([id, strength5 <= alone[i]!.strength5 * (1 + 1e-12)]).toEqual([id, true]);
        }
      }
    }
  });
});

function yesterday(day: string) {
  return Temporal.PlainDate.from(day).subtract({ days: 1 });
}
