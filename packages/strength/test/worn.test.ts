/** Effects of a record on a rig besides its dates: clamps that it leaves out, wear in the ends, reasons for an inspection. */

import type { LineEnd, Rig, Wear } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import { applyWear, combineFactors, misplacedIssues, partStrengths, readWearRecord } from "../src/index.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { asNew, exampleRig, leashRope, polyesterWebbing, rated, section } from "./exampleRig.ts";

type Entries = NonNullable<WearDocument["webbings"]>[number]["entries"];
type Parts = WearDocument["parts"];

const partOf = (rig: Rig, id: string) => partStrengths(rig).find((part) => part.id === id)!;
const RIGGED = { event: "rigged", rig: "test rig", line: "main", markedEnd: "A", from: "3 m", to: "62.01 m" } as const;
const CLAMPED = { ...RIGGED, clampedAt: ["A", "B"] as ("A" | "B")[] };

function read(entries: Entries, parts: Parts = []) {
  const webbing = { id: "w", name: "webbing", length: "80 m", mark: "red thread", made: "2025-01-01", entries };
  return readWearRecord({ secondline: "wear/1", name: "record", webbings: [webbing], parts });
}
function worn(entries: Entries, { rig = exampleRig(), on = "2026-08-01", parts = [] as Parts } = {}) {
  const reading = read(entries, parts);
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return applyWear(rig, reading.record, on);
}

describe("a record that does not say which ends are clamped", () => {
  const dry = { date: "2025-04-01", event: "wet", wet: false } as const;

  it("takes the rig's weblocks and says so", () => {
    const [silent, said] = [RIGGED, CLAMPED].map((rigged) => worn([{ date: "2025-04-01", ...rigged }, dry]));
    expect(silent!.rig.main.endA.monthsClamped).toBeCloseTo(16, 0);
    expect(partOf(silent!.rig, "endA").strength).toBe(partOf(said!.rig, "endA").strength);
    expect(JSON.stringify(silent!.notes)).toContain('"record.clampsUnsaid","values":{"name":"webbing"');
    expect(JSON.stringify(silent!.notes)).toContain(JSON.stringify(JSON.stringify(["A", "B"])));
    expect(JSON.stringify(said!.notes)).not.toContain("record.clamps");
  });

  it("keeps the marks of another rig that nobody described: both ends are counted", () => {
    const { notes, rig } = worn([
      { date: "2025-04-01", ...RIGGED, rig: "elsewhere", from: "9 m", to: "50 m" },
      { date: "2025-10-01", event: "takenDown" },
      { date: "2026-04-01", ...CLAMPED },
    ]);
    const marks = rig.main.sections[0]!.wear.filter((wear) => wear.kind === "clampMark");
    expect(marks.map((mark) => Math.round((mark as { at: number }).at))).toEqual([6, 47]);
    expect(JSON.stringify(notes)).toContain('"record.clampsElsewhere","values":{"name":"webbing","rig":"elsewhere"');
  });

  it("does not get around a weblock of the rig by saying that there is none", () => {
    const none = worn([{ date: "2025-04-01", ...RIGGED, clampedAt: [] }]);
    expect(none.rig.main.endA.monthsClamped).toBeCloseTo(16, 0);
    expect(JSON.stringify(none.notes)).toContain('"ends":{"list":["A","B"],"joined":"and"}');
  });
});

