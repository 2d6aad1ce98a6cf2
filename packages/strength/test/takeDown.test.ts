import { Temporal } from "temporal-polyfill";
import { describe, expect, it } from "vitest";
import { futureFromRecord, futureFromRig, partStrengths, readWearRecord } from "../src/index.ts";
import { takeDown } from "../src/takeDown/takeDown.ts";
import { asNew, exampleRig, section } from "./exampleRig.ts";

const rig = exampleRig({
  main: { ...exampleRig().main, sections: [section({ condition: { ...asNew, monthsOutside: 2 } })] },
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

function yesterday(day: string) {
  return Temporal.PlainDate.from(day).subtract({ days: 1 });
}
