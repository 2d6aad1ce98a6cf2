/**
 * The sheet of a teardown, to print on A4: a table of pieces, a drawing of every webbing with its cuts, labels to cut out, and
 * columns for the results of the machine. One self-contained page; everything that comes from a document is escaped.
 */

import { type Rig, visibleText } from "@secondline/rig";
import type { Piece, Teardown, TeardownWebbing } from "@secondline/strength";
import { createWords, english, type Language, quantity, type Words } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { sayLaterIn } from "@secondline/words/later";
import { createTeardownWords, type TeardownWords } from "@secondline/words/teardown";
import { escapeHtml, type Html, listOf, raw, tableOf, tag } from "./html.ts";
import { styleOf } from "./style.ts";

type SheetWords = Words & TeardownWords;

const STYLE = `
.labels { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0; }
.label { border: 0.2mm dashed var(--soft); padding: 2.5mm 3mm; min-height: 26mm; break-inside: avoid; font-size: 8pt; overflow-wrap: anywhere; }
.label b { font-size: 15pt; display: block; line-height: 1.2; }
table.pieces td:nth-child(n + 7) { border: 0.25mm solid var(--soft); min-width: 15mm; }
table.pieces th:nth-child(n + 7) { padding-left: 1mm; }
`;

export interface SheetExtras {
  readonly language?: Language;
}

/** The whole sheet as HTML that needs nothing else. `rig`: as written, for the names of its parts. */
export function teardownSheet(rig: Rig, plan: Teardown, { language = english }: SheetExtras = {}): string {
  const words: SheetWords = { ...createWords(language), ...createTeardownWords(language) };
  const { say } = words;
  const title = say("teardown.sheetTitle", { name: plan.rig });
  const pageOf = sayLaterIn(language)("report.pageOf", { page: "{page}", pages: "{pages}" });
  const head = say("teardown.title", {
    name: plan.rig,
    on: dayText(plan.on),
    pieces: plan.pieces.length,
    pulls: plan.pulls,
  });
  const wanted = words.teardownWanted(rig, plan);
  const cannot = words.teardownCannot(rig, plan);
  const body: readonly Html[] = [
    tag("h1", title),
    tag("p", head),
    ...(plan.invented ? [tag("p", say("teardown.invented"))] : []),
    listOf(plan.bands.map((band) => words.teardownBand(rig, band))),
    tag("h2", say("teardown.section.pieces")),
    pieceTable(words, rig, plan),
    tag("p", words.teardownOutcomes(), { class: "soft" }),
    ...(wanted === undefined ? [] : [tag("p", wanted)]),
    ...(cannot.length === 0 ? [] : [tag("p", `${say("teardown.cannotHead")}:`), listOf(cannot)]),
    tag("h2", say("teardown.section.cuts")),
    ...plan.webbings.map((webbing) => webbingDrawing(words, plan, webbing)),
    tag("h2", say("teardown.section.labels")),
    tag(
      "div",
      plan.pieces.map((piece) => label(words, rig, plan, piece)),
      { class: "labels" },
    ),
    tag("section", [tag("h2", say("teardown.section.assumed")), listOf(words.teardownAssumed(plan))], {
      class: "cautions all",
    }),
    tag("section", [listOf(words.generalCautions())], { class: "cautions all" }),
  ];
  return `<!doctype html>\n<html lang="${escapeHtml(language.code)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${escapeHtml(title)}</title><style>${styleOf(title, pageOf)}${STYLE}</style></head>\n<body>${body.map((one) => one.html).join("\n")}</body></html>\n`;
}

function pieceTable(words: SheetWords, rig: Rig, plan: Teardown): Html {
  const { say } = words;
  const heads = (["piece", "what", "where", "length", "state", "teaches", "outcome", "result", "broke"] as const).map(
    (name) => say(`teardown.head.${name}`),
  );
  const rows = plan.pieces.map((piece) => {
    const { id, what, where, length, state, teaches } = words.teardownPiece(rig, plan, piece);
    return [tag("b", id), what, where, length, state, teaches, "", "", ""];
  });
  return tableOf("", heads, rows, [3], "pieces");
}

