/** `strength`: what break tests say a part still holds. */
import { basename } from "node:path";
import {
  analyseBreakLog,
  type BestTest,
  type BreakLogReport,
  type GroupReport,
  type StockComparison,
} from "@secondline/strength";
import { quantity, englishWords as words } from "@secondline/words";
import { englishBreakLogWords as breakLogWords } from "@secondline/words/breakLog";
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
  const cautions = invented ? [INVENTED_CAUTION, ...general] : general;
  const report = analyseBreakLog(tests, { content });
  print(options.json ? jsonText({ invented, ...report, cautions }, "any number") : reportText(report, cautions));
  writeFigures(files, { name: basename(file), tests, report, cautions });
}

const INVENTED_CAUTION =
  "Invented tests: nothing in this log was ever pulled, and nothing it says holds for any real part.";

const CONTENT_PERCENTS = ["95", "90"] as const;

function contentOf(text: string | undefined): number {
  const written = text ?? CONTENT_PERCENTS[0];
  if (CONTENT_PERCENTS.some((one) => one === written)) return Number(written) / 100;
  throw new CommandFailure(EXIT.input, [
    `--content: "${written}" is neither ${CONTENT_PERCENTS.join(" nor ")} (percent of parts)`,
  ]);
}

function reportText({ groups, testNext, comparisons }: BreakLogReport, cautions: readonly string[]): string {
  const next = testNext ? [wrap(breakLogWords.testNext(testNext), width), ""] : [];
  return [
    ...groups.flatMap((group) => [groupText(group), ""]),
    ...comparisons.flatMap((comparison) => [comparisonText(comparison), ""]),
    ...next,
    ...bullets(cautions, width),
  ].join("\n");
}

function groupText(group: GroupReport): string {
  const count = group.tests.length === 1 ? "1 test" : `${group.tests.length} tests`;
  return [
    bold(`${group.label}: ${count}`),
    dotPlot(group.tests, Math.min(width, 80)),
    ...group.doubts.map(({ message }) => wrapHanging(`! ${message}`, width, "  ")),
    "",
    table(
      [
        {
          head: `What ${group.characteristic.at75.content === 0.9 ? "nine of ten" : "nineteen of twenty"} such parts hold`,
        },
        { head: "kN", align: "right" },
        { head: "how", flexible: true },
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
    ["with 75 % confidence", quantity.strengthIn(at75.value), at75.method],
    ["with 95 % confidence", quantity.strengthIn(at95.value), at95.method],
  ];
  if (en1990)
    rows.push([
      "by EN 1990, Annex D, 19 of 20",
      quantity.strengthIn(en1990.value),
      `mean − ${en1990.factor.toFixed(2)} × deviation`,
    ]);
  return rows;
}

/** The built-in model against the tests, state by state; what contradicts it is said first. */
function comparisonText({ stock, rated, states }: StockComparison): string {
  const loud = states.filter(({ finding }) => finding !== "agrees");
  const rows = states.map((one) => [
    one.state,
    String(one.testCount),
    quantity.strengthIn(one.tested),
    `${quantity.strengthIn(one.builtIn)} (${one.builtInBand.map(quantity.strengthIn).join(" to ")})`,
    quantity.strengthIn(one.counts),
    quantity.strengthIn(one.counts5),
  ]);
  return [
    bold(`${stock.name}, rated ${quantity.strength(rated)}: own tests against the built-in model`),
    ...loud.map(({ state, message }) => wrapHanging(`! ${state}: ${message}`, width, "  ")),
    ...states.flatMap(({ state, bestTest }) =>
      bestTest === undefined ? [] : [wrapHanging(`! ${state}: ${bestTestText(bestTest)}`, width, "  ")],
    ),
    table(
      [
        { head: "State", flexible: true },
        { head: "Tests", align: "right" },
        { head: "held, kN", align: "right" },
        { head: "built in (19 of 20 means)", align: "right" },
        { head: "counts as", align: "right" },
        { head: "5 %", align: "right" },
      ],
      rows,
      width,
    ),
  ].join("\n");
}

/** A lower test must not look like good news without a word. */
function bestTestText({ test, next, costs }: BestTest): string {
  const where = test.line === undefined ? "" : ` on line ${test.line}`;
  return `the best test${where} held more than the next one by so much that it is taken for scatter. Had it held ${quantity.strength(next)} too, the 5 % value would be ${quantity.percent(costs, "up")} higher. It counts as it is; ask why it held so much.`;
}

function spreadLine({ mean, deviation, best, families }: GroupReport): string[] {
  if (mean === undefined) return [];
  const scatter =
    deviation === undefined
      ? ""
      : `, deviation ${quantity.load(deviation)} (${quantity.percent(deviation / mean, "up")})`;
  const fitted = families.find((one) => one.fit.family === best);
  const fit = fitted
    ? `; best fit ${best}: 5 % value ${quantity.strengthIn(fitted.fivePercent[1])} kN (${quantity.strengthIn(fitted.fivePercent[0])} to ${quantity.strengthIn(fitted.fivePercent[2])} kN), a point of the curve and no bound`
    : "";
  return [dim(wrap(`Mean ${quantity.strength(mean)}${scatter}${fit}.`, width))];
}
