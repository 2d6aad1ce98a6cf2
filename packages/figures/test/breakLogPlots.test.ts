import { analyseBreakLog, type BreakTest, readBreakLog } from "@secondline/strength";
import { englishBreakLogWords as words } from "@secondline/words/breakLog";
import { describe, expect, it } from "vitest";
import { breakLogPlots, plotsCsv } from "../src/breakLog/index.ts";
import { PALETTES, type Plot, plotSvg, plotsBody, sheetSvg, textWidth } from "../src/index.ts";

const HEAD =
  "date,part,material,batch,state,wet,months_outside,sun_months,falls,clamped_months,outcome,result,result_to,unit\n";
const row = (state: string, sun: number | "", outcome: string, result: number | string, to = "", clamped = "") =>
  `2026-06-20,webbing,polyester-webbing-25,,${state},dry,,${sun},0,${clamped},${outcome},${result},${to},kN\n`;

function plotsOf(csv: string): readonly Plot[] {
  const reading = readBreakLog(csv);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return breakLogPlots(reading.tests, analyseBreakLog(reading.tests), words);
}

const news = [31.2, 30.1, 29.4, 30.8].map((load) => row("new", 0, "broke", load)).join("");
const log = `${HEAD}${news}${row("new", 0, "stopped", 27.5)}${row("used", 12, "broke", 23)}${row("used", 12, "broke", 22)}${row("used", 12, "broke between", 21, "24")}${row("clamp mark", 0, "broke", 19, "", "6")}`;
const plots = plotsOf(log);
const of = (figure: Plot["figure"]) => plots.filter((plot) => plot.figure === figure);

describe("on probability paper", () => {
  const fit = of("fit").find((plot) => plot.of.includes("new"))!;

  it("the fitted curve is a straight line", () => {
    const [{ points }] = fit.curves as [Plot["curves"][number]];
    const [a, b] = [points[0]!, points.at(-1)!];
    const slope = (b[1] - a[1]) / (b[0] - a[0]);
    for (const [x, y] of points) expect(y).toBeCloseTo(a[1] + slope * (x - a[0]), 9);
  });

  it("a survivor is marked as holding at least its load, and every test is there", () => {
    expect(fit.marks.filter(({ kind }) => kind === "atLeast")).toHaveLength(1);
    expect(fit.marks).toHaveLength(5);
    for (const { at } of fit.marks) {
      expect(at[1]).toBeGreaterThanOrEqual(fit.y.from);
      expect(at[1]).toBeLessThanOrEqual(fit.y.to);
      expect(at[0]).toBeGreaterThan(fit.x.from);
      expect(at[0]).toBeLessThan(fit.x.to);
    }
  });

  it("both bounds are named, below the tests, and their numbers are never rounded up", () => {
    expect(fit.rules.map(({ label }) => label)).toEqual([
      expect.stringMatching(/^95 % hold [\d.]+ kN, 95 % sure$/),
      expect.stringMatching(/^95 % hold [\d.]+ kN, 75 % sure$/),
    ]);
    const tests = analyseBreakLog(testsOf(log)).groups.find(({ key }) => key === fit.of)!;
    const written = fit.rows.filter(({ series }) => series.startsWith("bound")).map((one) => Number(one.strength_kN));
    const bounds = [tests.characteristic.at95.value, tests.characteristic.at75.value];
    written.forEach((kn, i) => {
      expect(1000 * kn).toBeLessThanOrEqual(bounds[i]!);
      expect(1000 * kn).toBeGreaterThan(bounds[i]! - 1.001);
    });
  });

  it("a sample without two different breaking loads has no curve, and says why", () => {
    const [only] = plotsOf(`${HEAD}${row("new", 0, "stopped", 30)}${row("new", 0, "stopped", 30)}`);
    expect(only!.curves).toEqual([]);
    expect(only!.notes.join(" ")).toMatch(/No curve: a fit needs at least two different breaking loads/);
    expect(only!.rules).toHaveLength(2);
  });
});

