import { layoutTraceData } from "@secondline/figures/time";
import { editDocument } from "@secondline/rig";
import type { RunRequest, ServiceAnswer, StudyRequest } from "@secondline/runner";
import type { Outcome, PartOutcome, Rig, SearchResult, WhatIfOutcome, WhatIfRun } from "@secondline/scenarios";
import { beforeEach, describe, expect, it } from "vitest";
import { syntheticRecording } from "../../figures/test/syntheticRecording.ts";
import { createSandbox, type Sandbox } from "../src/inHand/sandbox.ts";
import type { Services } from "../src/inHand/state.ts";
import { differencesTold, fallRows, verdictRows } from "../src/layouts/differences.ts";
import { eachLayout } from "../src/layouts/eachLayout.ts";
import { keepLayouts, readKeptLayouts } from "../src/layouts/keptLayouts.ts";
import { layoutCautions } from "../src/layouts/layoutCautions.ts";
import { layoutChanges } from "../src/layouts/layoutChanges.ts";
import { createLayouts, type Layouts, writtenLayout } from "../src/layouts/layouts.ts";
import { demoDocument, read } from "./demoDocument.ts";

/** A runner that only remembers what it was asked. */
class DeafRunner {
  readonly runs: RunRequest[] = [];
  readonly cancelled: string[] = [];
  run(request: RunRequest) {
    this.runs.push(request);
    return new Promise<ServiceAnswer<WhatIfRun>>(() => undefined);
  }
  study(_: StudyRequest) {
    return new Promise<ServiceAnswer<SearchResult>>(() => undefined);
  }
  async cancel(id: string) {
    this.cancelled.push(id);
  }
}

let runner: DeafRunner;
let inHand: Sandbox;
let layouts: Layouts;
let settle: () => void;
let services: Services;

beforeEach(() => {
  runner = new DeafRunner();
  let count = 0;
  const waiting = new Set<() => void>();
  settle = () => {
    for (const action of [...waiting]) action();
    waiting.clear();
  };
  services = {
    runner,
    read,
    newId: () => `id ${++count}`,
    later(_, action) {
      waiting.add(action);
      return () => waiting.delete(action);
    },
  };
  const document = demoDocument();
  inHand = createSandbox(services, { document, goodDocument: document });
  layouts = createLayouts(inHand, services);
});

const list = () => layouts.store.getState().layouts;
const copy = () => layouts.add(writtenLayout(inHand))!;
const slackOf = (sandbox: Sandbox) => sandbox.store.getState().document.rig.backup?.slack;

