import { seededRandom } from "@secondline/statistics";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import {
  applyWear,
  type BreakTest,
  factorsFromLog,
  partStrengths,
  planTeardown,
  readBreakLog,
  readResults,
  readWearRecord,
  type Sample,
  type Teardown,
  teardownLearnt,
  teardownLog,
} from "../src/index.ts";
import { builtInFactors } from "../src/retention/testedStock.ts";
import { useOfTest as countsFor } from "../src/retention/testUse.ts";
import { allSamples } from "../src/teardown/samples.ts";
import { samplesOn } from "../src/teardown/teardown.ts";
import type { WearDocument } from "../src/wear/schema.ts";
import { exampleRig, section } from "./exampleRig.ts";
import { DATE, demo, demoRig, planned, recordOf } from "./oldDemo.ts";

const overlap = (a: { from: number; to: number }, b: { from: number; to: number }) =>
  a.from < b.to - 0.011 && b.from < a.to - 0.011;

type Webbing = NonNullable<WearDocument["webbings"]>[number];
type Entries = Webbing["entries"];

/** A main line of 60 m somewhere on 62 to 100 m of webbing, with whatever may have happened to it. */
const randomWebbing = fc
  .record({
    length: fc.integer({ min: 62, max: 100 }),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    markedEnd: fc.constantFrom("A" as const, "B" as const),
    clamps: fc.subarray(["A" as const, "B" as const]),
    falls: fc.array(
      fc.tuple(fc.integer({ min: 0, max: 50 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 90 })),
      { maxLength: 3 },
    ),
    spots: fc.array(
      fc.tuple(fc.constantFrom("sewn", "damage", "clamped"), fc.double({ min: 0.01, max: 0.99, noNaN: true })),
      { maxLength: 4 },
    ),
    pulled: fc.array(fc.constantFrom(0.05, 0.15, 0.3, 0.9, 2), { maxLength: 2 }),
  })
  .map(({ length, at, markedEnd, clamps, falls, spots, pulled }): Webbing => {
    const from = Number((at * (length - 60)).toFixed(2));
    const rigged: Entries[number] = {
      date: "2025-03-01",
      event: "rigged",
      rig: "test rig",
      line: "main",
      markedEnd,
      from: `${from} m`,
      to: `${Number((from + 60).toFixed(2))} m`,
      clampedAt: clamps,
      tension: "3 kN",
    };
    const done = falls.map(([start, long, count]): Entries[number] => ({
      date: "2025-06-01",
      event: "falls",
      from: `${from + start} m`,
      to: `${Math.min(from + 60, from + start + long)} m`,
      falls: count,
    }));
    const marks = spots.map(([kind, place], i): Entries[number] => {
      const spot = Number((length * place).toFixed(2));
      if (kind === "sewn") return { date: "2025-07-01", event: "sewn", at: `${spot} m`, length: "0.1 m" };
      if (kind === "damage") {
        return {
          date: "2025-07-01",
          event: "damage",
          kind: "abrasion",
          from: `${spot} m`,
          to: `${Math.min(length, spot + 0.2)} m`,
          depth: "5 %",
        };
      }
      // One after the other, so that no two are in one place at one time.
      return {
        date: "2025-07-01",
        event: "clamped",
        at: `${spot} m`,
        length: "0.1 m",
        until: `2025-07-0${2 + i}`,
      } as Entries[number];
    });
    const pulls = pulled.map((metres): Entries[number] => ({
      date: "2025-08-01",
      event: "retensioned",
      end: "A",
      pulled: `${metres} m`,
    }));
    return {
      id: "w",
      name: "webbing",
      length: `${length} m`,
      mark: "red thread",
      entries: [rigged, ...done, ...marks, ...pulls],
    };
  });