describe("residuals", () => {
  it("have a row for each state, with every test of it", () => {
    const [plot] = of("residuals");
    expect(plot!.texts.map(({ text }) => text)).toEqual([
      "new: 5 tests",
      "12 months of full sun: 3 tests",
      "clamp mark after 6 months in the clamp: 1 test",
    ]);
    expect(plot!.marks).toHaveLength(9);
  });

  it("are the strength of a test over the expected one", () => {
    const [plot] = of("residuals");
    const tests = plot!.rows.filter(({ series, strength_kN }) => series === "test" && strength_kN !== undefined);
    expect(tests.length).toBeGreaterThan(5);
    for (const { strength_kN, expected_kN, over_expected } of tests)
      expect(Number(over_expected)).toBeCloseTo(Number(strength_kN) / Number(expected_kN), 3);
  });
});

describe("retention", () => {
  it("is drawn for every wear that was tested alone, with new pieces where the curve begins with them", () => {
    expect(of("retention").map(({ title }) => title)).toEqual([
      "Polyester webbing 25 mm: strength over months of full sun (sun)",
      "Polyester webbing 25 mm: strength over months in the clamp (clamp mark)",
    ]);
    const [sun, clamp] = of("retention");
    expect(sun!.marks).toHaveLength(8);
    expect(sun!.marks.filter(({ kind }) => kind === "between")).toHaveLength(1);
    expect(clamp!.marks).toHaveLength(1);
  });

  it("has curves that never rise, and a 5 % value below its middle", () => {
    const table = of("retention")[0]!.rows.filter(({ series }) => series === "counts");
    for (let i = 1; i < table.length; i++) {
      expect(Number(table[i]!.strength_kN)).toBeLessThanOrEqual(Number(table[i - 1]!.strength_kN) + 1e-9);
      expect(Number(table[i]!.low_kN)).toBeLessThan(Number(table[i]!.strength_kN));
    }
  });
});

describe("files of plots", () => {
  const evil = log.replaceAll("used", '"used <script>&"" =2+2"');

  it("are well-formed drawings whatever the log says, and name no thing twice in one page", () => {
    for (const plot of plotsOf(evil)) {
      for (const width of [320, 860]) {
        const svg = plotSvg(plot, width, PALETTES.light, textWidth, `p${width}`);
        expect(svg).not.toMatch(/<script|NaN|Infinity|undefined/);
        expect(svg).toContain(`id="p${width}clip0"`);
      }
    }
  });

  it("carry their cautions on every sheet, in light and dark", () => {
    for (const palette of [PALETTES.light, PALETTES.dark]) {
      const picture = {
        words: { title: "Plots", lines: [], cautions: ["Do not rig from it."], foot: "foot" },
        palette,
        body: plotsBody(plots, 860, palette, textWidth),
      };
      const svg = sheetSvg(picture, textWidth);
      expect(svg).toContain("Do not rig from it.");
      expect(svg).toContain(palette.paper);
    }
  });

  it("have numbers as numbers and disarm cells that a spreadsheet would compute", () => {
    const injected = testsOf(log).map((test): BreakTest => ({ ...test, batch: "=cmd()", state: `+${test.state}` }));
    const csv = plotsCsv(breakLogPlots(injected, analyseBreakLog(injected), words), ["Invented.\n=1+1"]);
    expect(csv).toMatch(/^# Invented\. =1\+1\nfigure,of,series/);
    expect(csv).toContain("'=cmd()");
    expect(csv).not.toMatch(/(^|,)"?[=+@]/m);
    const cells = plotsCsv(plots, []).trim().split("\n")[1]!.split(",");
    expect(cells.length).toBeGreaterThan(10);
  });
});

function testsOf(csv: string): readonly BreakTest[] {
  const reading = readBreakLog(csv);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.tests;
}
