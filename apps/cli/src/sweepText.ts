/** A sweep for reading in a terminal, and as data. */
import type { Rig } from "@secondline/rig";
import { isApart, knobText, type Swept, type SweptPoint } from "@secondline/scenarios";
import { tellFault } from "@secondline/words/faults";
import { changeText, sweepWords as words } from "@secondline/words/sweep";
import { linePlot } from "./dotPlot.ts";
import { say as sayAll } from "./say.ts";
import { type TableColumn, table } from "./table.ts";
import { bold, dim, width } from "./terminal.ts";
import { bullets, wrap } from "./wrap.ts";

const { say } = words;
const rightColumn = (head: string): TableColumn => ({ head, align: "right" });

export function sweepData(rig: Rig, swept: Swept, taken: string): object {
  return {
    ...swept,
    taken,
    sentences: words.sentences(rig, swept),
    words: {
      head: words.head(rig, swept),
      notes: words.notes(rig, swept),
      cautions: words.cautions(rig, swept),
      events: swept.events.map(({ key, event }) => ({ key, title: words.eventTitle(rig, event) })),
      ...(swept.region ? { limit: words.limit(swept.what, swept.region.limit) } : {}),
    },
  };
}

export function sweepText(rig: Rig, swept: Swept, taken: string): string {
  const { knobs, bad } = swept;
  return [
    bold(swept.rigName),
    wrap(words.head(rig, swept), width),
    wrap(taken, width),
    "",
    ...(knobs.length > 1 ? mapLines(swept) : lineLines(rig, swept)),
    "",
    ...words.sentences(rig, swept).map((text) => bold(wrap(text, width))),
    ...words.notes(rig, swept).map((text) => wrap(text, width)),
    "",
    ...(bad.length > 0
      ? [
          `${say("bad.head")}:`,
          ...bullets(
            bad.map((one) => badText(one)),
            width,
          ),
          "",
        ]
      : []),
    `${say("drawn.head")}:`,
    ...bullets(
      [
        ...swept.events.map(({ key, event }) => say("drawn.event", { key, title: words.eventTitle(rig, event) })),
        say(swept.looked > swept.events.length ? "drawn.found" : "drawn.chosen", {
          drawn: swept.events.length,
          looked: swept.looked,
          draws: swept.draws,
          runs: swept.runs,
        }),
      ],
      width,
    ),
    "",
    `${sayAll("head.cautions")}:`,
    ...bullets(words.cautions(rig, swept), width),
  ].join("\n");
}

const badText = ({ change, issues }: Swept["bad"][number]) =>
  say("bad.point", { change: changeText(change), message: tellFault(issues[0]?.message ?? "") });

function lineLines(rig: Rig, swept: Swept): string[] {
  const knob = swept.knobs[0]!;
  return [
    pointTable(rig, swept),
    dim(wrap(say(isApart(knob) ? "caption.apart" : "caption.table"), width)),
    "",
    plot(swept),
    dim(say("caption.plot")),
  ];
}

function pointTable(rig: Rig, swept: Swept): string {
  const { what, knobs, points } = swept;
  const parts = points.some(({ curve }) => curve?.part !== undefined) && what.kind === "margin";
  const rows = points.map(({ values, curve, own, run, runs }) => [
    knobText(knobs[0]!, values[0]!),
    curve ? words.value(what, curve.value) : "–",
    curve ? words.band(what, curve) : "",
    own ? words.value(what, own.value) : "–",
    ...(parts ? [curve ? words.governs(rig, curve) : ""] : []),
    run?.whatIf ?? "",
    String(runs),
  ]);
  const columns = [
    rightColumn(knobs[0]!.name),
    rightColumn(say("table.value")),
    rightColumn(say("table.band")),
    rightColumn(say("table.own")),
    ...(parts ? [{ head: say("table.governs"), flexible: true }] : []),
    { head: say("table.event"), ...(parts ? {} : { flexible: true }) },
    rightColumn(say("table.runs")),
  ];
  return table(columns, rows, width);
}

/** Width of the labels at the left [letters]. */
const LABEL_COLUMNS = 14;
const WIDEST_PLOT = 80;

function plot({ points, knobs, what, limits }: Swept): string {
  const known = points.flatMap(({ curve }) => (curve ? [curve] : []));
  const lines = limits.map(({ limit }) => limit.value);
  const ends = [...known.flatMap(({ low, high }) => [low, high])];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const near = lines.filter((one) => one > least - (most - least) && one < most + (most - least));
  const [from, to] = [Math.min(least, ...near), Math.max(most, ...near)];
  const edge = 0.03 * (to - from || Math.abs(to) || 1);
  return linePlot({
    rows: points.map(({ values, curve }) => ({
      label: knobText(knobs[0]!, values[0]!),
      dots: curve ? [curve.value] : [],
      ...(curve ? { band: [curve.low, curve.high] as const } : {}),
    })),
    from: from - edge,
    to: to + edge,
    scale: [words.value(what, from - edge, "nearest"), words.value(what, to + edge, "nearest")],
    limits: lines,
    labelWidth: LABEL_COLUMNS,
    columns: Math.min(width, WIDEST_PLOT),
  });
}

/** These marks differ from those of verdicts, because none of them says that a rig holds. */
const STATE_MARKS = { keeps: "+", open: "?", below: "−" } as const;

/** Values of the first knob along the lines, of the second along the columns. */
function mapLines({ points, knobs, what, region }: Swept): string[] {
  const [first, second] = knobs as readonly [Swept["knobs"][number], Swept["knobs"][number]];
  const axis = (k: number) => [...new Set(points.map(({ values }) => values[k]!))].sort((a, b) => a - b);
  const find = (a: number, b: number) => points.findIndex(({ values }) => values[0] === a && values[1] === b);
  const cell = (index: number) => {
    const point: SweptPoint | undefined = points[index];
    if (!point?.curve) return "–";
    const state = region?.states[index];
    return `${words.value(what, point.curve.value)}${state ? ` ${STATE_MARKS[state]}` : ""}`;
  };
  const head = `${first.name} \\ ${second.name}`;
  const rows = axis(0).map((a) => [knobText(first, a), ...axis(1).map((b) => cell(find(a, b)))]);
  const outline = region?.outline.map(
    ({ at, kept }) =>
      `${words.knobValue(second, at, "nearest")}: ${words.stretches(first, kept) ?? say("region.none")}`,
  );
  return [
    table([rightColumn(head), ...axis(1).map((b) => rightColumn(knobText(second, b)))], rows, width),
    ...(region ? [dim(say("region.head", { limit: words.limit(what, region.limit) }))] : []),
    ...(outline
      ? [
          "",
          `${say("region.outline", { first: first.name, second: second.name })}:`,
          ...bullets(everyOther(outline), width),
        ]
      : []),
  ];
}

/** The data have all lines of an outline; the text needs a few. */
const MOST_LINES = 9;
const everyOther = (lines: readonly string[]): readonly string[] => {
  const step = Math.max(1, Math.ceil((lines.length - 1) / (MOST_LINES - 1)));
  return lines.filter((_, i) => i % step === 0);
};