describe("a piece that can be cut", () => {
  it("never overlaps, lies on the webbing, and shows one state alone unless it says what else", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomWebbing, (webbing) => {
        const reading = readWearRecord({ secondline: "wear/1", name: "r", webbings: [webbing] });
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const rig = exampleRig();
        const worn = applyWear(rig, reading.record, "2026-04-01");
        const hanging = worn.state.webbings;
        const { samples, cannot } = allSamples(worn.rig, hanging);
        const state = hanging[0]!;
        const cuts = samples.flatMap((sample) => sample.cuts.map((cut) => ({ ...cut, sample })));
        for (const [i, a] of cuts.entries()) {
          expect(a.from).toBeGreaterThanOrEqual(state.from);
          expect(a.to).toBeLessThanOrEqual(state.to);
          expect(a.to - a.from).toBeGreaterThan(1);
          for (const b of cuts.slice(0, i))
            expect(overlap(a, b), `${JSON.stringify(a)} ${JSON.stringify(b)}`).toBe(false);
        }
        for (const { sample, ...cut } of cuts) {
          const here = state.marks.filter((mark) => overlap(mark, cut));
          const others = here.filter((mark) => mark.kind !== "fallZone");
          if (sample.kind === "sunOnly") expect(here).toEqual([]);
          if (sample.kind === "fallZone") expect(others).toEqual([]);
          // The piece shows one mark; every other mark is named.
          if (sample.kind === "clampMark") expect(sample.others.length).toBeGreaterThanOrEqual(others.length - 1);
        }
        // Every mark is in a piece, or said not to be had.
        for (const mark of state.marks.filter(({ kind }) => kind !== "fallZone")) {
          const shown = cuts.some((cut) => overlap(cut, mark));
          const said = cannot.some((one) => one.from !== undefined && overlap({ from: one.from, to: one.to! }, mark));
          expect(shown || said).toBe(true);
        }
        seen++;
      }),
      { seed: 11, numRuns: 120 },
    );
    expect(seen).toBe(120);
  });

  it("takes two marks that re-tensioning set a hand's width apart in one piece, and says so", () => {
    const { samples } = demoSamples();
    const both = samples.find(
      ({ kind, cuts }) => kind === "clampMark" && cuts[0]!.from < 2 && cuts[0]!.webbing === "polyester-a",
    )!;
    expect(both.others).toHaveLength(1);
    expect(both.cuts[0]).toMatchObject({ from: 0.8, to: 2.4 });
  });

  it("cuts a join out of both webbings, and end loops with their seam", () => {
    const main = {
      ...exampleRig().main,
      sections: [section({ length: 30 }), section()],
      endA: { kind: "sewnLoop" as const, rated: { strength: 24_000, basis: { kind: "assumed" as const, note: "" } } },
    };
    const hung = (id: string, index: number, from: number, to: number): Webbing => ({
      id,
      name: id,
      length: "40 m",
      mark: "tape",
      entries: [
        {
          date: "2025-03-01",
          event: "rigged",
          rig: "test rig",
          line: "main",
          section: index,
          markedEnd: "A",
          from: `${from} m`,
          to: `${to} m`,
          clampedAt: [],
        },
      ],
    });
    const record = recordOf({ secondline: "wear/1", name: "r", webbings: [hung("a", 0, 2, 32), hung("b", 1, 1, 31)] });
    const worn = applyWear(exampleRig({ main }), record, "2026-04-01");
    const { samples } = allSamples(worn.rig, worn.state.webbings);
    const join = samples.find(({ kind }) => kind === "join")!;
    expect(join.cuts).toEqual([
      { webbing: "a", from: 31.2, to: 32 },
      { webbing: "b", from: 1, to: 1.8 },
    ]);
    const loop = samples.find(({ kind }) => kind === "sewnLoop")!;
    expect(loop.cuts).toEqual([{ webbing: "a", from: 1.5, to: 3.3 }]);
    expect(loop.row).toMatchObject({ part: "sewn loop", sewn_months: loop.row.months_outside });
  });
});

function demoSamples() {
  const worn = applyWear(demoRig(), recordOf(demo("old-rig-wear.json")), DATE);
  return allSamples(worn.rig, worn.state.webbings);
}

