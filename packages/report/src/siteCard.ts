/**
 * The site card: one page to hang at the line, the same on a phone. Pure: the same input gives the same text, and every
 * sentence comes from the words package. A saved card that is opened after its last day shows that it has lapsed; a printed one
 * has that day on it.
 */
import type { Assessed, Outcome, SiteCard } from "@secondline/scenarios";
import { english, type Language } from "@secondline/words";
import { type CardRow, type CardText, createCardWords, unbrokenDays } from "@secondline/words/card";
import { sayLaterIn } from "@secondline/words/later";
import { CARD_STYLE } from "./cardStyle.ts";
import { elevation } from "./elevation.ts";
import { escapeHtml, type Html, listOf, raw, tag } from "./html.ts";

export interface SiteCardExtras {
  /** The day of making, YYYY-MM-DD; the card itself has no clock. */
  readonly date: string;
  readonly language?: Language;
}

/** The whole card as HTML that needs nothing else. `assessed`, `outcome`: the inputs from which `card` was made. */
export function siteCardPage(
  { rig }: Assessed,
  outcome: Outcome,
  card: SiteCard,
  { date, language = english }: SiteCardExtras,
): string {
  const cardWords = createCardWords(language);
  const text = cardWords.card({ rig, outcome, card, made: date });
  const body: readonly Html[] = [
    tag("h1", text.title),
    status(text),
    ...mustDo(text),
    tag("dl", text.rows.map(rowOf)),
    tag("figure", elevation({ words: { say: sayLaterIn(language) }, rig, outcome })),
    tag("div", [section(text.lapse), section(text.cautions)], { class: "below" }),
    tag("footer", [
      tag("p", unbrokenDays(`${text.foot.state} ${text.foot.made}`)),
      tag("p", [`${text.foot.hashName}: `, tag("code", text.foot.hash)]),
    ]),
  ];
  const title = escapeHtml(text.title);
  return `<!doctype html>\n<html lang="${escapeHtml(language.code)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title><style>${CARD_STYLE}</style></head>\n<body>${body.map(({ html }) => html).join("\n")}${overScript(text)}</body></html>\n`;
}

const PERMISSION_MARK: Readonly<Record<CardText["permission"], string>> = { given: "●", none: "✕", lapsed: "▲" };

function status({ permission, word, says, late }: CardText): Html {
  const band = (mark: CardText["permission"], head: string, sentence: string, kind: string) =>
    tag(
      "section",
      [
        tag("h2", `${PERMISSION_MARK[mark]} ${head}`, { class: "word" }),
        tag("p", unbrokenDays(sentence), { class: "says" }),
      ],
      {
        class: `status ${mark} ${kind}`,
      },
    );
  return tag("div", [
    band(permission, word, says, "inTime"),
    ...(late ? [band("lapsed", late.word, late.says, "over")] : []),
  ]);
}

const mustDo = ({ must }: CardText): readonly Html[] =>
  must.items.length === 0
    ? []
    : [tag("section", [tag("h2", must.head), listOf(must.items.map(unbrokenDays))], { class: "must" })];

const section = ({ head, items }: CardText["lapse"]): Html =>
  tag("section", [tag("h2", head), listOf(items.map(unbrokenDays))]);

const COLUMN_WIDTH: Readonly<Record<CardRow["kind"], string>> = {
  walker: "third",
  persons: "third",
  falls: "third",
  until: "half",
  inspection: "half",
  leash: "wide",
  singles: "wide",
  unfollowed: "wide small",
};

const rowOf = ({ kind, name, value, note }: CardRow): Html =>
  tag(
    "div",
    [
      tag("dt", name),
      tag("dd", [
        tag("p", unbrokenDays(value), { class: "value" }),
        ...(note === undefined ? [] : [tag("p", note, { class: "note" })]),
      ]),
    ],
    { class: COLUMN_WIDTH[kind] },
  );

/** Compares two days as texts YYYY-MM-DD, by the reader's clock. */
const overScript = ({ late }: CardText): string =>
  late === undefined
    ? ""
    : raw(
        `<script>{const d=new Date(),two=(n)=>String(n).padStart(2,"0");if(d.getFullYear()+"-"+two(d.getMonth()+1)+"-"+two(d.getDate())>"${late.day}")document.documentElement.className="isOver"}</script>`,
      ).html;