describe("wear where the line ends", () => {
  const withEnd = (endA: LineEnd, wear: readonly Wear[] = []): Rig => {
    const plain = exampleRig();
    return { ...plain, main: { ...plain.main, endA, sections: [section({ wear })] } };
  };
  const ends: readonly LineEnd[] = [
    { kind: "weblock", rated: rated(60_000), monthsClamped: 24, bend: 8 },
    { kind: "sewnLoop", rated: rated(28_000), bend: 8 },
    { kind: "knot", knot: "overhand", rated: rated(30_000), bend: 8 },
  ];

  it.each(ends)("a cut of 30 % in a $kind multiplies with it, inside the span and behind its end", (end) => {
    const whole = partOf(withEnd(end), "endA").strength;
    const inside = partOf(withEnd(end, [{ kind: "cut", at: 0.05, depth: 0.3 }]), "endA").strength;
    const behind = partOf(withEnd({ ...end, behind: [{ kind: "cut", at: 0.1, depth: 0.3 }] }), "endA").strength;
    expect(inside / whole).toBeCloseTo(0.55, 9);
    expect(behind / whole).toBeCloseTo(0.55, 9);
    const far = partOf(withEnd({ ...end, behind: [{ kind: "cut", at: 3, depth: 0.3 }] }), "endA").strength;
    expect(far).toBe(whole);
  });

  it("30 kN after two years in the clamp, cut by 30 %, holds 9.1 kN", () => {
    const cut = [{ kind: "cut", at: 0.02, depth: 0.3 }] as const;
    expect(partOf(withEnd(ends[0]!, cut), "endA").strength / 1000).toBeCloseTo(9.1, 1);
  });

  it("two wears count together only where they overlap", () => {
    const abrasion = (from: number, to: number) => ({ kind: "abrasion", from, to, depth: 0.2 }) as const;
    const end = (wear: readonly Wear[]) => partOf(withEnd(ends[0]!, wear), "endA").strength;
    const one = end([abrasion(0, 0.02)]);
    expect(end([abrasion(0, 0.02), abrasion(0.04, 0.06)])).toBeCloseTo(one, 6);
    expect(end([abrasion(0, 0.02), abrasion(0.01, 0.06)])).toBeCloseTo((0.6 / 0.8) * one, 6);
  });

  it("a clamp mark where a weblock sits now counts as no less than one clamp of all the months", () => {
    const end = (months: number, before?: number) => {
      const marks =
        before === undefined ? [] : [{ kind: "clampMark", at: 0, length: 0.2, months: before, load: 0 } as const];
      return partOf(withEnd({ ...ends[0]!, monthsClamped: months }, marks), "endA");
    };
    for (const [months, before] of [
      [1, 1],
      [10, 10],
      [20, 20],
      [23, 2],
    ] as const) {
      const [twice, once, apart] = [end(months, before), end(months + before), end(months)];
      expect(twice.strength5).toBeLessThanOrEqual(once.strength5 * (1 + 1e-12));
      expect(twice.strength).toBeLessThan(apart.strength);
    }
    expect(end(20, 20).beyond).toHaveLength(1);
  });

  it("comes from the record on both sides of the span's end, at either anchor", () => {
    const rigged: Entries = [{ date: "2026-04-01", ...CLAMPED }];
    const abraded = (from: string, to: string): Entries => [
      ...rigged,
      { date: "2026-05-01", event: "damage", kind: "abrasion", from, to, depth: "20 %" },
    ];
    const share = (id: string, from: string, to: string) =>
      partOf(worn(abraded(from, to)).rig, id).strength / partOf(worn(rigged).rig, id).strength;
    expect(share("endA", "2.8 m", "2.9 m")).toBeCloseTo(0.8, 9);
    expect(share("endA", "3.01 m", "3.05 m")).toBeCloseTo(0.8, 9);
    expect(share("endB", "62.1 m", "62.2 m")).toBeCloseTo(0.8, 9);
    expect(share("endB", "2.8 m", "2.9 m")).toBe(1);
    expect(share("endA", "1 m", "1.5 m")).toBe(1);
  });
});