describe("the plan of the demonstration line", () => {
  let plan: Teardown;
  let whole: Teardown;
  beforeAll(() => {
    const record = recordOf(demo("old-rig-wear.json"));
    plan = planned(demoRig(), record, 12);
    whole = planned(demoRig(), record, new Set(demoSamples().samples.map(({ state }) => state)).size);
  }, 120_000);

  it("uses the pulls, begins with a new piece, and has new, sun, fall zone, both old and new clamp marks, backup and leash", () => {
    expect(plan.pieces).toHaveLength(12);
    expect(plan.pieces[0]).toMatchObject({ id: "P1", kind: "new", part: "main" });
    const kinds = new Set(plan.pieces.map(({ kind, part }) => `${kind} ${part}`));
    for (const kind of [
      "sunOnly main",
      "fallZone main",
      "clampMark main",
      "sunOnly backup",
      "clampMark backup",
      "leash leash",
    ]) {
      expect(kinds).toContain(kind);
    }
    const old = plan.pieces.find(({ cuts }) => cuts[0]?.from === 5.2)!;
    expect(old).toMatchObject({ kind: "clampMark", row: { clamped_months: "14", state: "clamp mark" } });
    expect(plan.pieces.some(({ kind, row }) => kind === "fallZone" && row.falls === "235")).toBe(true);
  });

  it("says what it leaves out for want of pulls, and has every state when there are enough", () => {
    expect(plan.leftOut.map(({ kind }) => kind)).toContain("ring");
    expect(whole.leftOut).toEqual([]);
    const states = new Set(demoSamples().samples.map(({ state }) => state));
    expect(new Set(whole.pieces.map(({ state }) => state))).toEqual(states);
    // The leash is too short for a piece without its knot: that is said.
    expect(whole.cannot.map(({ kind, why }) => [kind, why])).toEqual([["leashPlain", "leashShort"]]);
  });

  it("has with four pulls a new piece, both lines with sun alone, and the fall zone: they narrow most", () => {
    const few = planned(demoRig(), recordOf(demo("old-rig-wear.json")), 4).pieces;
    const named = few.map(({ kind, part }) => `${kind} ${part}`);
    expect(named).toEqual(["new main", "sunOnly main", "sunOnly backup", "fallZone main"]);
  });

  it("is the same every time", () => {
    const again = planned(demoRig(), recordOf(demo("old-rig-wear.json")), 12);
    expect(again).toEqual(plan);
  });

  it("claims a narrowing that an independent simulation finds, within 4 % of what is left", () => {
    const rig = applyWear(demoRig(), recordOf(demo("old-rig-wear.json")), DATE).rig;
    const { place, after, before } = plan.bands[0]!;
    const stock = rig.main.sections[0]!.stock;
    const zone = (tests: readonly BreakTest[]) =>
      partStrengths(rig, factorsFromLog(tests)).find(({ id }) => id === place.part)!.zones![place.zone!]!;
    // 19 of 20 parts lie above the 5 % value: 1.645 standard deviations below the middle.
    const sigma = (tests: readonly BreakTest[]) => Math.log(zone(tests).strength / zone(tests).strength5) / 1.6448536;
    expect(sigma([])).toBeCloseTo(before, 6);
    const random = seededRandom(4711);
    const builtIn = builtInFactors(stock);
    let sum = 0;
    const RUNS = 60;
    for (let run = 0; run < RUNS; run++) {
      const shared = { sun: random.normal(), falls: random.normal(), clamp: random.normal(), level: random.normal() };
      const results = plan.pieces
        .filter((piece) => piece.stock?.id === stock.id)
        .map((piece) =>
          drawn(piece, (row) => {
            const [months, falls, clamped] = [row.sun_months, row.falls, row.clamped_months].map((text) =>
              Number(text ?? 0),
            );
            const factors = [
              [builtIn.level(), shared.level] as const,
              ...(months! > 0 ? [[builtIn.sun(months!), shared.sun] as const] : []),
              ...(falls! > 0 ? [[builtIn.falls(falls!), shared.falls] as const] : []),
              ...(clamped! > 0 ? [[builtIn.clamp(clamped!), shared.clamp] as const] : []),
            ];
            return factors.reduce((load, [factor, common]) => {
              const own = random.normal();
              return (
                load *
                factor.value *
                Math.exp(factor.spread * (Math.sqrt(factor.shared) * common + Math.sqrt(1 - factor.shared) * own))
              );
            }, stock.rated.strength);
          }),
        );
      sum += sigma(results);
    }
    expect(Math.abs(sum / RUNS / after - 1)).toBeLessThan(0.04);
    expect(after).toBeLessThan(before);
  });

  it("goes to the machine as a break log and comes back as one that counts", () => {
    const csv = teardownLog(plan);
    expect(readBreakLog(csv).ok).toBe(false);
    const nothing = readResults(csv);
    expect(nothing.ok).toBe(false);
    const lines = csv.trimEnd().split("\n");
    const filled = lines
      .map((line, i) => (i > 1 && i !== 4 ? line.replace(/,,,,kN/, ",broke,12.5,,kN") : line))
      .join("\n");
    const back = readResults(filled);
    if (!back.ok) throw new Error(JSON.stringify(back.faults));
    expect(back.empty).toBe(1);
    expect(back.tests).toHaveLength(11);
    expect(back.tests.every(({ invented }) => invented)).toBe(true);
    for (const test of back.tests) {
      const piece = plan.pieces.find(({ id }) => test.note === `piece ${id}`)!;
      expect(typeof countsFor(test, piece.stock!)).toBe("object");
      expect(String(test.falls ?? 0)).toBe(piece.row.falls ?? "0");
    }
    // A fault keeps its line though a row above it is left out.
    const wrong = readResults(filled.replace(/broke,12.5,,kN,,,piece P6/, "brok,12.5,,kN,,,piece P6"));
    expect(wrong.ok ? [] : wrong.faults.map(({ line }) => line)).toEqual([8]);
  });

  it("says what was learnt: lower results lower the part and bring the next line's day nearer, and contradictions are told", () => {
    const [rig, record] = [demoRig(), recordOf(demo("old-rig-wear.json"))];
    const results = (share: number) =>
      plan.pieces.flatMap((piece) => {
        if (piece.stock?.id !== "polyester-webbing-25") return [];
        const builtIn = builtInFactors(piece.stock);
        return [
          drawn(
            piece,
            (row) =>
              share *
              30_000 *
              builtIn.sun(Number(row.sun_months ?? 0)).value *
              (Number(row.falls) > 0 ? builtIn.falls(Number(row.falls)).value : 1) *
              (row.clamped_months ? builtIn.clamp(Number(row.clamped_months)).value : 1),
          ),
        ];
      });
    const poor = teardownLearnt({ rig, record, on: DATE, results: results(0.55) });
    const good = teardownLearnt({ rig, record, on: DATE, results: results(1) });
    const main = (learnt: typeof poor) => learnt.parts.find(({ part }) => part === "main")!;
    expect(main(poor).after).toBeLessThan(main(poor).before);
    expect(main(good).after).toBeGreaterThan(main(poor).after);
    expect(main(poor).next!.after!).toBeLessThanOrEqual(main(good).next!.after ?? Number.POSITIVE_INFINITY);
    expect(poor.contradictions.some(({ finding }) => finding === "below")).toBe(true);
    expect(good.contradictions).toEqual([]);
    expect(good.factors.map(({ what }) => what)).toContain("level");
    expect(good.counted).toBe(good.results);
  });

  it("writes no cell that a spreadsheet would compute, and takes the mark off again", () => {
    const [first] = plan.pieces;
    const hostile = {
      ...first!,
      row: { ...first!.row, material: "=1+1", batch: "@x", outcome: "broke", result: "12", taken_from: '-2+"3' },
    };
    const csv = teardownLog({ ...plan, pieces: [hostile] });
    expect(csv).toContain("'=1+1");
    expect(csv).toContain("'@x");
    const back = readResults(csv.replace(/^(.*piece P1)$/m, (line) => `${line}\n${line.replace("broke,12", ",")}`));
    expect(back).toMatchObject({ ok: true, empty: 1, tests: [{ material: "=1+1", batch: "@x", takenFrom: '-2+"3' }] });
    expect(readResults(csv)).toMatchObject({ ok: true, tests: [{ material: "=1+1" }] });
  });
});

