/** `strength`: the strength of parts by break tests. */
import { basename } from "node:path";
import {
  analyseBreakLog,
  type BestTest,
  type BreakLogReport,
  type GroupReport,
  type StockComparison,
} from "@secondline/strength";
import { broughtIn, quantity, stockName, englishWords as words } from "@secondline/words";
import { englishBreakLogWords as breakLogWords, groupTitle } from "@secondline/words/breakLog";
import { tellNote } from "@secondline/words/notes";
import { sayOptions } from "@secondline/words/terminal/options";
import { sayStrength } from "@secondline/words/terminal/strength";
import { type FigureOptions, figureFiles, writeFigures } from "../breakLogFigures.ts";
import { readBreakLogFile } from "../breakLogFile.ts";
import { dotPlot } from "../dotPlot.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { table } from "../table.ts";
import { bold, dim, print, width } from "../terminal.ts";
import { bullets, wrap, wrapHanging } from "../wrap.ts";

export interface StrengthOptions extends FigureOptions {
  readonly json?: boolean;
  /** Share of parts that reach the value, in percent: 95 or 90. */
  readonly content?: string;
  /** A saved matching of the file's own columns. */
  readonly columns?: string;
}

export function strength(file: string, options: StrengthOptions): void {
  const content = contentOf(options.content);
  const files = figureFiles(file, options);
  const tests = readBreakLogFile(file, options.columns);
  const invented = tests.some((test) => test.invented);
  const general = words.generalCautions();
  const cautions = invented ? [sayStrength("caution.invented"), ...general] : general;
  const report = analyseBreakLog(tests, { content });
  print(
    options.json ? jsonText({ invented, ...report, cautions }, sayStrength("anyNumber")) : reportText(report, cautions),
  );
  writeFigures(files, { name: basename(file), tests, report, cautions });
}

const CONTENT_PERCENTS = ["95", "90"] as const;

function contentOf(text: string | undefined): number {
  const written = text ?? CONTENT_PERCENTS[0];
  if (CONTENT_PERCENTS.some((one) => one === written)) return Number(written) / 100;
  const [first, second] = CONTENT_PERCENTS;
  throw new CommandFailure(EXIT.input, [sayOptions("content.refused", { got: written, first, second })]);
}

function reportText({ groups, testNext, comparisons }: BreakLogReport, cautions: readonly string[]): string {
  const group = groups.find(({ label }) => label === testNext?.label);
  const next = testNext ? [wrap(breakLogWords.testNext(testNext, group?.tests[0]), width), ""] : [];
  return [
    ...groups.flatMap((group) => [groupText(group), ""]),
    ...comparisons.flatMap((comparison) => [comparisonText(comparison), ""]),
    ...next,
    ...bullets(cautions, width),
  ].join("\n");
}

function groupText(group: GroupReport): string {
  const nineOfTen = group.characteristic.at75.content === 0.9;
  return [
    bold(sayStrength("group.head", { label: groupTitle(group.tests[0]!), count: group.tests.length })),
    dotPlot(group.tests, Math.min(width, 80)),
    ...group.doubts.map(({ message }) => wrapHanging(`! ${tellNote(message)}`, width, "  ")),
    "",
    table(
      [
        { head: sayStrength(nineOfTen ? "holds.nineOfTen" : "holds.nineteenOfTwenty") },
        { head: "kN", align: "right" },
        { head: sayStrength("holds.how"), flexible: true },
      ],
      answers(group),
      width,
    ),
    ...spreadLine(group),
  ].join("\n");
}

function answers({ characteristic, en1990 }: GroupReport): string[][] {
  const { at75, at95 } = characteristic;
  const rows = [
    [sayStrength("holds.confidence75"), quantity.strengthIn(at75.value), broughtIn(at75.method)],
    [sayStrength("holds.confidence95"), quantity.strengthIn(at95.value), broughtIn(at95.method)],
  ];
  if (en1990)
    rows.push([
      sayStrength("holds.en1990"),
      quantity.strengthIn(en1990.value),
      sayStrength("holds.en1990How", { factor: quantity.rounded(en1990.factor, 2, "up") }),
    ]);
  return rows;
}

/** The built-in model against the tests, state by state; contradictions come first. */
function comparisonText({ stock, rated, states }: StockComparison): string {
  const loud = states.filter(({ finding }) => finding !== "agrees");
  const rows = states.map((one) => [
    broughtIn(one.state),
    String(one.testCount),
    heldText(one),
    builtInText(one),
    quantity.strengthIn(one.counts),
    quantity.strengthIn(one.counts5),
  ]);
  return [
    bold(sayStrength("states.head", { stock: stockName(stock.name), rated: quantity.strength(rated) })),
    ...loud.map(({ state, message }) =>
      loudLine(sayStrength("states.finding", { state: broughtIn(state), finding: tellNote(message) })),
    ),
    ...states.flatMap(({ state, bestTest }) =>
      bestTest === undefined ? [] : [loudLine(bestTestText(state, bestTest))],
    ),
    table(
      [
        { head: sayStrength("states.state"), flexible: true },
        { head: sayStrength("states.tests"), align: "right" },
        { head: sayStrength("states.held"), align: "right" },
        { head: sayStrength("states.builtIn"), align: "right" },
        { head: sayStrength("states.counts"), align: "right" },
        { head: "5 %", align: "right" },
      ],
      rows,
      width,
    ),
  ].join("\n");
}

/** A value that is only expected beyond a bound is not told as measured. */
function heldText({ held, tested }: StockComparison["states"][number]): string {
  switch (held.kind) {
    case "loads":
      return quantity.strengthIn(tested);
    case "atLeast":
      return sayStrength("states.atLeast", { load: quantity.strengthIn(held.load) });
    case "atMost":
      return sayStrength("states.atMost", { load: quantity.loadIn(held.load) });
    case "mixed":
      return sayStrength("states.bounded", { load: quantity.strengthIn(tested) });
  }
}

/** A lower test must not look like good news without a word. */
function bestTestText(state: string, { test: { line }, next, costs }: BestTest): string {
  const values = {
    state: broughtIn(state),
    next: quantity.strength(next),
    costs: quantity.percent(costs, "up"),
  };
  if (line === undefined) return sayStrength("states.bestTest", values);
  return sayStrength("states.bestTestOnLine", { ...values, line });
}

function builtInText({ builtIn, builtInBand }: StockComparison["states"][number]): string {
  const [low, high] = builtInBand.map(quantity.strengthIn);
  return sayStrength("states.builtInBand", { value: quantity.strengthIn(builtIn), low: low!, high: high! });
}

const loudLine = (text: string) => wrapHanging(`! ${text}`, width, "  ");

function spreadLine({ mean, deviation, best, families }: GroupReport): string[] {
  if (mean === undefined) return [];
  const fitted = families.find((one) => one.fit.family === best);
  const key = deviation === undefined ? (fitted ? "fit" : "mean") : fitted ? "scatterFit" : "scatter";
  const scatter =
    deviation === undefined
      ? {}
      : { deviation: quantity.load(deviation), share: quantity.percent(deviation / mean, "up") };
  const fit = fitted ? { family: broughtIn(fitted.fit.family), ...fivePercentOf(fitted) } : {};
  return [dim(wrap(sayStrength(`spread.${key}`, { mean: quantity.strength(mean), ...scatter, ...fit }), width))];
}

function fivePercentOf({ fivePercent }: GroupReport["families"][number]) {
  const [low, value, high] = fivePercent.map(quantity.strengthIn);
  return { low: low!, value: value!, high: high! };
}
