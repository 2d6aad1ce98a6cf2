import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dotPlot } from "../src/dotPlot.ts";
import { table } from "../src/table.ts";
import { wrap } from "../src/wrap.ts";

describe("a table", () => {
  const columns = [
    { head: "What", flexible: true },
    { head: "kN", align: "right" as const },
  ];

  it("keeps within its width by going on in the next line, and loses no word", () => {
    const text = table(columns, [["a very long description of what happens to whom", "12.3"]], 30);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(30);
    const words = text.split("\n").slice(2).join(" ").replace("12.3", "").split(/\s+/).join(" ").trim();
    expect(words).toBe("a very long description of what happens to whom");
  });

  it("paints a cell without moving its neighbours", () => {
    const plain = table(columns, [["x", "1"]], 30);
    const painted = table(columns, [[{ text: "x", paint: (text) => `<${text}>` }, "1"]], 30);
    expect(painted.replace(/[<>]/g, "")).toBe(plain);
  });
});

it("wrapped text keeps every word and the width", () => {
  const words = fc.array(fc.stringMatching(/^[a-z]{1,20}$/), { minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(words, (list) => {
      const wrapped = wrap(list.join(" "), 40);
      expect(wrapped.split(/\s+/)).toEqual(list);
      for (const line of wrapped.split("\n")) expect(line.length).toBeLessThanOrEqual(40);
    }),
    { seed: 3 },
  );
});

it("a dot plot shows every test, those that only held apart from those that broke", () => {
  const test = (result: object) => ({ part: "webbing", material: "m", state: "new", wet: false, result }) as never;
  const plot = dotPlot(
    [
      test({ kind: "exact", value: 20_000 }),
      test({ kind: "exact", value: 20_000 }),
      test({ kind: "exact", value: 25_000 }),
      test({ kind: "above", value: 22_000 }),
    ],
    60,
  );
  const [broke, held] = plot.split("\n");
  expect(broke).toMatch(/^broke +2 +• *$/);
  expect(held).toMatch(/^held {2}→ +•$/);
});
