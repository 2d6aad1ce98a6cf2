import { describe, expect, it } from "vitest";
import { readWearRecord, type WearRecord, wearState } from "../src/index.ts";
import type { WearDocument } from "../src/wear/schema.ts";

type Entries = NonNullable<WearDocument["webbings"]>[number]["entries"];
const RIGGED = { event: "rigged", rig: "gap", line: "main", markedEnd: "A", from: "2 m", to: "62 m" } as const;

function recordOf(entries: Entries, given: Partial<WearDocument> = {}): string {
  const webbing = { id: "w", name: "webbing", length: "80 m", mark: "red thread", made: "2025-01-01", entries };
  const where = { latitude: "middle", hemisphere: "north" } as const;
  return JSON.stringify({
    secondline: "wear/1",
    name: "record",
    ...where,
    webbings: [webbing],
    ...given,
  } satisfies WearDocument);
}

function read(entries: Entries, given?: Partial<WearDocument>): WearRecord {
  const reading = readWearRecord(recordOf(entries, given));
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.record;
}
const stateOf = (entries: Entries, on: string) => wearState(read(entries), on).webbings[0]!;

function faults(entries: Entries, given?: Partial<WearDocument>): string[] {
  const reading = readWearRecord(recordOf(entries, given));
  if (reading.ok) throw new Error("the record was taken as sound");
  return reading.issues.map((issue) => issue.path);
}

