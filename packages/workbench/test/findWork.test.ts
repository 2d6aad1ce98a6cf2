/** Work kept on a device as a page finds it, and what the form of a sweep and the reasons of a margin say. */
import { readRig } from "@secondline/rig";
import { type Outcome, type PartOutcome, PULL_LIMITS } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { faultsAt, numberOptions } from "../src/howFar/formWords.ts";
import { findWork, heavierOf, limitsTold, marginsTold, subjectOptions, sweepDoing } from "../src/index.ts";
import { checkSaved } from "../src/keeping/checkSaved.ts";
import { calendarLayout } from "../src/record/index.ts";
import { demoDocument, read } from "./demoDocument.ts";
import { exampleRecord } from "./exampleWear.ts";

const reading = readRig(demoDocument());
if (!reading.ok) throw new Error(JSON.stringify(reading.issues[0]));
const { rig } = reading;

describe("work kept on a device", () => {
  function finding(load: () => unknown, reader = async () => ({ checkSaved })) {
    const shelf = new Map<string, string>();
    const copies: unknown[] = [];
    const works = {
      load: async () => load(),
      keepCopy: async (document: unknown) => void copies.push(document),
    };
    const found = findWork(works, {
      read,
      now: () => 7,
      shelf: () => ({
        getItem: (key: string) => shelf.get(key) ?? null,
        setItem: (key: string, text: string) => void shelf.set(key, text),
        removeItem: () => undefined,
      }),
      handOut: () => undefined,
      reader,
    });
    return { found, shelf, copies };
  }
  const good = { version: 2, document: demoDocument(), goodDocument: demoDocument(), session: {} };

  it("comes back, and is kept on", async () => {
    const { saved, isWritable, notices } = await finding(() => good).found;
    expect(saved?.document).toEqual(demoDocument());
    expect([isWritable, notices]).toEqual([true, []]);
  });

  it("is none on a first visit, which does without what reads it", async () => {
    const unused = async () => {
      throw new Error("not needed");
    };
    expect(await finding(() => undefined, unused).found).toEqual({ saved: undefined, isWritable: true, notices: [] });
  });

  it("that cannot be fetched is told, and nothing is written over it", async () => {
    const broken = finding(() => {
      throw new Error("the disk is gone");
    });
    const { saved, isWritable, notices } = await broken.found;
    expect([saved, isWritable]).toEqual([undefined, false]);
    expect(notices[0]!.text).toContain("the disk is gone");
    const unread = finding(
      () => good,
      async () => {
        throw new Error("no reader");
      },
    );
    expect((await unread.found).isWritable).toBe(false);
  });

  it("that cannot be read is told and set aside as text", async () => {
    const { found, shelf } = finding(() => ({ ...good, goodDocument: { span: "60 parsecs" }, document: {} }));
    const { saved, isWritable, notices } = await found;
    expect([saved, isWritable, notices.length]).toEqual([undefined, true, 1]);
    expect([...shelf.values()].join()).toContain("60 parsecs");
  });

  it("is none where the device keeps nothing", async () => {
    expect((await findWork(undefined, {} as never)).isWritable).toBe(false);
  });
});

describe("the form of a sweep", () => {
  it("tells a fault where it is, and nowhere else", () => {
    const faulty = { ok: false, faults: [{ place: "first", fault: { kind: "issues" } }] } as never;
    expect(faultsAt(faulty, "first")).toHaveLength(1);
    expect(faultsAt(faulty, "second")).toEqual([]);
    expect(faultsAt({ ok: true } as never, "first")).toEqual([]);
  });

  it("offers numbers by what they are, and layouts by letter and name", () => {
    const [slack] = numberOptions(rig, [{ name: "backup.slack", kind: "field" } as never]);
    expect(slack!.label).not.toContain("backup.slack");
    const [hand, layout] = subjectOptions(["Mine", "Other"]);
    expect(hand!.label).toContain("Mine");
    expect(layout!.label).toMatch(/B.*Other/);
  });

  it("says how many runs are made of how many, once that is known", () => {
    expect(sweepDoing(rig, { done: 0 } as never)).not.toMatch(/\d/);
    expect(sweepDoing(rig, { done: 0.1, made: 12, expected: 80 } as never)).toMatch(/12.*80/);
  });
});

describe("reasons of a margin", () => {
  const one = {
    margin: 1.456,
    required: 2,
    strength: 20_000,
    strength5: 18_888,
    load: 9000,
    demand: 12_345,
    demandInterval: [11_000, 13_000],
    runs: 40,
    whatIf: 0,
  };
  const outcome = { whatIfs: [{ whatIf: { kind: "leashFall", at: 0.5 } }] } as unknown as Outcome;
  const part = { byClass: { expected: one } } as unknown as PartOutcome;

  it("are told once for each class of what-ifs, margins and strengths rounded down, loads up", () => {
    const [told, ...others] = marginsTold(part, rig, outcome);
    expect(others).toEqual([]);
    expect(told!.sentence).toContain("1.45");
    expect(told!.sentence).toContain("18.8");
    expect(told!.sentence).toContain("12.4");
    expect(told!.sentence.endsWith(".")).toBe(true);
    expect(told!.middle?.whatIf).toEqual({ kind: "leashFall", at: 0.5 });
  });

  it("say where the place is that is weakest, where there is one", () => {
    const worn = { byClass: { expected: { ...one, at: 12.3, reason: "clamp mark" } } } as unknown as PartOutcome;
    expect(marginsTold(worn, rig, outcome)[0]!.sentence).toContain("clamp mark");
    expect(marginsTold({ byClass: {} } as never, rig, outcome)).toEqual([]);
  });

  it("of the pull on a person say of every limit whether it is passed", () => {
    const between = (PULL_LIMITS[0]!.limit + PULL_LIMITS[1]!.limit) / 2;
    const told = limitsTold({ demand: between } as never);
    expect(told).toHaveLength(PULL_LIMITS.length);
    expect(told[0]!.sentence).not.toBe(limitsTold({ demand: 0 } as never)[0]!.sentence);
    expect(told[1]!.sentence).toBe(limitsTold({ demand: 0 } as never)[1]!.sentence);
  });
});

it("heavier walkers are not looked for without a verdict and a record that dates could follow from", () => {
  const state = { document: {}, assessment: { known: {}, assessed: {} } } as never;
  expect(heavierOf(state, {} as never, exampleRecord)).toBeUndefined();
  expect(heavierOf(state, undefined, exampleRecord)).toBeUndefined();
});

describe("a calendar", () => {
  const of = {
    record: exampleRecord,
    owner: { list: "webbings", index: 0 },
    on: "2026-11-25",
    mark: undefined,
  } as const;
  const laid = (more: object = {}) => calendarLayout({ ...of, held: undefined, width: 900, wide: true, ...more });

  it("has every entry inside its axis and above its lower end", () => {
    const { placed, x, bottom, entries } = laid();
    expect(placed).toHaveLength(entries.length);
    for (const { day, y } of placed) {
      expect(day).toBeGreaterThan(x.from);
      expect(day).toBeLessThan(x.to);
      expect(y).toBeLessThan(bottom);
    }
  });

  it("holds still while a hand moves something", () => {
    expect(laid({ held: [20_000, 21_000] }).span).toEqual([20_000, 21_000]);
  });

  it("reaches to the take-down date, and has words beside the marks where it is wide", () => {
    const mark = { day: 20_700, words: "take down" };
    expect(laid({ mark }).span[1]).toBeGreaterThan(20_700);
    expect([laid().hasLabels, laid({ wide: false, width: 360 }).hasLabels]).toEqual([true, false]);
  });
});