describe("an event that no factor covers", () => {
  const before: Entries = [
    { date: "2026-04-01", ...CLAMPED },
    { date: "2026-04-01", event: "wet", wet: false },
    { date: "2026-05-01", event: "falls", from: "20 m", to: "30 m", falls: 0 },
  ];
  const storm = { date: "2026-06-01", event: "storm", until: "2026-06-04", note: "gusts of 25 m/s" } as const;
  const looked = { date: "2026-06-10", event: "inspected", by: "Ada", found: "nothing" } as const;

  it.each([
    [
      "a storm",
      storm,
      {
        code: "need.overNoted",
        values: {
          what: { code: "need.storm" },
          since: { day: "2026-06-01" },
          until: { day: "2026-06-04" },
          note: "gusts of 25 m/s",
        },
      },
    ],
    [
      "an edge",
      { date: "2026-06-01", event: "edgeContact", from: "20 m", to: "20.5 m" },
      { code: "need.onPlace", values: { what: { code: "need.edge" }, from: { length: 20 }, to: { length: 20.5 } } },
    ],
    [
      "a hot ring",
      { date: "2026-06-01", event: "hotRing", from: "20 m", to: "24 m" },
      { code: "need.onPlace", values: { what: { code: "need.hotRing" } } },
    ],
  ] as const)("%s asks for an inspection, and a sound judgement closes it", (_, entry, told) => {
    const open = worn([...before, entry]);
    expect(open.needsInspection).toHaveLength(1);
    expect(open.needsInspection[0]).toMatchObject(told);
    expect(open.notes[0]).toBe(open.needsInspection[0]);
    const main = partOf(open.rig, "main");
    expect(main.needsInspection).toEqual(open.needsInspection);
    expect(main.flags).toContain(open.needsInspection[0]);
    const closed = worn([...before, entry, { ...looked, judgement: "sound" }]);
    expect(closed.needsInspection).toEqual([]);
    expect(partOf(closed.rig, "main").needsInspection).toBeUndefined();
    expect(worn([...before, entry], { on: "2026-05-31" }).needsInspection).toEqual([]);
  });

  it("stays open where nobody looked, and while it went on", () => {
    const edge = { date: "2026-06-01", event: "edgeContact", from: "20 m", to: "20.5 m" } as const;
    const elsewhere = { ...looked, judgement: "sound", from: "30 m", to: "40 m" } as const;
    expect(worn([...before, edge, elsewhere]).needsInspection).toHaveLength(1);
    expect(worn([...before, edge, { ...elsewhere, from: "19 m" }]).needsInspection).toEqual([]);
    const during = { ...looked, date: "2026-06-02", judgement: "sound" } as const;
    expect(worn([...before, storm, during]).needsInspection).toHaveLength(1);
  });

  it("judged doubtful weakens by the factor, or by the cautious one; judged unfit stays open", () => {
    const holds = (entries: Entries) => partOf(worn([...before, ...entries]).rig, "main");
    const sound = holds([storm, { ...looked, judgement: "sound" }]).strength;
    expect(holds([storm, { ...looked, judgement: "doubtful", factor: 0.8 }]).strength / sound).toBeCloseTo(0.8, 9);
    const doubted = holds([storm, { ...looked, judgement: "doubtful" }]);
    expect(doubted.strength / sound).toBeCloseTo(0.7, 9);
    expect(JSON.stringify(doubted.flags)).toContain('{"by":"Ada","on":{"day":"2026-06-10"},"found":"nothing"}');
    const unfit = worn([...before, { ...looked, judgement: "unfit" }]);
    expect(unfit.needsInspection[0]!.code).toBe("need.unfit");
    const factor = read([...before, { ...looked, judgement: "sound", factor: 0.8 }]);
    expect(!factor.ok && factor.issues[0]!.path).toBe("webbings[0].entries[3].factor");
  });

  it("on other parts asks for an inspection too", () => {
    const parts: Parts = [
      { rig: "test rig", part: "ring", entries: [{ date: "2026-06-01", event: "ranHot" }] },
      { rig: "test rig", part: "leash", entries: [{ date: "2026-06-01", event: "edgeContact" }] },
      {
        rig: "test rig",
        part: "harness",
        entries: [{ date: "2026-06-01", event: "storm" } as never],
      },
    ];
    const up = { date: "2026-04-01", event: "putUp" } as const;
    const given = parts.map((part) => ({ ...part, entries: [up, ...part.entries] }));
    const { rig, needsInspection } = worn(before, { parts: given });
    expect(needsInspection).toHaveLength(3);
    for (const id of ["ring", "leash", "harness"]) expect(partOf(rig, id).needsInspection).toHaveLength(1);
  });

  it("a reading that disagrees with the rig asks for an inspection; one that agrees does not", () => {
    const tension = (text: string) => worn([...before, { date: "2026-06-01", event: "tensionReading", tension: text }]);
    expect(tension("2.6 kN").needsInspection).toEqual([]);
    expect(tension("2.6 kN").reading).toMatchObject({ agrees: true });
    const off = tension("1.6 kN");
    expect(off.needsInspection[0]).toMatchObject({ code: "reading.lessOn", values: { stated: { force: 2500 } } });
    expect(partOf(off.rig, "main").needsInspection).toEqual(off.needsInspection);
    const pulled = worn([
      ...before,
      { date: "2026-06-01", event: "tensionReading", tension: "1.6 kN" },
      { date: "2026-06-02", event: "retensioned", end: "A", pulled: "0.3 m" },
    ]);
    expect(pulled.needsInspection).toEqual([]);
  });
});