function drawn(piece: Sample, load: (row: Sample["row"]) => number): BreakTest {
  const number = (text: string | undefined) => (text === undefined || text === "" ? undefined : Number(text));
  const { row } = piece;
  const given = {
    monthsOutside: number(row.months_outside),
    sunMonths: number(row.sun_months),
    falls: number(row.falls),
    clampedMonths: number(row.clamped_months),
    batch: row.batch,
  };
  const known = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined && value !== ""));
  const result = { kind: "exact" as const, value: load(row) };
  return {
    part: row.part!,
    material: row.material!,
    state: row.state!,
    wet: false,
    outcome: "broke",
    result,
    ...known,
  };
}

describe("the plan of any line", () => {
  it("has every state when pulls allow, and no two pieces of it share webbing", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomWebbing, (webbing) => {
        const reading = readWearRecord({ secondline: "wear/1", name: "r", webbings: [webbing] });
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const rig = exampleRig();
        const states = new Set(samplesOn(rig, reading.record, "2026-04-01").samples.map(({ state }) => state));
        const plan = planned(rig, reading.record, states.size, "2026-04-01");
        expect(new Set(plan.pieces.map(({ state }) => state))).toEqual(states);
        expect(plan.leftOut).toEqual([]);
        const cuts = plan.pieces.flatMap((piece) => piece.cuts);
        for (const [i, a] of cuts.entries()) for (const b of cuts.slice(0, i)) expect(overlap(a, b)).toBe(false);
        for (const { teaches } of plan.pieces) {
          if (teaches !== undefined) expect(teaches.after).toBeGreaterThan(0);
        }
        const back = readResults(teardownLog(plan).replaceAll(/,,,,kN/g, ",broke,20,,kN"));
        expect(back).toMatchObject({ ok: true, empty: 0 });
        seen++;
      }),
      { seed: 12, numRuns: 6, endOnFailure: true },
    );
    expect(seen).toBe(6);
  }, 120_000);
});

describe("a line that is down already", () => {
  it("has nothing to plan on that day, and says since when", () => {
    const document = JSON.parse(demo("old-rig-wear.json"));
    for (const webbing of document.webbings) webbing.entries.push({ date: "2026-11-05", event: "takenDown" });
    const reading = planTeardown({ rig: demoRig(), record: recordOf(document), on: DATE });
    expect(reading).toMatchObject({
      ok: false,
      issue: { webbings: [{ since: "2026-11-05" }, { since: "2026-11-05" }] },
    });
  });
});
