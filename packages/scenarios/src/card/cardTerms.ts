/** How long a rig keeps what is required with the walker of one search: until when, and for how many falls. */
import type { Assessed } from "../assessment/assessment.ts";
import { type OutlookQuestion, takeDownDates } from "../rule/takeDownDates.ts";
import { fallsLeft } from "./fallsLeft.ts";
import { type CardTerms, cardUntil } from "./siteCard.ts";

/** Falls are counted of the whole search only: without it no card permits anybody. */
export function cardTerms(
  assessed: Assessed,
  question: OutlookQuestion,
): CardTerms & Required<Pick<CardTerms, "outlook">> {
  const outlook = takeDownDates(question);
  const until = cardUntil(assessed, outlook);
  const { whole = true, ...rest } = question;
  const left = until && whole ? fallsLeft({ ...rest, until: until.day }) : undefined;
  return { outlook, ...(left === undefined ? {} : { fallsLeft: left }) };
}