describe("wear that cannot be put into the rig keeps a verdict from saying that the rig holds", () => {
  const hung = { date: "2026-04-01", ...CLAMPED } as const;

  it("webbing in a section that the rig does not have, with its path", () => {
    const entries: Entries = [hung, { date: "2026-05-01", ...CLAMPED, event: "moved", section: 3 }];
    expect(worn(entries, { on: "2026-04-20" }).needsInspection).toEqual([]);
    expect(worn(entries).needsInspection[0]).toMatchObject({
      code: "webbing.noSection",
      values: { name: "webbing", section: 3, line: { code: "line.main" } },
    });
    const reading = read(entries);
    if (!reading.ok) throw new Error("the record is not sound");
    const issues = (on: string) => misplacedIssues(exampleRig(), reading.record, on);
    expect(issues("2026-04-20")).toEqual([]);
    expect(issues("2026-05-01")).toMatchObject([{ path: "webbings[0].entries[1].section", got: "3", expected: "0" }]);
  });

  it("a loaded length that differs by more than a tenth; by less it is said", () => {
    const loaded = (to: string) => worn([{ ...hung, to }]);
    expect(loaded("20 m").needsInspection[0]).toMatchObject({
      code: "record.lengthDoubt",
      values: { name: "webbing" },
    });
    expect(partOf(loaded("20 m").rig, "main").needsInspection).toContainEqual(loaded("20 m").needsInspection[0]);
    expect(loaded("75 m").needsInspection).toHaveLength(1);
    expect(loaded("66 m").needsInspection).toEqual([]);
    expect(JSON.stringify(loaded("66 m").notes)).toContain("record.lengthOff");
  });

  it("damage within the loaded span, but beyond the length of the rig, lies at the line's end", () => {
    const cut = {
      date: "2026-05-01",
      event: "damage",
      kind: "cut",
      from: "65.8 m",
      to: "65.8 m",
      depth: "30 %",
    } as const;
    const abraded = { ...cut, kind: "abrasion", from: "64 m", to: "65 m" } as const;
    const { wear } = worn([{ ...hung, to: "66 m" }, cut, abraded]).rig.main.sections[0]!;
    const end = expect.closeTo(59.01, 1);
    expect(wear).toContainEqual({ kind: "cut", at: end, depth: 0.3 });
    expect(wear).toContainEqual({ kind: "abrasion", from: expect.closeTo(58.01, 1), to: end, depth: 0.3 });
    const beyond = worn([
      { ...hung, to: "66 m" },
      { ...cut, from: "70 m", to: "70 m" },
    ]);
    expect(beyond.rig.main.sections[0]!.wear.map(({ kind }) => kind)).not.toContain("cut");
  });

  it("a part that the rig does not have, unless it is down", () => {
    const up = { date: "2026-04-01", event: "putUp" } as const;
    const needs = (part: string, entries: NonNullable<Parts>[number]["entries"], rig = exampleRig()) =>
      worn([hung], { rig, parts: [{ rig: "test rig", part, entries }] }).needsInspection;
    expect(needs("anchorA.hardware.7", [up])[0]).toMatchObject({
      code: "record.unknownPart",
      values: { part: "anchorA.hardware.7" },
      next: { code: "record.notCounted" },
    });
    expect(needs("anchorA.hardware.7", [up, { date: "2026-05-01", event: "takenDown" }])).toEqual([]);
    expect(needs("connection.0", [up], (({ backup: _none, ...rest }) => rest)(exampleRig()))).toEqual([]);
    // A weblock has no wear of its own here, but an event at it asks for an inspection.
    expect(needs("endA", [up])).toEqual([]);
    expect(needs("endA", [up, { date: "2026-05-01", event: "ranHot" }])[0]).toMatchObject({
      code: "need.on",
      values: { name: { values: { part: "endA" } }, what: { code: "need.heat" } },
    });
  });
});

