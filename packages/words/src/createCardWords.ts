/** Words of the site card, for paper, phone and terminal, in a file of their own because the first load does not need them. */

import { fieldAt, parseQuantity, type Rig } from "@secondline/rig";
import { type CautionFact, type Outcome, type Refusal, type SiteCard, VERSION } from "@secondline/scenarios";
import { CARD_ENGLISH, type CardKey } from "./cardEnglish.ts";
import { cautionTexts } from "./cautionWords.ts";
import { dayText } from "./dates.ts";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { listed } from "./lists.ts";
import { capital, partName } from "./partNames.ts";
import { height, length, massUpTo, required } from "./quantity.ts";
import { stockName } from "./stockNames.ts";
import { valueNames } from "./valueNames.ts";
import { lapseText, singlesText, verdictSentence } from "./verdictWords.ts";

export { unbrokenDays } from "./unbrokenDays.ts";

export const sayCard = (key: CardKey, values: Values = {}): string => filled(CARD_ENGLISH[key], values);

export interface CardRow {
  readonly kind: "walker" | "persons" | "falls" | "until" | "inspection" | "leash" | "singles" | "unfollowed";
  readonly name: string;
  readonly value: string;
  /** Basis of the value, or a remark on it. */
  readonly note?: string;
}

/** All texts of a card, in their order. */
export interface CardText {
  readonly title: string;
  readonly permission: SiteCard["permission"];
  /** "Holds", "No permission", "Lapsed". */
  readonly word: string;
  readonly says: string;
  /** The reason why there is no permission, and the remedy. */
  readonly must: { readonly head: string; readonly items: readonly string[] };
  readonly rows: readonly CardRow[];
  readonly lapse: { readonly head: string; readonly items: readonly string[] };
  readonly cautions: { readonly head: string; readonly items: readonly string[] };
  /** With permission: the last day, YYYY-MM-DD, and the text shown after it. */
  readonly late?: { readonly day: string; readonly word: string; readonly says: string };
  readonly foot: { readonly state: string; readonly made: string; readonly hashName: string; readonly hash: string };
}

export interface CardToSay {
  readonly rig: Rig;
  readonly outcome: Outcome;
  readonly card: SiteCard;
  /** The day of making, YYYY-MM-DD. */
  readonly made: string;
}

export type CardWords = ReturnType<typeof createCardWords>;

export function createCardWords(language: Language) {
  return { say: sayCard, card: (asked: CardToSay): CardText => cardText(language, asked) };
}

/** A card for an earlier day may have lapsed on the day of its making; `day`: YYYY-MM-DD. */
export const overOn = ({ late }: CardText, day: string): CardText["late"] =>
  late !== undefined && late.day < day ? late : undefined;

function cardText(language: Language, asked: CardToSay): CardText {
  const { rig, outcome, card, made } = asked;
  const until = card.allows?.until.day;
  return {
    title: sayCard("title", { name: card.rigName }),
    permission: card.permission,
    word: sayCard(`word.${card.permission}`),
    says: saysOf(card),
    must: { head: sayCard("must.head"), items: mustOf(language, asked) },
    rows: rowsOf(language, asked),
    lapse: { head: sayCard("lapse.head"), items: lapsesWhen(card) },
    cautions: {
      head: sayCard("caution.head"),
      items: [
        sayCard("caution.yours"),
        ...(card.allows ? lessAsked(rig) : []),
        ...cautionTexts(language, rig, ownCautions(outcome)),
      ],
    },
    ...(until === undefined
      ? {}
      : { late: { day: until, word: sayCard("word.lapsed"), says: sayCard("late.says", { day: dayText(until) }) } }),
    foot: {
      state: card.on === undefined ? sayCard("foot.noDay") : sayCard("foot.state", { on: dayText(card.on) }),
      made: sayCard("foot.made", { made: dayText(made), version: VERSION }),
      hashName: sayCard("foot.hash"),
      hash: card.hash,
    },
  };
}

/** Cautions that every card must have. */
const CARD_CAUTIONS: readonly CautionFact["kind"][] = [
  "general",
  "judged",
  "failedRuns",
  "partial",
  "slips",
  "coarse",
  "noBackup",
  "invented",
];
const ownCautions = ({ cautions }: Outcome) => cautions.filter(({ kind }) => CARD_CAUTIONS.includes(kind));

/** Requirements of a rig file that does not state any, in SI units. */
function usual(path: "requiredFactor" | "requiredAfterFailure" | "requiredClearance"): number {
  const field = fieldAt(path);
  const read = field?.kind === "quantity" ? parseQuantity(field.fallback, field.dimension) : undefined;
  if (!read?.ok) throw new Error(path);
  return read.value;
}

/** A rig that requires less than usual holds sooner, so the card tells its requirements. */
function lessAsked({ requiredFactor, requiredAfterFailure, requiredClearance }: Rig): readonly string[] {
  const [expected, afterFailure, clearance] = [
    usual("requiredFactor"),
    usual("requiredAfterFailure"),
    usual("requiredClearance"),
  ];
  const isLess =
    requiredFactor.value < expected || requiredAfterFailure < afterFailure || requiredClearance < clearance;
  if (!isLess) return [];
  const asked = {
    expected: required(requiredFactor.value),
    afterFailure: required(requiredAfterFailure),
    clearance: height(requiredClearance),
  };
  const instead = {
    usualExpected: required(expected),
    usualAfterFailure: required(afterFailure),
    usualClearance: height(clearance),
  };
  return [sayCard("caution.askedLess", { ...asked, ...instead })];
}

