/** Drawings that are lists of shapes: the wear record and the tests of a group. */
import type { GroupReport, StrengthZone, WebbingState } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { dotPlot, resultMark } from "../src/breakLog/index.ts";
import { rowsOf, type Shape, scaleOf } from "../src/index.ts";
import {
  alongPaper,
  calendarPaper,
  calendarStays,
  dayLine,
  entryMark,
  laneBar,
  overview,
  readingWords,
  sightWindow,
  strengthPlot,
  takeDownBand,
  WEAR_TILES,
} from "../src/wear/index.ts";

/** All shapes, those inside of groups too. */
const flat = (shapes: readonly Shape[]): readonly Shape[] =>
  shapes.flatMap((shape) => (shape.kind === "group" ? [shape, ...flat(shape.inside)] : [shape]));
const wordsIn = (shapes: readonly Shape[]): readonly string[] =>
  flat(shapes).flatMap((shape) => (shape.kind === "text" ? [shape.words] : []));
const filledWith = (shapes: readonly Shape[], pattern: string) =>
  flat(shapes).filter(({ fill }) => typeof fill === "object" && fill.pattern === pattern);

/** Ten pixels to the metre, from 100 px on. */
const x = scaleOf(0, 80, 100, 900);
const state = (more: { placement?: undefined; marks?: WebbingState["marks"] } = {}) =>
  ({ from: 0, to: 80, placement: { from: 20, to: 70, markedEnd: "A" }, marks: [], ...more }) as unknown as WebbingState;
const mark = (kind: WebbingState["marks"][number]["kind"], from: number, to: number) =>
  ({ kind, from, to, since: "2026-01-01" }) as unknown as WebbingState["marks"][number];

it("bars in one row never cover one another", () => {
  const bars = [0, 3, 1, 8, 2, 9, 4].map((from) => ({ from, to: from + 2.5 }));
  const rows = rowsOf(bars, 0.2);
  bars.forEach((a, i) => {
    bars.slice(i + 1).forEach((b, j) => {
      if (rows[i] === rows[i + 1 + j]) expect(a.to <= b.from || b.to <= a.from).toBe(true);
    });
  });
});

describe("the webbing on the table", () => {
  const paper = (of: WebbingState) => alongPaper({ x, state: of, bottom: 400, width: 1000, wide: true });

  it("is shaded on either side of the loaded span, and nowhere where none is loaded", () => {
    expect(filledWith(paper(state()), "off")).toMatchObject([
      { x: 100, width: 200 },
      { x: 800, width: 100 },
    ]);
    expect(filledWith(paper(state({ placement: undefined })), "off")).toEqual([]);
  });

  it("shows every kind of mark by a pattern of its own, and one too thin for a pattern in its colour, where it lies", () => {
    const marks = [
      mark("clampMark", 10, 12),
      mark("fallZone", 30, 32),
      mark("stitching", 40, 42),
      mark("cut", 50, 50.1),
    ];
    const shapes = paper(state({ marks }));
    for (const kind of ["clamp", "falls", "sewn"]) expect(filledWith(shapes, kind)).toHaveLength(1);
    expect(filledWith(shapes, "damage")).toEqual([]);
    expect(flat(shapes)).toContainEqual(expect.objectContaining({ x: 598.5, width: 4, fill: "failsInk" }));
  });

  it("names a pattern only where there is one", () => {
    const marks = [mark("clampMark", 10, 12), mark("abrasion", 30, 36)];
    const known = new Set(WEAR_TILES.map(({ name }) => name));
    const named = flat(paper(state({ marks }))).flatMap(({ fill }) => (typeof fill === "object" ? [fill.pattern] : []));
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((name) => !known.has(name))).toEqual([]);
  });

  it("is drawn small with its loaded span, and a window that stays wide enough to be taken hold of", () => {
    expect(flat([overview(state(), x)])).toContainEqual(
      expect.objectContaining({ d: "M300 12H800M300 6v12M800 6v12" }),
    );
    expect(flat([overview(state({ placement: undefined }), x)])).toHaveLength(2);
    expect(sightWindow(200, 201)[0]).toMatchObject({ x: 200, width: 4 });
  });
});

describe("a bar in a lane", () => {
  const bar = (left: number, width: number, more: object = {}) =>
    laneBar(
      {
        item: { kind: "falls", label: "12 falls", later: false },
        left,
        width,
        beyond: { left: 0, right: 0 },
        label: { x: left, anchor: "start" },
        ...more,
      },
      50,
      17,
    );

  it("can be hit however thin it is, about its own middle", () => {
    expect(bar(100, 6)[0]).toMatchObject({ x: 91, width: 24, fill: "transparent" });
  });

  it("goes on beyond the edge where it does, cut off there", () => {
    expect(bar(100, 200)[1]).toMatchObject({ clip: undefined });
    expect(bar(100, 200, { beyond: { left: 8, right: 0 } })[1]).toMatchObject({ x: 92, width: 208, clip: "sight" });
  });

  it("of a day to come is told from one of the past", () => {
    const item = { kind: "falls", label: "12 falls", later: true };
    expect(bar(100, 200, { item })[1]).toMatchObject({ styled: "later" });
    expect(bar(100, 200)[1]!.styled).toBeUndefined();
  });
});