it("a record says that it does not say where on the earth it hangs, and what is counted", () => {
  const notes = JSON.stringify(worn([{ date: "2026-04-01", ...CLAMPED }]).notes);
  expect(notes).toContain("record.latitude");
  expect(notes).toContain("record.hemisphere");
  const parts: Parts = [{ rig: "test rig", part: "harness", entries: [{ date: "2026-04-01", event: "putUp" }] }];
  const where = { latitude: "high", hemisphere: "south" } as const;
  const said = readWearRecord({ secondline: "wear/1", name: "record", ...where, parts });
  if (!said.ok) throw new Error("the record is not sound");
  expect(JSON.stringify(applyWear(exampleRig(), said.record, "2026-08-01").notes)).not.toMatch(/latitude|hemisphere/);
});

describe("a record finds its rig", () => {
  const named = exampleRig({ id: "gap-7" });
  it("by its id, whatever the rig is called now, and says so when it goes by the name", () => {
    const byId = worn([{ date: "2025-04-01", ...CLAMPED, rig: "gap-7" }], { rig: { ...named, name: "renamed" } });
    expect(byId.rig.main.endA.monthsClamped).toBeCloseTo(16, 0);
    expect(JSON.stringify(byId.notes)).not.toContain("record.matchedByName");
    const byName = worn([{ date: "2025-04-01", ...CLAMPED }], { rig: named });
    expect(byName.rig.main.endA.monthsClamped).toBeCloseTo(16, 0);
    expect(JSON.stringify(byName.notes)).toContain(
      '"record.matchedByNameOfId","values":{"name":"test rig","id":"gap-7"}',
    );
  });
});

describe("entries of other rigs", () => {
  const inspectEvery = "30 days";
  const notesOf = (given: Partial<WearDocument>) => {
    const webbing = {
      id: "w",
      name: "webbing",
      length: "80 m",
      mark: "red",
      entries: [{ date: "2026-04-01", ...CLAMPED }],
    };
    const reading = readWearRecord({ secondline: "wear/1", name: "record", webbings: [webbing], ...given });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    const notes = applyWear(exampleRig(), reading.record, "2026-08-01").notes;
    return notes.filter((note) => /^record\.(?:o|moreO)therNames$/.test(note.code));
  };
  const fall = { rig: "tset rig", part: "harness", entries: [{ date: "2026-06-01", event: "hardFall" as const }] };

  it("are told, each name once: it may be misspelt", () => {
    expect(notesOf({})).toEqual([]);
    const [note, ...more] = notesOf({
      parts: [fall, { ...fall, part: "leash" }],
      plans: [
        { rig: "test rigg", inspectEvery },
        { rig: "test rig", inspectEvery },
      ],
    });
    expect(more).toEqual([]);
    expect(note).toMatchObject({
      code: "record.otherNames",
      values: { names: { list: ['"tset rig"', '"test rigg"'] } },
    });
    expect(note).toMatchObject({ values: { own: "test rig" } });
  });

  it("are told of webbing that hangs elsewhere where no line is missing", () => {
    const rig = exampleRig();
    const { backup: _none, ...alone } = rig;
    const entries = [{ date: "2026-04-01", ...CLAMPED }];
    const other = [{ date: "2026-04-01", ...CLAMPED, rig: "test rigg" }];
    const webbing = { name: "webbing", length: "80 m", mark: "red" };
    const webbings = [
      { ...webbing, id: "a", entries },
      { ...webbing, id: "b", entries: other },
    ];
    const reading = readWearRecord({ secondline: "wear/1", name: "record", webbings });
    if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
    const told = (one: Rig) =>
      applyWear(one, reading.record, "2026-08-01").notes.filter((note) => JSON.stringify(note).includes("test rigg"));
    expect(told(alone)).toHaveLength(1);
    expect(told(rig)).toHaveLength(1);
  });

  it("are no more than five names", () => {
    const plans = Array.from({ length: 8 }, (_, i) => ({ rig: `gap ${i}`, inspectEvery }));
    expect(notesOf({ plans })[0]).toMatchObject({ code: "record.moreOtherNames", values: { more: 3 } });
  });
});

