/** Layouts side by side for a terminal, and as data. */
import type { Rig } from "@secondline/rig";
import { type Comparison, type ComparisonRow, frontier, type Outcome } from "@secondline/scenarios";
import { listed, quantity, englishWords as words } from "@secondline/words";
import { englishCompareWords as compareWords } from "@secondline/words/compare";
import { say } from "./say.ts";
import { type Cell, type TableColumn, table } from "./table.ts";
import { bold, dim, VERDICT_COLOUR, VERDICT_MARK, width } from "./terminal.ts";
import { bullets, wrap, wrapHanging } from "./wrap.ts";

export interface Compared {
  readonly rig: Rig;
  readonly outcome: Outcome;
  /** A wear record was given that does not name this rig. */
  readonly withoutWear: boolean;
}

const letter = (layout: number): string => String.fromCharCode(65 + layout);

/** Sentences on one layout, beside its figures. */
function layoutSentences({ rig, outcome, withoutWear }: Compared) {
  return {
    sentence: words.verdict(rig, outcome),
    singles: words.singles(rig, outcome),
    taken: [
      words.taken(rig, outcome),
      ...(withoutWear ? [compareWords.say("compare.noWear", { name: outcome.rigName })] : []),
    ].join(" "),
    required: compareWords.say("compare.required", {
      expected: quantity.required(outcome.required.expected),
      afterFailure: quantity.required(outcome.required.afterFailure),
    }),
    bases: compareWords.say("compare.bases", { list: listed(outcome.weakestBases.map(words.basis), "semicolon") }),
    cautions: words.cautions(rig, outcome.cautions),
  };
}

/** Cautions that all layouts share, and those of each besides. */
function sharedCautions(all: readonly (readonly string[])[]) {
  const common = all[0]!.filter((text) => all.every((list) => list.includes(text)));
  return { common, own: all.map((list) => list.filter((text) => !common.includes(text))) };
}

export function comparisonData(layouts: readonly Compared[], comparison: Comparison) {
  const each = layouts.map(layoutSentences);
  const cautions = sharedCautions(each.map((one) => one.cautions));
  return {
    ...comparison,
    frontier: frontier(layouts),
    layouts: layouts.map(({ outcome }, i) => ({
      name: outcome.rigName,
      verdict: outcome.verdict,
      complete: outcome.search.complete,
      required: outcome.required,
      taken: outcome.taken,
      singles: outcome.singles.filter(({ single }) => single).map(({ part }) => part),
      weakestBases: outcome.weakestBases,
      sentence: each[i]!.sentence,
      words: { taken: each[i]!.taken, singles: each[i]!.singles },
      ownCautions: cautions.own[i]!,
    })),
    cautions: cautions.common,
  };
}

export function comparisonText(layouts: readonly Compared[], comparison: Comparison): string {
  const each = layouts.map(layoutSentences);
  const cautions = sharedCautions(each.map((one) => one.cautions));
  return [
    ...layouts.flatMap((layout, i) => [...headLines(layout, i, each[i]!), ""]),
    figures(layouts, comparison),
    dim(wrap(say("caption.compare", { mark: MARGIN_MARKS }), width)),
    ...(comparison.rows.some(({ bounds }) => bounds) ? [dim(wrap(say("caption.compareFailing"), width))] : []),
    "",
    `${compareWords.sayFrontier("frontier.title")}:`,
    ...bullets(frontierLines(layouts), width),
    dim(wrap(compareWords.sayFrontier("frontier.how"), width)),
    "",
    `${say("head.commonCautions")}:`,
    ...bullets(cautions.common, width),
    ...cautions.own.flatMap((list, i) =>
      list.length === 0 ? [] : ["", `${say("head.ownCautions", { layout: letter(i) })}:`, ...bullets(list, width)],
    ),
  ].join("\n");
}

/** The layouts that none beats, the ones that beat each other layout, then the three numbers of each. */
function frontierLines(layouts: readonly Compared[]): readonly string[] {
  const found = frontier(layouts);
  const letters = layouts.map((_, i) => letter(i));
  return [
    ...compareWords.frontierSentences(found, letters),
    ...found.flatMap(({ at }, i) => (at ? [compareWords.frontierNumbers(letters[i]!, at)] : [])),
  ];
}

const INDENT = "   ";
const MARGIN_MARKS = [VERDICT_MARK.holds, VERDICT_MARK.thin, VERDICT_MARK.fails, VERDICT_MARK.open].join(" ");

function headLines({ outcome }: Compared, layout: number, one: ReturnType<typeof layoutSentences>): string[] {
  const hang = (text: string) => INDENT + wrapHanging(text, width - INDENT.length, INDENT);
  const mark = `${VERDICT_MARK[outcome.verdict]} ${one.sentence} ${one.singles}`;
  return [
    bold(wrapHanging(`${letter(layout)}  ${outcome.rigName}`, width, INDENT)),
    VERDICT_COLOUR[outcome.verdict](hang(mark)),
    hang(`${one.required} ${one.taken}`),
    dim(hang(one.bases)),
  ];
}

function figures(layouts: readonly Compared[], { rows }: Comparison): string {
  const outcomes = layouts.map(({ outcome }) => outcome);
  const { rig } = layouts[0]!;
  const body = rows.map((row): Cell[] => [
    compareWords.compareLabel(rig, row),
    ...outcomes.map((_, i) => cell(row, i)),
    difference(row),
  ]);
  const columns: TableColumn[] = [
    { head: say("table.layout"), flexible: true },
    ...outcomes.map(({ verdict }, i) => ({ head: `${letter(i)} ${VERDICT_MARK[verdict]}`, align: "right" as const })),
    { head: say("table.differ"), align: "right" },
  ];
  return table(columns, body, width);
}

/** A figure; a margin with the mark of the part's standing in its layout. */
function cell(row: ComparisonRow, layout: number): Cell {
  const text = compareWords.compareValue(row, layout);
  const verdict = row.verdicts?.[layout];
  if (verdict === undefined || verdict === "notLoaded") return text;
  return { text: `${text} ${VERDICT_MARK[verdict]}`, paint: VERDICT_COLOUR[verdict] };
}

const difference = ({ spread }: ComparisonRow): string =>
  spread === undefined || spread < 0.005 ? "" : quantity.percent(spread);
