/** Until when a rig may stay up, in words: once, for terminal, page and report. */
import type { Rig } from "@secondline/rig";
import type { Outcome, Outlook, PartDate } from "@secondline/scenarios";
import { type Language, sayIn } from "./language.ts";
import { lowered, partInSentence, partName } from "./partNames.ts";

/** `outcome`: the verdict of the first day. */
export function untilSentence(language: Language, rig: Rig, outlook: Outlook, outcome: Outcome): string {
  const say = sayIn(language);
  const [first] = outlook.parts;
  if (!first) return say("until.none");
  const verdict = lowered(say(`verdict.${outcome.verdict}`));
  const bad = outcome.verdict === "fails" || outcome.verdict === "thin";
  const said: string[] = [];
  const now = outlook.parts.filter(({ when }) => when === "now");
  if (now.length > 0) {
    const parts = now.map((one) => lowered(partName(say, rig, one.part))).join("; ");
    said.push(say("until.now", { on: outlook.on, parts }));
  } else if (first.when === "later") {
    const values = { date: first.date!, part: partInSentence(say, rig, { id: first.part }), verdict };
    said.push(say(bad ? "until.laterBut" : "until.later", values));
  } else said.push(say(bad ? "until.beyondBut" : "until.beyond", { horizon: outlook.horizon, verdict }));
  if (outcome.verdict === "open") said.push(say("until.openBut"));
  return said.join(" ");
}

/** One part's date, for a table. */
export function partUntil(language: Language, { when, date }: PartDate, horizon: string): string {
  const say = sayIn(language);
  switch (when) {
    case "now":
      return say("until.partNow");
    case "later":
      return say("until.partLater", { date: date! });
    case "beyond":
      return say("until.partBeyond", { horizon });
  }
}