describe("knots", () => {
  const leash = (stock: Rig["leash"]["stock"]) => {
    const plain = exampleRig();
    return partOf({ ...plain, leash: { ...plain.leash, stock } }, "leash");
  };
  it("in a leash of flat webbing are those of flat webbing", () => {
    expect(leash(polyesterWebbing).strength / 30_000).toBeCloseTo(0.375, 9);
    expect(leash(leashRope).strength / 22_000).toBeCloseTo(0.61, 9);
  });
  it("in a leash of which nobody says what it is count as those of webbing, and the blank is named", () => {
    const { form: _form, ...unknown } = leashRope;
    const part = leash(unknown);
    expect(part.strength).toBeLessThanOrEqual(0.375 * 22_000);
    expect(part.blanks!.map(({ field }) => field)).toContain("stocks[].form");
  });
  it("at the end of a backup of rope are those of rope", () => {
    const plain = exampleRig();
    const endA: LineEnd = { kind: "knot", knot: "bowline", rated: leashRope.rated, bend: 8 };
    const backup = { ...plain.backup!, endA, sections: [section({ stock: leashRope })] };
    expect(partOf({ ...plain, backup }, "backup.endA").strength).toBeCloseTo(22_000 * 0.55, 6);
  });
});

describe("the direction of the pull on a bolt", () => {
  const holds = (pullAngle: number | undefined, side: Partial<Rig["anchorA"]> = {}) => {
    const plain = exampleRig();
    const bolt = { name: "bolt", kind: "bolt", rated: rated(25_000), condition: asNew } as const;
    const point = pullAngle === undefined ? bolt : { ...bolt, pullAngle };
    return partOf({ ...plain, anchorA: { ...plain.anchorA, ...side, points: [point] } }, "anchorA.points.0");
  };
  const degrees = (angle: number) => (angle * Math.PI) / 180;

  it("leaves 25 kN across the axis and 15 kN along it, and between them less than a straight line from one to the other", () => {
    expect(holds(degrees(90)).strength).toBeCloseTo(25_000 * 0.85, 6);
    expect(holds(0).strength).toBeCloseTo(15_000 * 0.85, 6);
    for (const angle of [10, 31, 45, 60, 80]) {
      expect(holds(degrees(angle)).strength).toBeLessThan(0.85 * (15_000 + (10_000 * angle) / 90));
    }
  });

  it("that nobody wrote down counts as the worst, is flagged, and is the blank to fill in", () => {
    const unknown = holds(undefined);
    for (let angle = 0; angle <= 90; angle += 5) {
      expect(unknown.strength).toBeLessThanOrEqual(holds(degrees(angle)).strength + 1e-9);
    }
    expect(JSON.stringify(unknown.flags)).toContain("the direction of the pull on the bolt is not written down");
    expect(unknown.blanks![0]!.field).toBe("anchorA.points[0].pullAngle");
  });

  it("follows from the anchor's geometry at the worst angle that a leg can have", () => {
    const on = (axisAngle: number, legAngle: number) =>
      holds(undefined, { axisAngle: degrees(axisAngle), legAngle: degrees(legAngle) }).strength;
    expect(on(90, 0)).toBeCloseTo(holds(degrees(90)).strength, 6);
    expect(on(90, 60)).toBeCloseTo(holds(degrees(60)).strength, 6);
    expect(on(20, 60)).toBeCloseTo(holds(Math.atan(0.6)).strength, 6);
    expect(on(20, 60)).toBeLessThan(holds(0).strength);
  });
});

it("a part's own numbers are its factors' product, with every new factor among them", () => {
  for (const part of partStrengths(exampleRig())) {
    expect(combineFactors(part.rated, part.factors).strength).toBe(part.strength);
  }
});