describe("layouts", () => {
  it("the first is the open rig; a copy of it is changed without touching it", () => {
    const { sandbox } = copy();
    sandbox.actions.edit("backup.slack", "12 %", "slack");
    expect(slackOf(sandbox)).toBeCloseTo(0.12);
    expect(slackOf(inHand)).toBeCloseTo(0.05);
    expect(list()[0]!.sandbox).toBe(inHand);
  });

  it("there are four at most", () => {
    copy();
    copy();
    copy();
    expect(layouts.add(writtenLayout(inHand))).toBeUndefined();
    expect(list()).toHaveLength(4);
  });

  it("each keeps its own last good state and its own undo", () => {
    const [one, other] = [copy().sandbox, copy().sandbox];
    one.actions.edit("backup.slack", "12 %", "slack");
    other.actions.edit("backup.slack", "many", "slack");
    expect(slackOf(other)).toBeCloseTo(0.05);
    expect(other.store.getState().document.issues).toHaveLength(1);
    one.actions.undo();
    expect(slackOf(one)).toBeCloseTo(0.05);
    expect(other.store.getState().document.issues).toHaveLength(1);
  });

  it("all follow the what-if of the open rig while they are looked at", () => {
    const { sandbox } = copy();
    const end = layouts.follow();
    inHand.actions.chooseWhatIf({ kind: "leashFall", at: 0.25 });
    expect(sandbox.store.getState().session.whatIf).toEqual({ kind: "leashFall", at: 0.25 });
    end();
    inHand.actions.chooseWhatIf({ kind: "leashFall", at: 0.75 });
    expect(sandbox.store.getState().session.whatIf).toEqual({ kind: "leashFall", at: 0.25 });
    layouts.follow()();
    expect(sandbox.store.getState().session.whatIf).toEqual({ kind: "leashFall", at: 0.75 });
    settle();
    expect(runner.runs.at(-1)!.whatIf).toEqual({ kind: "leashFall", at: 0.75 });
  });

  it("one that is taken away stops computing and comes back to its place as it was", () => {
    const [second] = [copy(), copy()];
    second!.sandbox.actions.edit("backup.slack", "12 %", "slack");
    settle();
    const bringBack = layouts.remove(second!.id)!;
    expect(runner.cancelled.length).toBeGreaterThan(0);
    expect(list()).toHaveLength(2);
    bringBack();
    expect(list().map(({ sandbox }) => slackOf(sandbox))).toEqual([0.05, 0.12, 0.05]);
  });

  it("know what the open rig knows, and leave out what it leaves out", () => {
    const { sandbox } = copy();
    const known = { on: "2026-07-01", tests: [], invented: { record: false, tests: false } };
    inHand.actions.know(known);
    expect(sandbox.store.getState().assessment.known).toBe(known);
    inHand.actions.leaveOut(true);
    expect(sandbox.store.getState().assessment.leftOut).toBe(true);
    expect(copy().sandbox.store.getState().assessment).toMatchObject({ known, leftOut: true });
  });

  it("the open rig cannot be taken away", () => {
    copy();
    expect(layouts.remove(list()[0]!.id)).toBeUndefined();
    expect(list()).toHaveLength(2);
  });

  it("tell of every change, so that it is kept", () => {
    let told = 0;
    layouts.onChange(() => told++);
    const { id, sandbox } = copy();
    sandbox.actions.edit("backup.slack", "12 %", "slack");
    layouts.remove(id);
    expect(told).toBe(3);
  });
});

describe("layouts kept on the device", () => {
  const memory = () => {
    const items = new Map<string, string>();
    return {
      items,
      getItem: (key: string) => items.get(key) ?? null,
      setItem: (key: string, value: string) => void items.set(key, value),
    };
  };

  it("come back with what was typed, right or wrong", () => {
    const { sandbox } = copy();
    sandbox.actions.edit("backup.slack", "many", "slack");
    const shelf = memory();
    keepLayouts(shelf, layouts.written());
    const { layouts: kept, lost } = readKeptLayouts(shelf, read);
    expect(lost).toBe(0);
    const again = createLayouts(inHand, services, kept);
    const { document } = again.store.getState().layouts[1]!.sandbox.store.getState();
    expect(document.issues).toHaveLength(1);
    expect(document.rig.backup?.slack).toBeCloseTo(0.05);
  });

  it("are set aside when they cannot be read, and the others stay", () => {
    copy();
    const shelf = memory();
    keepLayouts(shelf, layouts.written());
    const text = JSON.stringify([
      ...JSON.parse(shelf.getItem("secondline.layouts")!),
      { document: {}, goodDocument: {} },
      7,
    ]);
    shelf.setItem("secondline.layouts", text);
    expect(readKeptLayouts(shelf, read)).toMatchObject({ layouts: [{}], lost: 2 });
    expect(shelf.getItem("secondline.layouts.unreadable")).toBe(text);
    const twice = text.replace('{"', '{"document":1,"');
    for (const unreadable of ["not json", "[".repeat(1_000_000), twice]) {
      shelf.setItem("secondline.layouts", unreadable);
      expect(readKeptLayouts(shelf, read)).toEqual({ layouts: [], lost: 1 });
      expect(shelf.getItem("secondline.layouts.unreadable")).toBe(unreadable);
    }
  });
});