describe("the state at a date", () => {
  it("counts months and sun only while the webbing hangs, and only up to the date", () => {
    const entries: Entries = [
      { date: "2025-04-01", ...RIGGED, sun: "50 %" },
      { date: "2025-10-01", event: "takenDown" },
      { date: "2026-04-01", ...RIGGED },
    ];
    const down = stateOf(entries, "2026-01-15");
    expect(down.monthsOutside).toBeCloseTo(183 / 30.436875, 10);
    // April to September weigh 1.2 + 1.5 + 1.65 + 1.65 + 1.45 + 1.1 months of full sun, half of it in the shade.
    expect(down.sunMonths).toBeCloseTo(0.5 * 8.55, 10);
    expect(down.placement).toBeUndefined();
    expect(stateOf(entries, "2026-06-01").monthsOutside).toBeCloseTo((183 + 61) / 30.436875, 10);
    expect(down.ageYears).toBeCloseTo(1.04, 2);
  });

  it("winter is summer on the southern half", () => {
    const july: Entries = [
      { date: "2025-07-01", ...RIGGED },
      { date: "2025-08-01", event: "takenDown" },
    ];
    const sun = (hemisphere: "north" | "south") =>
      wearState(read(july, { hemisphere }), "2025-09-01").webbings[0]!.sunMonths;
    expect(sun("north")).toBeCloseTo(1.65, 10);
    expect(sun("south")).toBeCloseTo(0.4, 10);
  });

  it("a latitude or hemisphere that nobody wrote down counts as the one with the most sun", () => {
    const year: Entries = [
      { date: "2025-03-01", ...RIGGED },
      { date: "2025-11-01", event: "takenDown" },
      { date: "2026-02-01", ...RIGGED },
    ];
    const climates = (["low", "middle", "high"] as const).flatMap((latitude) =>
      (["north", "south"] as const).map((hemisphere) => ({ latitude, hemisphere })),
    );
    for (const on of ["2025-06-01", "2025-12-01", "2026-02-20"]) {
      const sun = (given: Partial<WearDocument>) => wearState(read(year, given), on).webbings[0]!.sunMonths;
      const blank = { latitude: undefined as never, hemisphere: undefined as never };
      expect(sun(blank)).toBe(Math.max(...climates.map(sun)));
      expect(sun({ ...blank, latitude: "high" })).toBe(
        Math.max(...climates.filter(({ latitude }) => latitude === "high").map(sun)),
      );
    }
  });

  it("re-tensioning pulls the clamp mark out of the span, letting in brings it into it", () => {
    const rigged: Entries[number] = { date: "2025-04-01", ...RIGGED, clampedAt: ["A", "B"] };
    const pulled = stateOf(
      [rigged, { date: "2025-06-01", event: "retensioned", end: "A", pulled: "0.5 m" }],
      "2025-07-01",
    );
    expect(pulled.placement).toMatchObject({ from: 2.5, to: 62 });
    const marks = pulled.marks.filter((m) => m.kind === "clampMark").map((m) => (m.from + m.to) / 2);
    expect(marks.map((at) => at.toFixed(3))).toEqual(["2.000", "2.500", "62.000"]);
    expect(pulled.clampedMonths.A).toBeCloseTo(0.99, 2);
    expect(pulled.clampedMonths.B).toBeCloseTo(2.99, 2);

    const letIn: Entries = [rigged, { date: "2025-06-01", event: "retensioned", end: "B", pulled: "-1 m" }];
    const flags = wearState(read(letIn), "2025-07-01").flags;
    expect(flags.map((f) => [f.kind, f.fromA])).toEqual([["clampMark", 60]]);
    expect(flags[0]!.message).toMatchObject({ values: { middle: { length: 62 }, fromA: { length: 60 } } });
  });

  it("a reused line is flagged where old marks, falls and stitching lie inside the loaded span", () => {
    const reused: Entries = [
      { date: "2025-02-01", event: "sewn", at: "1 m", length: "0.2 m" },
      { date: "2025-02-01", event: "sewn", at: "20 m", length: "0.2 m" },
      { date: "2025-04-01", ...RIGGED, from: "6 m", clampedAt: ["A", "B"] },
      { date: "2025-07-01", event: "falls", from: "30 m", to: "40 m", falls: 50 },
      { date: "2025-10-01", event: "takenDown" },
      { date: "2026-04-01", ...RIGGED, from: "1 m", to: "61 m", markedEnd: "B" },
      { date: "2026-05-01", event: "falls", from: "35 m", to: "45 m", falls: 20 },
    ];
    const { flags } = wearState(read(reused), "2026-06-01");
    // With the marked end at B the positions count from the other side.
    expect(flags.map((f) => [f.kind, Number(f.fromA.toFixed(3))])).toEqual([
      ["stitching", 41],
      ["fallZone", 26],
      ["clampMark", 55],
    ]);
  });

  it("a cut in the loaded span is flagged, at its very ends too, and none outside of it", () => {
    const cut = (at: string) =>
      ({ date: "2025-05-01", event: "damage", kind: "cut", from: at, to: at, depth: "10 %" }) as const;
    const entries: Entries = [
      { date: "2025-04-01", ...RIGGED, clampedAt: [] },
      ...["2 m", "30 m", "62 m", "70 m"].map(cut),
    ];
    const { flags } = wearState(read(entries), "2025-07-01");
    expect(flags.map((flag) => [flag.kind, flag.fromA])).toEqual([
      ["cut", 0],
      ["cut", 28],
      ["cut", 60],
    ]);
    expect(flags[1]!.message).toMatchObject({ code: "flag.cut", values: { middle: { length: 30 } } });
    const atEnds: Entries = [{ date: "2025-04-01", ...RIGGED, from: "0 m", to: "80 m" }, cut("0 m"), cut("80 m")];
    expect(stateOf(atEnds, "2025-07-01").marks.filter(({ kind }) => kind === "cut")).toHaveLength(2);
  });

  it("a move takes it from one rig to another on the same day", () => {
    const { placement, monthsOutside } = stateOf(
      [
        { date: "2025-04-01", ...RIGGED },
        { date: "2025-06-01", ...RIGGED, event: "moved", rig: "other gap", from: "10 m", to: "70 m" },
      ],
      "2025-07-01",
    );
    expect(placement).toMatchObject({ rig: "other gap", from: 10, to: 70 });
    expect(placement!.since.toString()).toBe("2025-06-01");
    expect(monthsOutside).toBeCloseTo(91 / 30.436875, 10);
  });

  it("positions keep counting from the first marked end when the webbing is cut", () => {
    const cut = stateOf(
      [
        { date: "2025-02-01", event: "damage", kind: "cut", from: "3 m", to: "3 m", depth: "10 %" },
        { date: "2025-02-02", event: "damage", kind: "abrasion", from: "30 m", to: "31 m", depth: "5 %" },
        { date: "2025-03-01", event: "cutToLength", from: "5 m", to: "80 m" },
      ],
      "2025-04-01",
    );
    expect(cut).toMatchObject({ from: 5, to: 80 });
    expect(cut.marks.map((m) => m.from)).toEqual([30]);
  });

  it("a clamp written down counts its days, up to the date asked about", () => {
    const entries: Entries = [
      { date: "2025-02-01", event: "clamped", at: "9 m", length: "0.1 m", until: "2025-05-31" },
    ];
    const months = (on: string) => stateOf(entries, on).marks.map((m) => (m.kind === "clampMark" ? m.months : 0))[0];
    expect(months("2025-03-01")).toBeCloseTo(28 / 30.436875, 10);
    expect(months("2026-01-01")).toBeCloseTo(120 / 30.436875, 10);
  });
});

