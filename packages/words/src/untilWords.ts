/** The take-down date of a rig in words: once, for terminal, page and report. */

import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook, PartDate } from "@secondline/scenarios";
import { dayText } from "./dates.ts";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { listed } from "./lists.ts";
import { lowered, partInSentence, partName } from "./partNames.ts";
import { margin, required } from "./quantity.ts";
import { verdictWord } from "./verdictWords.ts";

export type UntilWords = ReturnType<typeof createUntilWords>;

/** In a file of their own: the first load does not need them. */
export function createUntilWords(language: Language) {
  return {
    sentence: (rig: Rig, outlook: Outlook, outcome: Outcome) => untilSentence(language, rig, outlook, outcome),
    margins: (part: PartDate, horizon: string) => untilMargins(language, part, horizon),
    short: (outlook: Outlook) => untilShort(language, outlook),
    part: (part: PartDate, horizon: string) => partUntil(language, part, horizon),
  };
}

/** Sentences on a day, by the cause for telling it. */
const SENTENCES_BY_CAUSE = {
  below: {
    now: "until.now",
    later: "until.later",
    laterBut: "until.laterBut",
    calendarNow: "until.calendarNow",
    partNow: "until.partNow",
    partLater: "until.partLater",
  },
  unsettled: {
    now: "until.nowUnsettled",
    later: "until.laterUnsettled",
    laterBut: "until.laterUnsettledBut",
    calendarNow: "until.calendarNowUnsettled",
    partNow: "until.partNowUnsettled",
    partLater: "until.partLaterUnsettled",
  },
  unknown: {
    now: "until.nowUnknown",
    later: "until.laterUnknown",
    laterBut: "until.laterUnknownBut",
    calendarNow: "until.calendarNowUnknown",
    partNow: "until.partNowUnknown",
    partLater: "until.partLaterUnknown",
  },
} as const;

/** `outcome`: the verdict of the first day. */
export function untilSentence(language: Language, rig: Rig, outlook: Outlook, outcome: Outcome): string {
  const say = sayLaterIn(language);
  const [first] = outlook.parts;
  if (!first) return say("until.none");
  const verdict = lowered(verdictWord(language, outcome));
  const bad = outcome.verdict === "fails" || outcome.verdict === "thin";
  const said: string[] = [];
  const now = outlook.parts.filter(({ when }) => when === "now");
  const names = (parts: readonly PartDate[]) =>
    listed(
      parts.map((one) => lowered(partName(say, rig, one.part))),
      "semicolon",
    );
  if (now.length > 0) {
    for (const why of ["below", "unsettled", "unknown"] as const) {
      const parts = now.filter(({ because }) => (because ?? "below") === why);
      if (parts.length > 0)
        said.push(say(SENTENCES_BY_CAUSE[why].now, { on: dayText(outlook.on), parts: names(parts) }));
    }
  } else if (first.when === "later") {
    const values = { date: dayText(first.date!), part: partInSentence(say, rig, { id: first.part }), verdict };
    const { later, laterBut } = SENTENCES_BY_CAUSE[first.because ?? "below"];
    said.push(say(bad ? laterBut : later, values));
  } else said.push(say(bad ? "until.beyondBut" : "until.beyond", { horizon: dayText(outlook.horizon), verdict }));
  if (outcome.verdict === "open") said.push(say("until.openBut"));
  return said.join(" ");
}

/** A part's margins, today and on its day or at the horizon, beside its date. */
function untilMargins(language: Language, part: PartDate, horizon: string): string {
  const say = sayLaterIn(language);
  const { when, date, marginNow, marginThen } = part;
  const [now, asked] = [margin(marginNow), required(part.required)];
  if (when === "now") return say("until.marginNow", { now, required: asked });
  return say("until.margins", { now, later: margin(marginThen), date: dayText(date ?? horizon), required: asked });
}

/** A few words for a line on a calendar; undefined without a date. */
function untilShort(language: Language, { parts, date }: Outlook): string | undefined {
  const say = sayLaterIn(language);
  if (date === undefined) return undefined;
  const now = parts.filter(({ when }) => when === "now");
  if (now.length === 0) return say("until.calendarLater", { date: dayText(date) });
  const worst = now.find(({ because }) => because === undefined) ?? now[0]!;
  return say(SENTENCES_BY_CAUSE[worst.because ?? "below"].calendarNow);
}

/** One part's date, for a table. */
function partUntil(language: Language, { when, date, because }: PartDate, horizon: string): string {
  const say = sayLaterIn(language);
  const { partNow, partLater } = SENTENCES_BY_CAUSE[because ?? "below"];
  switch (when) {
    case "now":
      return say(partNow);
    case "later":
      return say(partLater, { date: dayText(date!) });
    case "beyond":
      return say("until.partBeyond", { horizon: dayText(horizon) });
  }
}

/** The words of English. */
export const untilWords = createUntilWords(english);
