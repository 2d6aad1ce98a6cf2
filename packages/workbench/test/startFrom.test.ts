/** What a page begins with, and choices that its forms offer. */
import { GENERIC_STOCKS, rigFact } from "@secondline/rig";
import { tellFault } from "@secondline/words/faults";
import { describe, expect, it } from "vitest";
import {
  answerWay,
  isFoundBy,
  type SavedWork,
  STOCK_FIELDS,
  startFrom,
  stockFaultText,
  sweepSpots,
  sweepTable,
} from "../src/index.ts";
import { demoDocument, read } from "./demoDocument.ts";

const reading = read(demoDocument());
if (!reading.ok) throw new Error(JSON.stringify(reading.issues[0]));
const { rig } = reading;
const first = { ...demoDocument(), name: "First" };
const linked = { ...demoDocument(), name: "Linked" };
const saved = {
  document: { ...demoDocument(), name: "Typed" },
  goodDocument: { ...demoDocument(), name: "Good" },
  session: { accuracy: "fine", selectedPart: "main" },
} as unknown as SavedWork;
const link = { kind: "rig", document: linked, camera: "anchor", time: 1 } as const;

describe("a page", () => {
  it("begins with the work that was kept, else with the first rig", () => {
    expect(startFrom({ kind: "none" }, saved, first)).toEqual({
      start: saved,
      notice: undefined,
      faults: [],
      replaced: undefined,
    });
    expect(startFrom({ kind: "none" }, undefined, first).start.document).toBe(first);
  });

  it("with a link begins with its rig, and the good state of the work that it replaces is to be kept", () => {
    const { start, notice, replaced } = startFrom(link, saved, first);
    expect(start).toMatchObject({ document: linked, goodDocument: linked });
    expect(start.session).toEqual({ accuracy: "fine", camera: "anchor", selectedPart: undefined });
    expect(replaced).toBe(saved.goodDocument);
    expect(notice).toMatchObject({ tone: "word", text: expect.stringContaining("Linked") });
    const alone = startFrom(link, undefined, first);
    expect(alone.replaced).toBeUndefined();
    expect(alone.notice!.text).not.toBe(notice!.text);
  });

  it("with a broken link tells what is wrong and leaves the work alone", () => {
    const opened = {
      ok: false,
      text: "The link is cut short.",
      issues: [{ path: "span", message: { code: "backup.both", values: {} }, got: "", expected: "" }],
    } as const;
    const { start, notice, faults, replaced } = startFrom({ kind: "broken", opened }, saved, first);
    expect([start, replaced]).toEqual([saved, undefined]);
    expect(notice).toEqual({ tone: "fault", text: "The link is cut short." });
    expect(faults).toEqual(opened.issues);
  });
});

describe("forms", () => {
  it("let an answer be typed, or chosen where there are few", () => {
    expect(answerWay("span").kind).toBe("typed");
    expect(answerWay("webbing").kind).toBe("stock");
    const shape = answerWay("shape");
    expect(shape.kind === "chosen" && shape.options.length).toBeGreaterThan(1);
  });

  it("find a webbing by the beginnings of its words, in any order and case", () => {
    const stock = GENERIC_STOCKS.get("polyester-webbing-25")!;
    expect(["", "poly", "WEB poly", "25"].map((query) => isFoundBy(stock, query))).toEqual([true, true, true, true]);
    expect(["ester", "poly nylon"].map((query) => isFoundBy(stock, query))).toEqual([false, false]);
  });

  it("offer the fibres and forms that there are, and say a fault in words", () => {
    const optionsOf = (name: string) => STOCK_FIELDS.find(({ at }) => at === name)?.options ?? [];
    expect(optionsOf("fibre").length).toBeGreaterThan(2);
    expect(optionsOf("form").length).toBeGreaterThan(1);
    const message = rigFact("backup.both", {});
    expect(stockFaultText({ kind: "issue", at: "name", message })).toBe(tellFault(message));
    expect(tellFault(message)).toContain("both");
  });
});

describe("values of a sweep", () => {
  const knob = {
    kind: "field",
    name: "backup.slack",
    path: "backup.slack",
    dimension: "share",
    from: 2,
    to: 14,
    unit: "%",
    whole: false,
  };
  const curve = { value: 1.456, low: 1.3, high: 1.6, event: { kind: "leashFall", at: 0.5 } };
  const points = [
    { values: [2], change: { "backup.slack": "2 %" }, curve },
    { values: [8], change: { "backup.slack": "8 %" } },
  ];
  const found = {
    named: rig,
    swept: { knobs: [knob], what: { kind: "drop" }, points, limits: [], region: undefined },
  } as never;

  it("are rows under as many heads, with a dash where nothing came out", () => {
    const { heads, rows, numbers } = sweepTable(found);
    for (const { cells } of rows) expect(cells).toHaveLength(heads.length);
    expect(rows[0]!.cells[0]).toBe("2 %");
    expect(rows[1]!.cells.slice(1)).toEqual(["–", ""]);
    expect(numbers).toBe(3);
  });

  it("can be opened in the plot where they have a place in it, and say what came of them", () => {
    const spots = sweepSpots(found);
    expect(spots.map(({ at }) => at)).toEqual([[2, 1.456]]);
    expect(spots[0]!.label).toContain("1.");
  });
});
