/** Until when a rig may stay up, in words: once, for terminal, page and report. */
import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook, PartDate } from "@secondline/scenarios";
import { english, type Language } from "./language.ts";
import { sayLaterIn } from "./laterLanguage.ts";
import { lowered, partInSentence, partName } from "./partNames.ts";
import { margin, required } from "./quantity.ts";
import { verdictWord } from "./verdictWords.ts";

export type UntilWords = ReturnType<typeof createUntilWords>;

/** Apart from the rest: the first load does without it. */
export function createUntilWords(language: Language) {
  return {
    sentence: (rig: Rig, outlook: Outlook, outcome: Outcome) => untilSentence(language, rig, outlook, outcome),
    margins: (part: PartDate, horizon: string) => untilMargins(language, part, horizon),
    short: (outlook: Outlook) => untilShort(language, outlook),
    part: (part: PartDate, horizon: string) => partUntil(language, part, horizon),
  };
}

/** `outcome`: the verdict of the first day. */
export function untilSentence(language: Language, rig: Rig, outlook: Outlook, outcome: Outcome): string {
  const say = sayLaterIn(language);
  const [first] = outlook.parts;
  if (!first) return say("until.none");
  const verdict = lowered(verdictWord(language, outcome));
  const bad = outcome.verdict === "fails" || outcome.verdict === "thin";
  const said: string[] = [];
  const now = outlook.parts.filter(({ when }) => when === "now");
  const names = (parts: readonly PartDate[]) => parts.map((one) => lowered(partName(say, rig, one.part))).join("; ");
  if (now.length > 0) {
    const below = now.filter(({ unsettled }) => !unsettled);
    const unsettled = now.filter((one) => one.unsettled);
    if (below.length > 0) said.push(say("until.now", { on: outlook.on, parts: names(below) }));
    if (unsettled.length > 0) said.push(say("until.nowUnsettled", { on: outlook.on, parts: names(unsettled) }));
  } else if (first.when === "later") {
    const values = { date: first.date!, part: partInSentence(say, rig, { id: first.part }), verdict };
    if (first.unsettled) said.push(say(bad ? "until.laterUnsettledBut" : "until.laterUnsettled", values));
    else said.push(say(bad ? "until.laterBut" : "until.later", values));
  } else said.push(say(bad ? "until.beyondBut" : "until.beyond", { horizon: outlook.horizon, verdict }));
  if (outcome.verdict === "open") said.push(say("until.openBut"));
  return said.join(" ");
}

/** A part's margins, today and on its day or at the horizon, beside its date. */
function untilMargins(language: Language, part: PartDate, horizon: string): string {
  const say = sayLaterIn(language);
  const { when, date, marginNow, marginThen } = part;
  const [now, asked] = [margin(marginNow), required(part.required)];
  if (when === "now") return say("until.marginNow", { now, required: asked });
  return say("until.margins", { now, later: margin(marginThen), date: date ?? horizon, required: asked });
}

/** A few words for a line on a calendar; undefined without a date. */
function untilShort(language: Language, { parts, date }: Outlook): string | undefined {
  const say = sayLaterIn(language);
  if (date === undefined) return undefined;
  if (parts[0]?.when !== "now") return say("until.calendarLater", { date });
  const isBelow = parts.some(({ when, unsettled }) => when === "now" && !unsettled);
  return say(isBelow ? "until.calendarNow" : "until.calendarNowUnsettled");
}

/** One part's date, for a table. */
function partUntil(language: Language, { when, date, unsettled }: PartDate, horizon: string): string {
  const say = sayLaterIn(language);
  switch (when) {
    case "now":
      return say(unsettled ? "until.partNowUnsettled" : "until.partNow");
    case "later":
      return say(unsettled ? "until.partLaterUnsettled" : "until.partLater", { date: date! });
    case "beyond":
      return say("until.partBeyond", { horizon });
  }
}

/** The words of English. */
export const untilWords = createUntilWords(english);