function label(words: SheetWords, rig: Rig, plan: Teardown, piece: Piece): Html {
  const { id, what, where, state } = words.teardownPiece(rig, plan, piece);
  return tag("div", [tag("b", id), what, raw("<br>"), where, raw("<br>"), state], { class: "label" });
}

/** Places on the drawing. */
const WIDTH = 640;
const MARGIN = 14;
const BAND_HEIGHT = 18;
const BAND_TOP = 30;
const HEIGHT = 86;
const MARK_COLOURS = { clampMark: "#b23c00", fallZone: "#8a5a00", stitching: "#0072b2" } as const;
const DAMAGE_COLOUR = "#5b2a86";

/** A webbing from its marked end: its marks and its cuts. Numbers of neighbours stand on two levels. */
function webbingDrawing(words: SheetWords, plan: Teardown, webbing: TeardownWebbing): Html {
  const { say } = words;
  const length = webbing.to - webbing.from;
  const x = (metre: number) => MARGIN + ((metre - webbing.from) / length) * (WIDTH - 2 * MARGIN);
  const rect = (from: number, to: number, y: number, height: number, paint: string) =>
    `<rect x="${x(from).toFixed(1)}" y="${y}" width="${Math.max(0.8, x(to) - x(from)).toFixed(1)}" height="${height}" ${paint}/>`;
  const marks = webbing.marks
    .map(({ kind, from, to }) => {
      const colour = kind in MARK_COLOURS ? MARK_COLOURS[kind as keyof typeof MARK_COLOURS] : DAMAGE_COLOUR;
      return rect(from, to, BAND_TOP + BAND_HEIGHT + 3, 5, `fill="${colour}"`);
    })
    .join("");
  const cuts = plan.pieces
    .flatMap(({ id, cuts: of }) => of.filter((cut) => cut.webbing === webbing.id).map((cut) => ({ id, ...cut })))
    .sort((a, b) => a.from - b.from)
    .map(
      ({ id, from, to }, i) =>
        rect(from, to, BAND_TOP, BAND_HEIGHT, 'fill="#dfeaec" stroke="#0b5d6b" stroke-width="0.8"') +
        `<text x="${((x(from) + x(to)) / 2).toFixed(1)}" y="${BAND_TOP - 4 - 10 * (i % 2)}" text-anchor="middle">${escapeHtml(id)}</text>`,
    )
    .join("");
  const ticks = ticksOf(webbing.from, webbing.to)
    .map(
      (metre) =>
        `<path d="M${x(metre).toFixed(1)} ${HEIGHT - 22}v5" stroke="#1d2226" stroke-width="0.6"/><text x="${x(metre).toFixed(1)}" y="${HEIGHT - 6}" text-anchor="middle">${quantity.along(metre)}</text>`,
    )
    .join("");
  const [spanFrom, spanTo] = webbing.span;
  const title = say("teardown.drawing", {
    name: visibleText(webbing.name),
    line: say(`line.${webbing.line}`),
    mark: visibleText(webbing.mark),
  });
  const svg =
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeHtml(title)}">` +
    rect(webbing.from, webbing.to, BAND_TOP + 4, BAND_HEIGHT - 8, 'fill="none" stroke="#1d2226" stroke-width="0.6"') +
    rect(spanFrom, spanTo, BAND_TOP + BAND_HEIGHT / 2 - 0.6, 1.2, 'fill="#1d2226"') +
    `${cuts}${marks}${ticks}</svg>`;
  return tag("figure", [raw(svg), tag("figcaption", title)]);
}

function ticksOf(from: number, to: number): number[] {
  const step = [1, 2, 5, 10, 20, 50, 100, 200].find((one) => (to - from) / one <= 12) ?? 500;
  const first = Math.ceil(from / step) * step;
  return Array.from({ length: Math.floor((to - first) / step + 1e-9) + 1 }, (_, i) => first + i * step);
}