describe("what was changed", () => {
  const base = demoDocument();
  const changes = (path: string, value: unknown) => layoutChanges(base, editDocument(base, path, value));

  it("is told in the words of the rig sheet, as typed", () => {
    expect(changes("backup.slack", "12 %")).toEqual([
      { path: "backup.slack", label: "Backup, slack", before: "5 %", after: "12 %" },
    ]);
    expect(changes("main.sections[0].stock", "hmpe-webbing-25")).toMatchObject([
      { label: "Main line, webbing", before: "Polyester webbing 25 mm", after: "HMPE webbing 25 mm" },
    ]);
  });

  it("names the item of a list that has several", () => {
    expect(changes("backup.connections[1].at", 0.6)).toMatchObject([{ label: "Backup, connection 2, place" }]);
    expect(changes("anchorA.points[0].strength", "30 kN")).toMatchObject([
      { label: "Anchor A, rock point 1, rated strength", before: "25 kN", after: "30 kN" },
    ]);
  });

  it("is nothing when the same length is typed in another unit, or the rig is renamed", () => {
    expect(changes("span", "6000 cm")).toEqual([]);
    expect(changes("name", "Another name")).toEqual([]);
  });

  it("counts the parts of a list that grew or shrank, and sees parts that went", () => {
    expect(changes("backup.connections[1]", undefined)).toMatchObject([
      { label: "Backup, connections", before: "3", after: "2" },
    ]);
    expect(changes("backup", undefined)).toMatchObject([{ label: "Backup", after: "none" }]);
  });
});

const peaks = { leash: 2000, mainA: 4000, mainB: 3900, backupA: 5000, backupB: 4000 };
const fall = (change: Partial<WhatIfOutcome> = {}): WhatIfOutcome => ({
  whatIf: { kind: "mainFails", at: 0.5, cutAt: 0, walker: "hanging" },
  key: "fails@0,hanging@0.5",
  class: "afterFailure",
  ok: true,
  caughtBy: "backup",
  gaveWay: [],
  counts: true,
  runs: 1,
  drop: 4,
  feetClearance: 20,
  peaks,
  ...change,
});
const rigs = (count: number): Rig[] => Array.from({ length: count }, () => inHand.store.getState().document.rig);

describe("the what-if in the table of differences", () => {
  it("marks the kindest value and says how far the others are from the first", () => {
    const [, drop] = fallRows(rigs(3), [fall(), fall({ drop: 7 }), fall({ drop: 4.05 })]);
    expect(drop).toMatchObject({ cells: ["4.0 m", "7.0 m", "4.1 m"], changes: ["", "+3.0 m", ""], kindest: [0] });
  });

  it("praises no layout that fails, however kind this one fall is", () => {
    const runs = [fall({ drop: 7 }), fall({ drop: 4 }), fall({ drop: 5 })];
    const [, drop] = fallRows(rigs(3), runs, [false, true, false]);
    expect(drop).toMatchObject({ changes: ["", "−3.0 m", "−2.0 m"], kindest: [2] });
  });

  it("never praises small forces of a walker who hit the ground", () => {
    const ground = fall({
      caughtBy: "nothing",
      lostBecause: "ground",
      groundSpeed: 12,
      drop: 20,
      peaks: { ...peaks, leash: 300, backupA: 200 },
    });
    const rows = fallRows(rigs(2), [fall(), ground]);
    expect(rows[0]!.cells).toEqual(["caught by the backup", "reaches the ground"]);
    expect(rows.flatMap(({ kindest }) => kindest)).toEqual([]);
  });

  it("says who caught, whatever the question was", () => {
    const [fate] = fallRows(rigs(2), [fall({ caughtBy: "main" }), fall({ whatIf: { kind: "leashFall", at: 0.5 } })]);
    expect(fate!.cells).toEqual(["caught by the main line", "caught by the backup"]);
  });

  it("has no number of a run that could not be computed", () => {
    const rows = fallRows(rigs(2), [fall(), fall({ ok: false, trouble: { reason: "audit", detail: "off" } })]);
    expect(rows[1]!.cells).toEqual(["4.0 m", "–"]);
  });
});

