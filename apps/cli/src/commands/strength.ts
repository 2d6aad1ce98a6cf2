/** `strength`: what break tests say a part still holds. */
import { analyseBreakLog, type BreakLogReport, type GroupReport } from "@secondline/strength";
import { quantity, englishWords as words } from "@secondline/words";
import { readBreakLogFile } from "../breakLogFile.ts";
import { dotPlot } from "../dotPlot.ts";
import { jsonText } from "../jsonText.ts";
import { table } from "../table.ts";
import { bold, dim, print, width } from "../terminal.ts";
import { bullets, wrap, wrapHanging } from "../wrap.ts";

export function strength(file: string, options: { readonly json?: boolean }): void {
  const tests = readBreakLogFile(file);
  const invented = tests.some((test) => test.invented);
  const general = words.generalCautions();
  const cautions = invented ? [INVENTED, ...general] : general;
  const report = analyseBreakLog(tests);
  print(options.json ? jsonText({ invented, ...report, cautions }) : reportText(report, cautions));
}

const INVENTED = "Invented tests: nothing in this log was ever pulled, and nothing it says holds for any real part.";

function reportText({ groups, testNext }: BreakLogReport, cautions: readonly string[]): string {
  const next = testNext
    ? [
        wrap(
          `Test next: ${testNext.label}. One more test like those at hand would raise its 5 % value by about ${quantity.strength(testNext.gain)} (${quantity.percent(testNext.share, "down")}).`,
          width,
        ),
        "",
      ]
    : [];
  return [...groups.flatMap((group) => [groupText(group), ""]), ...next, ...bullets(cautions, width)].join("\n");
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
        { head: "What nineteen of twenty such parts hold" },
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
      "by EN 1990, Annex D",
      quantity.strengthIn(en1990.value),
      `mean − ${en1990.factor.toFixed(2)} × deviation`,
    ]);
  return rows;
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