describe("strength beside what is needed", () => {
  const zone = (from: number, to: number, strength: number) =>
    ({ from, to, strength, strength5: 0.8 * strength, reason: "webbing" }) as StrengthZone;
  const zones = [zone(0, 40, 20_000), zone(40, 80, 10_000)];
  const plot = {
    x,
    zones,
    loaded: zones,
    worst: zones[1],
    needed: 9000,
    placement: state().placement,
    wide: true,
    width: 1000,
    top: 100,
    height: 200,
  };

  it("marks what falls short, and nothing while nobody knows what is needed", () => {
    expect(filledWith(strengthPlot(plot), "short")).toHaveLength(1);
    expect(filledWith(strengthPlot({ ...plot, needed: undefined }), "short")).toEqual([]);
  });

  it("names its curves and what is needed, the load rounded up", () => {
    expect(wordsIn(strengthPlot({ ...plot, needed: 9001 })).join("; ")).toContain("9.01 kN");
    expect(wordsIn(strengthPlot({ ...plot, needed: undefined })).join("; ")).not.toContain("9.0");
  });

  it("names the weakest place there, or the edge that it lies beyond", () => {
    expect(wordsIn(strengthPlot(plot))).toContainEqual(expect.stringMatching(/^8.*kN, webbing$/));
    const left = { ...plot, x: scaleOf(0, 30, 100, 900) };
    const edge = flat(strengthPlot(left)).find((one) => one.kind === "text" && one.words.includes("60"));
    expect(edge).toMatchObject({ textAnchor: "end", x: 896 });
  });

  it("is read off on the side that has more room", () => {
    expect(readingWords(plot, 10, zones[0]!)).toMatchObject({ x: 208, textAnchor: "start" });
    expect(readingWords(plot, 70, zones[1]!)).toMatchObject({ x: 792, textAnchor: "end" });
  });
});

describe("a calendar", () => {
  const days = scaleOf(0, 1000, 0, 1000);

  it("has a line for every tick, heavier where a year begins", () => {
    const ticks = [
      { day: 100, label: "Dec", year: false },
      { day: 131, label: "2026", year: true },
    ];
    const lines = flat([calendarPaper(ticks, days, 200)]).filter(({ kind }) => kind === "path");
    expect(lines.map(({ styled }) => styled)).toEqual(["rule", "axis", "axis"]);
  });

  it("says when a bar began and ended, where its label has no room too", () => {
    const stay = { from: 100, to: 110, label: "The long gap", title: "The long gap: from then to then" };
    const shapes = flat([calendarStays([stay], days, 500, false)]);
    expect(shapes).toContainEqual(expect.objectContaining({ title: stay.title }));
    expect(wordsIn(shapes)).toEqual([]);
  });

  it("is hatched from the take-down date to its end", () => {
    const band = takeDownBand({ day: 600, words: "take down by 4 July" }, days, 300, 200, 1000);
    expect(filledWith([band], "short")).toMatchObject([{ x: 600, width: 400 }]);
    expect(wordsIn([band])).toEqual(["take down by 4 July"]);
  });

  it("keeps the date of the day that is shown inside of the drawing", () => {
    const handle = dayLine(3, "4 Jul 2026", 200, 1000)[2];
    expect(handle).toMatchObject({ x: 0 });
  });

  it("has a mark for an entry of a kind that it does not know, too", () => {
    expect(flat(entryMark("never heard of", 50, 60, false))).toContainEqual(expect.objectContaining({ d: "M-4 0H4" }));
    expect(flat(entryMark("falls", 50, 60, true))).toContainEqual(expect.objectContaining({ fill: "accentWash" }));
  });
});

describe("tests of a group as dots", () => {
  const dot = (load: number, odd = false) => ({
    result: { kind: "exact" as const, value: load },
    load,
    title: `broke at ${load}`,
    odd,
  });
  const plot = (dots: readonly ReturnType<typeof dot>[], wide = true) =>
    dotPlot({ modes: [{ name: "in the span", dots }], most: 20_000, bounds: undefined, wide, width: 900 });

  it("stand in as many rows as keep them apart", () => {
    const alone = plot([dot(5000), dot(15_000)]);
    const close = plot([dot(5000), dot(5010)]);
    expect(close.height - alone.height).toBe(22);
  });

  it("say which one lies apart from the others", () => {
    expect(wordsIn(plot([dot(5000), dot(15_000)]).shapes).join()).not.toMatch(/apart/);
    expect(wordsIn(plot([dot(5000), dot(15_000, true)]).shapes).join()).toMatch(/apart/);
  });

  it("show a held load with an arrow upwards, one that was too much with an arrow downwards, and a bar between two", () => {
    const [arrow, open] = resultMark("above", [100, 100], 20);
    expect(arrow).toMatchObject({ d: "M105 20h16m-5-4 5 4-5 4" });
    expect(open).toMatchObject({ fill: "paper" });
    expect(resultMark("below", [100, 100], 20)[0]).toMatchObject({ d: "M95 20h-16m5-4 -5 4 5 4" });
    expect(resultMark("between", [100, 140], 20)).toMatchObject([{ d: "M100 15v10M100 20H140M140 15v10" }]);
    expect(resultMark("exact", [100, 100], 20)).toMatchObject([{ kind: "circle", fill: "accent" }]);
  });

  it("carry what 95 % of such parts reach, as surely as asked, each bound by a line of its own", () => {
    const bounds = { at75: { value: 12_000 }, at95: { value: 10_000 } } as GroupReport["characteristic"];
    const { shapes } = dotPlot({
      modes: [{ name: "in the span", dots: [dot(15_000)] }],
      most: 20_000,
      bounds,
      wide: true,
      width: 900,
    });
    const lines = flat(shapes).filter(({ stroke }) => stroke === "failsInk");
    expect(lines.map(({ strokeDasharray }) => strokeDasharray)).toEqual(["2 3", "7 4"]);
  });
});