describe("the verdicts in the table of differences", () => {
  const part = (margin: number | undefined): PartOutcome =>
    ({
      id: "leash",
      verdict: margin === undefined ? "notLoaded" : margin < 1 ? "fails" : margin < 2 ? "thin" : "holds",
      byClass: margin === undefined ? {} : { expected: { margin, required: 2 } },
      ...(margin === undefined ? {} : { governing: "expected" }),
    }) as unknown as PartOutcome;
  const outcome = (verdict: Outcome["verdict"], leash: number | undefined) =>
    ({
      rigName: "rig",
      verdict,
      whatIfs: [fall()],
      parts: [part(leash)],
      falls: { notCaught: [] },
      leastMargin: "leash",
      statics: { unloadedTension: 1, unloadedSag: 1, standingTension: 1, standingSag: 1 },
    }) as unknown as Outcome;

  it("call no value of a layout that fails kind", () => {
    const outcomes = [outcome("fails", 9), outcome("thin", 1.5), outcome("holds", 3)];
    expect(verdictRows(rigs(1)[0]!, outcomes).margins).toMatchObject([{ id: "margin.leash", kindest: [2] }]);
  });

  it("give a part that is not loaded neither a margin, nor a mark of merit, nor a difference", () => {
    const [row] = verdictRows(rigs(1)[0]!, [outcome("holds", 3), outcome("thin", undefined)]).margins;
    expect(row).toMatchObject({
      cells: ["× 3.00", "not loaded"],
      verdicts: ["holds", "notLoaded"],
      changes: ["", ""],
      kindest: [],
    });
  });

  it("are bounds where a layout loses the walker, and the table says what that means", () => {
    const lost = { ...outcome("fails", 1.2), falls: { notCaught: [0] } } as unknown as Outcome;
    const { figures, margins, note } = verdictRows(rigs(1)[0]!, [outcome("thin", 1.5), lost]);
    expect(margins[0]).toMatchObject({ cells: ["× 1.50", "≤ 1.20"], changes: ["", ""], kindest: [] });
    expect(figures.find(({ id }) => id === "drop.afterFailure")!.cells[1]).toMatch(/^≥ /);
    expect(note).toContain("loses the walker");
    expect(verdictRows(rigs(1)[0]!, [outcome("thin", 1.5), outcome("holds", 3)]).note).toBeUndefined();
  });

  it("are told in the figures of the table", () => {
    const said = differencesTold(rigs(1)[0]!, outcome("holds", 3), outcome("thin", 1.5));
    expect(said).toContain("Margin: Leash: × 1.50 instead of × 3.00.");
  });
});

describe("cautions of layouts", () => {
  it("stand once, with the letters of those that they belong to; general ones without", () => {
    const own = [
      { letter: "A", cautions: ["A model.", "No backup."] },
      { letter: "B", cautions: ["A model.", "Coarse.", "No backup."] },
    ];
    expect(layoutCautions(["A model."], own)).toEqual(["A model.", "A, B: No backup.", "B: Coarse."]);
  });
});

describe("traces on shared axes", () => {
  it("give every layout a column of its own, the one without a run an empty one, up to the same top", () => {
    const recording = syntheticRecording();
    const range = { from: 0, to: recording.duration };
    const { columns, top } = layoutTraceData([recording, undefined, recording], "leash", range, 200);
    expect(columns).toHaveLength(4);
    expect(Array.from<number | null | undefined>(columns[2]!).every((value) => value === null)).toBe(true);
    expect(columns[1]).toEqual(columns[3]);
    const highest = Math.max(...(columns[1] as number[]).filter((value) => value !== null));
    expect(top).toBeGreaterThan(highest);
  });
});

describe("a value of every layout", () => {
  it("stands in the order of the layouts, and is the same list until one of its values changes", () => {
    const { sandbox } = copy();
    const each = eachLayout<number | undefined>(list());
    const slacks = () => each.get(({ document }) => document.rig.backup?.slack);
    const first = slacks();
    expect(first).toHaveLength(2);
    let heard = 0;
    const end = each.subscribe(() => heard++);
    inHand.actions.look({ showForces: true });
    expect(heard).toBeGreaterThan(0);
    expect(slacks()).toBe(first);
    sandbox.actions.edit("backup.slack", "12 %", "slack");
    expect(slacks()[0]).toBe(first[0]);
    expect(slacks()[1]).toBeCloseTo(0.12);
    const before = heard;
    end();
    sandbox.actions.edit("backup.slack", "9 %", "slack");
    expect(heard).toBe(before);
  });
});
