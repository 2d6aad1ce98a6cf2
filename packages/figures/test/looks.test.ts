/** Copies of drawings in a page, and forces as numbers. */
import { describe, expect, it } from "vitest";
import { isKeptElement, isPlace, looksOf } from "../src/index.ts";
import { rangeTable, sampleTable } from "../src/time/index.ts";
import { buildPyramid } from "../src/time/pyramid.ts";

describe("a copy of a drawing", () => {
  const looks = (element: string, values: Readonly<Record<string, string>>) =>
    looksOf(element, (look) => values[look] ?? "");

  it("has its shapes, letters and patterns, and nothing that could act", () => {
    expect(["path", "text", "g", "pattern", "clipPath"].every(isKeptElement)).toBe(true);
    expect(["script", "title", "foreignObject", "a", "image"].some(isKeptElement)).toBe(false);
    expect(["d", "x", "transform", "patternUnits"].every(isPlace)).toBe(true);
    expect(["onclick", "class", "tabindex", "style", "role"].some(isPlace)).toBe(false);
  });

  it("writes colours in a form that every program knows, with the opacity apart", () => {
    expect(looks("path", { fill: "rgb(1, 2, 3)", stroke: "none" })).toBe(' fill="rgb(1,2,3)"');
    expect(looks("path", { fill: "rgba(1, 2, 3, 0.5)" })).toBe(' fill="rgb(1,2,3)" fill-opacity="0.5"');
    expect(looks("path", { fill: "color(srgb 1 0.5 0 / 0.14)" })).toBe(' fill="rgb(255,128,0)" fill-opacity="0.14"');
    expect(looks("path", { fill: 'url("#off")' })).toBe(' fill="url(#off)"');
  });

  it("leaves out SVG's own defaults, and properties that the element cannot have", () => {
    expect(looks("rect", { "stroke-width": "1px", opacity: "1" })).toBe("");
    expect(looks("g", { fill: "rgb(1, 2, 3)", opacity: "0.4", "clip-path": 'url("#sight")' })).toBe(
      ' opacity="0.4" clip-path="url(#sight)"',
    );
    expect(looks("rect", { "font-size": "12px" })).toBe("");
    expect(looks("text", { "font-size": "12px" })).toBe(' font-size="12px"');
    expect(looks("defs", { fill: "rgb(1, 2, 3)" })).toBe("");
  });
});

describe("forces as numbers", () => {
  const column = (name: string, samples: readonly number[]) => ({
    name,
    pyramid: buildPyramid(Float32Array.from(samples)),
  });
  const columns = [column("leash", [0, 1000, 4000, 2000]), column("main line at A", [500, 500])];
  const given = { rate: 10, range: { from: 0, to: 0.35 }, digits: 2, read: "filtered" };

  it("are what each trace did in the range, and at the cursor", () => {
    const { heads, rows } = rangeTable(columns, { ...given, measure: null })(0.2);
    for (const row of rows) expect(row).toHaveLength(heads.length);
    const [name, now, largest, at, least] = rows[0]!;
    expect([name, now === largest, at!.startsWith("0.200")]).toEqual(["Leash", true, true]);
    expect(least).not.toBe(largest);
  });

  it("are measured from the second cursor with their sign, and by a dash where a trace has ended", () => {
    const { heads, rows } = rangeTable(columns, { ...given, measure: 0.3 })(0.2);
    for (const row of rows) expect(row).toHaveLength(heads.length);
    expect(rows[0]![2]).toMatch(/^\+2/);
    expect(rows[1]![2]).toBe("–");
  });

  it("are every sample of a short range", () => {
    const { heads, rows } = sampleTable(columns, 10, given.range);
    expect(heads).toHaveLength(3);
    expect(rows).toHaveLength(4);
    expect(rows[3]!.at(-1)).toBe("–");
  });

  it("are the largest of each interval of a long one", () => {
    const long = [
      column(
        "leash",
        Array.from({ length: 1000 }, (_, i) => (i === 555 ? 9000 : 1000)),
      ),
    ];
    const { caption, rows } = sampleTable(long, 10, { from: 0, to: 100 });
    expect(rows).toHaveLength(100);
    expect(rows.filter(([, force]) => force !== rows[0]![1])).toHaveLength(1);
    expect(caption).not.toBe(sampleTable(columns, 10, given.range).caption);
  });
});