function saysOf({ permission, allows }: SiteCard): string {
  if (!allows) return sayCard(permission === "lapsed" ? "lapsed.says" : "none.says");
  const { walker, until, falls } = allows;
  return sayCard("given.says", { mass: massUpTo(walker.mass), day: dayText(until.day), falls: falls.left });
}

function mustOf(language: Language, { rig, outcome, card }: CardToSay): readonly string[] {
  const say = sayIn(language);
  // The lapse is the reason of a verdict without other reasons.
  const isOwn = ownReasons(outcome).length > 0;
  return [
    ...card.lapses.map((one) => lapseText(say, rig, one)),
    ...card.refusals
      .filter(({ kind }) => kind !== "verdict" || isOwn)
      .map((one) => refusalText(language, { rig, outcome, one })),
  ];
}

/** Reasons of the verdict that stand nowhere else on the card. */
const ownReasons = ({ reasons }: Outcome) => reasons.filter(({ kind }) => kind !== "lapsed" && kind !== "unconfirmed");

function refusalText(
  language: Language,
  { rig, outcome, one }: { readonly rig: Rig; readonly outcome: Outcome; readonly one: Refusal },
): string {
  switch (one.kind) {
    case "verdict":
      return `${verdictSentence(language, rig, { ...outcome, reasons: ownReasons(outcome) })} ${sayCard("must.verdict")}`;
    case "unconfirmed":
      return sayCard("must.unconfirmed", {
        count: one.paths.length,
        list: valueNames(sayIn(language), rig, one.paths),
      });
    case "noLine":
      return sayCard("must.noLine", {
        lines: listed(one.lines.map((line) => sayIn(language)(`line.${line}`))),
      });
    case "ahead":
      return sayCard("must.ahead", { day: dayText(one.day) });
    case "noRecord":
    case "noInspection":
    case "noDate":
    case "noFalls":
    case "noFallLeft":
      return sayCard(`must.${one.kind}`);
  }
}

function rowsOf(language: Language, { rig, card }: CardToSay): readonly CardRow[] {
  const say = sayIn(language);
  const { allows, nextInspection } = card;
  const row = (kind: CardRow["kind"], value: string, note?: string): CardRow => ({
    kind,
    name: sayCard(`row.${kind}`),
    value,
    ...(note === undefined ? {} : { note }),
  });
  return [
    // Without permission there is no number that might be read as one.
    ...(allows
      ? [
          row("walker", massUpTo(allows.walker.mass), walkerNote(card)),
          row("persons", sayCard("persons.one"), personsNote(card)),
          row("falls", fallsValue(card), sayCard(`falls.${allows.falls.ends}`)),
          row("until", dayText(allows.until.day), sayCard(`until.${allows.until.ends}`)),
        ]
      : []),
    row(
      "inspection",
      nextInspection === undefined ? sayCard("value.notKnown") : sayCard("value.by", { day: dayText(nextInspection) }),
    ),
    row("leash", leashText(rig), sayCard("leash.same")),
    row(
      "singles",
      card.singles.length === 0
        ? singlesText(language, rig, { singles: [] })
        : listed(
            card.singles.map((id) => partName(say, rig, id)),
            "semicolon",
          ),
      card.singles.length === 0 ? undefined : sayCard("singles.note"),
    ),
    ...(allows && card.unfollowed.length > 0
      ? [
          row(
            "unfollowed",
            listed(
              card.unfollowed.map((id) => partName(say, rig, id)),
              "semicolon",
            ),
            sayCard("unfollowed.note"),
          ),
        ]
      : []),
  ];
}

function walkerNote({ allows }: SiteCard): string {
  const { walker, own } = allows!;
  const { from, looked } = walker;
  if (from === "searched") {
    const searched = sayCard("walker.searched");
    if (!own) return searched;
    return `${searched} ${sayCard("walker.own", { mass: massUpTo(own.mass), day: dayText(own.until.day), falls: own.falls.left })}`;
  }
  return sayCard(looked ? "walker.asked" : "walker.notLooked");
}

const personsNote = ({ rescuer }: SiteCard): string =>
  rescuer === undefined ? sayCard("persons.noRescue") : sayCard("persons.rescue", { mass: massUpTo(rescuer) });

function fallsValue({ allows }: SiteCard): string {
  const { left, ends } = allows!.falls;
  return ends === "most" ? sayCard("falls.least", { left }) : String(left);
}

/** The leash: its rope, knots and rings. */
export function leashText({ leash, rings }: Rig): string {
  const knots = leash.knots.map(({ kind, where }) =>
    sayCard("leash.knot", { kind: sayCard(`leash.knot.${kind}`), where: sayCard(`leash.where.${where}`) }),
  );
  return capital(
    listed(
      [
        sayCard("leash.knots", {
          length: length(leash.length),
          stock: stockName(leash.stock.name),
          knots: knots.length === 0 ? sayCard("leash.sewn") : listed(knots),
        }),
        sayCard("leash.rings", { count: rings.length, names: listed(rings.map(({ name }) => name)) }),
      ],
      "semicolon",
    ),
  );
}

function lapsesWhen({ allows }: SiteCard): readonly string[] {
  return [
    ...(allows
      ? [
          sayCard("lapse.late", { day: dayText(allows.until.day) }),
          sayCard("lapse.falls", { falls: allows.falls.left }),
        ]
      : []),
    sayCard("lapse.tension"),
    sayCard("lapse.happened"),
    sayCard("lapse.then"),
  ];
}

/** The words of English. */
export const cardWords = createCardWords(english);
