import type { LoadStrip } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { stripPlot } from "../src/draws/index.ts";
import { createSvgInk, drawPlot, PALETTES, piled, plotSvg } from "../src/index.ts";

const strip: LoadStrip = {
  whatIf: 0,
  loads: [3000, 3020, 3040, 3500, 4100],
  drawn: true,
  demand: 4200,
  interval: [4000, 4500],
  strength5: 9000,
};
const measure = (text: string) => 7 * text.length;

describe("dots along an axis", () => {
  it("are piled up where they would lie on one another, on the lowest level that is free", () => {
    expect(piled([10, 12, 15, 21, 22, 40], 10)).toEqual([0, 1, 2, 0, 1, 0]);
  });
});

describe("a strip of loads", () => {
  const plot = stripPlot(strip, "Leash: the loads behind E", "A rig");

  it("has a dot for each run at its load, and E and R where they lie", () => {
    expect(plot.marks.map(({ kind, at }) => [kind, at[0]])).toEqual(
      [3, 3.02, 3.04, 3.5, 4.1].map((load) => ["run", load]),
    );
    expect(plot.rules.map(({ x, label }) => [x, label])).toEqual([
      [4.2, "E 4.20 kN"],
      [9, "R 9.00 kN"],
    ]);
    expect(plot.x.to).toBeGreaterThan(9);
    expect(plot.bands[0]!.map(([x]) => x)).toEqual([4, 4, 4.5, 4.5]);
  });

  it("piles dots up within its height, and draws every one of them", () => {
    const many = { ...strip, loads: Array.from({ length: 48 }, (_, i) => 3000 + i) };
    const piledUp = stripPlot(many, "Leash", "A rig");
    for (const { at } of piledUp.marks) expect(at[1]).toBeLessThan(piledUp.y.to);
    const ink = createSvgInk(measure, "s");
    drawPlot(ink, piledUp, 400, PALETTES.light);
    expect(ink.document(400, 500, "").split(PALETTES.light.accent).length - 1).toBeGreaterThanOrEqual(48);
  });

  it("says in words what the dots show, and which of them lie above R", () => {
    expect(plot.notes.join(" ")).toContain("5 falls of this what-if");
    expect(plot.notes.join(" ")).toContain("3.00 kN to 4.10 kN, half of them up to 3.04 kN");
    const over = stripPlot({ ...strip, strength5: 3400 }, "Leash", "A rig");
    expect(over.notes.join(" ")).toContain("2 of them lie above R");
    expect(plotSvg(plot, 400, PALETTES.dark, measure, "s")).toContain("5 falls of this what-if");
  });

  it("keeps its dots apart from an R that lies far off, which is told instead", () => {
    const far = stripPlot({ ...strip, strength5: 60_000 }, "Ring", "A rig");
    expect(far.x.to).toBeLessThan(6);
    expect(far.rules).toHaveLength(1);
    expect(far.notes.join(" ")).toContain("R 60.0 kN lies far to the right");
  });

  it("says of one run that nothing was drawn, and of a pull which limit comes next", () => {
    const { strength5: _, ...pull } = { ...strip, loads: [3100], drawn: false };
    const single = stripPlot(pull, "Pull", "A rig", [6000, 8000]);
    expect(single.notes.join(" ")).toContain("What scatters was not drawn");
    expect(single.rules.map(({ label }) => label)).toEqual(["E 4.20 kN", "limit 6.00 kN"]);
  });
});