describe("a faulty record is refused whole, every fault with its path", () => {
  it("two dates in the wrong order, and one before the webbing was made", () => {
    const entries: Entries = [
      { date: "2024-12-31", ...RIGGED },
      { date: "2024-11-30", event: "takenDown" },
    ];
    expect(faults(entries)).toEqual(["webbings[0].entries[0].date", "webbings[0].entries[1].date"]);
  });

  it("overlapping clamp periods at one place, a weblock's included", () => {
    const rigged: Entries[number] = { date: "2025-04-01", ...RIGGED, clampedAt: ["A"] };
    expect(faults([rigged, { date: "2025-05-01", event: "clamped", at: "2.1 m", length: "0.1 m" }])).toEqual([
      "webbings[0].entries[0]",
    ]);
    const twice: Entries = [
      { date: "2025-04-01", event: "clamped", at: "9 m", length: "0.2 m", until: "2025-06-01" },
      { date: "2025-05-01", event: "clamped", at: "9.1 m", length: "0.2 m", until: "2025-07-01" },
    ];
    expect(faults(twice)).toEqual(["webbings[0].entries[1]"]);
    expect(faults([{ ...twice[0]!, until: "2025-03-01" } as never])).toEqual(["webbings[0].entries[0].until"]);
  });

  it("positions outside the webbing, or outside what is left of it", () => {
    const entries: Entries = [
      { date: "2025-02-01", event: "sewn", at: "81 m", length: "0.2 m" },
      { date: "2025-03-01", event: "cutToLength", from: "10 m", to: "70 m" },
      { date: "2025-04-01", ...RIGGED },
      { date: "2025-05-01", event: "retensioned", end: "B", pulled: "-20 m" },
      { date: "2025-06-01", event: "falls", from: "40 m", to: "30 m", falls: 2 },
    ];
    expect(faults(entries)).toEqual([
      "webbings[0].entries[0].at",
      "webbings[0].entries[2].from",
      "webbings[0].entries[3].pulled",
      "webbings[0].entries[4].to",
    ]);
  });

  it("entries that the webbing's state forbids, and two webbings in one place", () => {
    expect(faults([{ date: "2025-04-01", event: "takenDown" }])).toEqual(["webbings[0].entries[0].event"]);
    expect(
      faults([
        { date: "2025-04-01", ...RIGGED },
        { date: "2025-05-01", ...RIGGED },
      ]),
    ).toEqual(["webbings[0].entries[1].event"]);
    const webbing = (id: string) => ({
      id,
      name: id,
      length: "80 m",
      mark: "m",
      entries: [{ date: "2025-04-01", ...RIGGED }],
    });
    expect(faults([], { webbings: [webbing("a"), webbing("b")] })).toEqual(["webbings[1].entries[0]"]);
    const namesakes = [webbing("a"), { ...webbing("a"), id: "b" }];
    expect(faults([], { webbings: namesakes })).toEqual(["webbings[1].entries[0]"]);
  });

  it("falls on a place that does not hang; a zone that only reaches beyond it is kept", () => {
    const falls = (from: string, to: string): Entries => [
      { date: "2025-04-01", ...RIGGED },
      { date: "2025-05-01", event: "falls", from, to, falls: 3 },
    ];
    expect(faults(falls("63 m", "70 m"))).toEqual(["webbings[0].entries[1].from"]);
    expect(readWearRecord(recordOf(falls("60 m", "70 m"))).ok).toBe(true);
  });

  it("an event that nobody knows is told which there are", () => {
    const told = (entries: unknown, given: object) =>
      JSON.stringify(readWearRecord(recordOf(entries as Entries, given)));
    expect(told([{ date: "2025-03-01", event: "fell" }], {})).toContain(
      '"expected.oneOf","values":{"list":{"list":["rigged","moved","takenDown"',
    );
    const part = { rig: "gap", part: "leash", entries: [{ date: "2025-03-01", event: "fell" }] };
    expect(told([], { parts: [part] })).toContain('"expected.oneOf","values":{"list":{"list":["putUp","takenDown"');
  });

  it("impossible dates, units, keys, events and kinds: all at once", () => {
    const entries = [
      { date: "2025-02-30", event: "takenDown" },
      { date: "2025-03-01", event: "sewn", at: "3", length: "0.2 m" },
      { date: "2025-03-01", event: "sewn", at: "3 kN", length: "0.2 m", colour: "red" },
      { date: "2025-03-01", event: "eaten" },
      { date: "2025-03-01", event: "damage", kind: "cut", from: "3 m", to: "3 m", depth: "130 %" },
    ] as unknown as Entries;
    expect(faults(entries)).toEqual([
      "webbings[0].entries[0].date",
      "webbings[0].entries[1].at",
      "webbings[0].entries[2].at",
      "webbings[0].entries[2].colour",
      "webbings[0].entries[3].event",
      "webbings[0].entries[4].depth",
    ]);
    expect(readWearRecord("{")).toMatchObject({ ok: false, issues: [{ expected: { code: "expected.json" } }] });
    expect(readWearRecord(JSON.parse(recordOf([])))).toMatchObject({ ok: true });
    expect(readWearRecord("[]")).toMatchObject({ ok: false, issues: [{ path: "" }] });
  });

  it("names given twice, hidden characters and nesting without end", () => {
    const paths = (text: string) => {
      const reading = readWearRecord(text);
      return reading.ok ? [] : reading.issues.map(({ path }) => path);
    };
    const text = recordOf([]);
    expect(paths(`\uFEFF${text}`)).toEqual([]);
    expect(paths(text.replace("{", '{"name":"first",'))).toEqual(["name"]);
    expect(paths(text.replace(/"name":"[^"]*"/, '"name":"\\u202eeno"'))).toEqual(["name"]);
    expect(paths(text.replace("{", '{"__proto__":{},'))).toEqual(["__proto__"]);
    expect(paths("[".repeat(4_000_000))).toEqual([""]);
    const keys = Array.from({ length: 80_000 }, (_, i) => `"k${i}":0`).join(",");
    expect(readWearRecord(text.replace("{", `{${keys},`))).toMatchObject({ ok: false, more: 79_900 });
  });

  it("parts put up twice", () => {
    const part = {
      rig: "gap",
      part: "leash",
      entries: [
        { date: "2025-04-01", event: "putUp" as const },
        { date: "2025-05-01", event: "putUp" as const },
      ],
    };
    expect(faults([], { parts: [part] })).toEqual(["parts[0].entries[1].event"]);
  });
});
