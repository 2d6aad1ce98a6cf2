/**
 * The site card: what those who clip in must know of a rig on a day, as facts. It permits only what the whole search said to hold, by
 * values that somebody confirmed, on a line that is looked at; in everything else it gives no permission and says why.
 */
import type { PartId } from "@secondline/rig";
import { addDays, type Lapse, readDate } from "@secondline/strength";
import type { Assessed } from "../assessment/assessment.ts";
import type { Outcome } from "../outcome/outcome.ts";
import type { Outlook } from "../rule/takeDownDates.ts";
import { MOST_FALLS_LEFT } from "./fallsLeft.ts";
import type { HeaviestWalker } from "./heaviestWalker.ts";

/** Why a card gives no permission, besides what has lapsed. */
export type Refusal =
  /** The verdict is another one than that it holds. */
  | { readonly kind: "verdict" }
  /** Values at these paths of the rig's file that nobody has confirmed. */
  | { readonly kind: "unconfirmed"; readonly paths: readonly string[] }
  /** No wear record says what has happened to it. */
  | { readonly kind: "noRecord" }
  /** Lines about which the record says nothing. */
  | { readonly kind: "noLine"; readonly lines: readonly ("main" | "backup")[] }
  /** Nobody wrote down how often it is to be inspected. */
  | { readonly kind: "noInspection" }
  /** Until when it keeps what is required is not known. */
  | { readonly kind: "noDate" }
  /** How many falls it has held, or how many it still takes, is not known. */
  | { readonly kind: "noFalls" }
  /** No more fall is left. */
  | { readonly kind: "noFallLeft" }
  /** The record says something of this day, YYYY-MM-DD, and the card is made before it: an inspection to come has looked at nothing. */
  | { readonly kind: "ahead"; readonly day: string };

export interface CardUntil {
  /** The last day on which the card counts, YYYY-MM-DD. */
  readonly day: string;
  /** What ends it: a part gets thin, the inspection is due, the record says something of the next day, or nobody looked further ahead. */
  readonly ends: "thin" | "inspection" | "record" | "horizon";
}

export interface CardFalls {
  readonly left: number;
  /** What ends them: a part gets thin, the plan between two inspections, or no more were looked for. */
  readonly ends: "thin" | "plan" | "most";
}

export interface SiteCard {
  readonly rigName: string;
  readonly invented: boolean;
  /** The day of the state, YYYY-MM-DD; absent: none was given. */
  readonly on?: string;
  readonly permission: "given" | "none" | "lapsed";
  readonly lapses: readonly Lapse[];
  readonly refusals: readonly Refusal[];
  /** Only with permission: who, until when, and for how many falls, whichever comes first. */
  readonly allows?: {
    readonly walker: HeaviestWalker;
    readonly until: CardUntil;
    readonly falls: CardFalls;
    /** If a heavier walker is permitted: until when the file's walker may walk, and for how many falls. */
    readonly own?: { readonly mass: number; readonly until: CardUntil; readonly falls: CardFalls };
  };
  /** Whom a rescue was asked about [kg]; absent: it was not. */
  readonly rescuer?: number;
  readonly nextInspection?: string;
  readonly singles: readonly PartId[];
  /** Parts, besides webbing and its ends, of which nobody wrote down an inspection. */
  readonly unfollowed: readonly PartId[];
  /** SHA-256 of the assessment. */
  readonly hash: string;
}

/** How long a rig keeps what is required, with the walker of one search. */
export interface CardTerms {
  /** Take-down dates from the day of the card on. */
  readonly outlook?: Outlook;
  /** Falls left on the last day of `cardUntil`; absent: not known [-]. */
  readonly fallsLeft?: number;
}

export interface CardQuestion extends CardTerms {
  readonly assessed: Assessed;
  /** The day on which the card is made, YYYY-MM-DD: nothing that the record dates after it has happened. */
  readonly made: string;
  /** The whole search's. */
  readonly outcome: Outcome;
  /** Heavier walkers that were looked for, and how long the rig keeps with them: a heavier one asks more, and on fewer days. */
  readonly heavier?: { readonly walker: HeaviestWalker; readonly terms?: CardTerms };
}

/**
 * The last day on which a card could count: the day before the first part gets thin, that of the next inspection, or the day before the record
 * says more. What is written of later days is not in the state of the card's day, be it a plan or long over.
 */
export function cardUntil({ upkeep }: Assessed, outlook: Outlook | undefined): CardUntil | undefined {
  const { nextInspection, nextEntry } = upkeep;
  if (!outlook || outlook.parts.length === 0 || nextInspection === undefined) return undefined;
  const last: CardUntil =
    outlook.date === undefined
      ? { day: outlook.horizon, ends: "horizon" }
      : { day: dayBefore(outlook.date), ends: "thin" };
  const first: CardUntil = nextInspection <= last.day ? { day: nextInspection, ends: "inspection" } : last;
  return nextEntry !== undefined && nextEntry <= first.day ? { day: dayBefore(nextEntry), ends: "record" } : first;
}

const dayBefore = (day: string): string => addDays(readDate(day)!, -1).toString();

export function siteCard(question: CardQuestion): SiteCard {
  const { assessed, outcome } = question;
  const { rig, taken, upkeep } = assessed;
  const { lapses, nextInspection } = upkeep;
  const { until, falls } = termsOf(assessed, question);
  const refusals = refusalsOf(question, until, falls);
  const isGiven = lapses.length === 0 && refusals.length === 0 && until !== undefined && falls !== undefined;
  return {
    rigName: outcome.rigName,
    invented: outcome.invented,
    ...(taken.on === undefined ? {} : { on: taken.on }),
    permission: lapses.length > 0 ? "lapsed" : isGiven ? "given" : "none",
    lapses,
    refusals,
    ...(isGiven ? { allows: allowed(question, { until, falls }) } : {}),
    ...(rig.walker.rescuer === undefined ? {} : { rescuer: rig.walker.rescuer }),
    ...(nextInspection === undefined ? {} : { nextInspection }),
    singles: outcome.singles.filter(({ single }) => single).map(({ part }) => part),
    unfollowed: outcome.parts.map(({ id }) => id).filter((id) => !LINES.test(id) && !(upkeep.parts ?? []).includes(id)),
    hash: outcome.hash,
  };
}

/** Webbing and its ends: what is followed as a webbing. */
const LINES = /^(?:main|backup|endA|endB|backup\.end[AB])$/;

interface Terms {
  readonly until: CardUntil;
  readonly falls: CardFalls;
}

const termsOf = (
  assessed: Assessed,
  terms: CardTerms,
): { readonly until: CardUntil | undefined; readonly falls: CardFalls | undefined } => ({
  until: cardUntil(assessed, terms.outlook),
  falls: cardFalls(assessed, terms),
});

/** A heavier walker is permitted for as long as the rig keeps with that one, and never for longer than with the walker of the file. */
function allowed({ assessed, heavier }: CardQuestion, own: Terms): NonNullable<SiteCard["allows"]> {
  const { mass } = assessed.rig.walker;
  const asked = { walker: { mass, from: "asked", looked: heavier?.walker.looked ?? false }, ...own } as const;
  if (heavier?.walker.from !== "searched" || !heavier.terms) return asked;
  const { until, falls } = termsOf(assessed, heavier.terms);
  if (!until || until.day < assessed.taken.on! || !falls || falls.left < 1) return asked;
  return {
    walker: heavier.walker,
    until: until.day < own.until.day ? until : own.until,
    falls: falls.left < own.falls.left ? falls : own.falls,
    own: { mass, ...own },
  };
}

/** The smaller of two numbers: the falls that the parts still take, and the falls that are planned. */
function cardFalls({ upkeep }: Assessed, { fallsLeft }: CardTerms): CardFalls | undefined {
  if (fallsLeft === undefined) return undefined;
  const { plannedFallsLeft } = upkeep;
  if (plannedFallsLeft !== undefined && plannedFallsLeft <= fallsLeft) return { left: plannedFallsLeft, ends: "plan" };
  return { left: fallsLeft, ends: fallsLeft >= MOST_FALLS_LEFT ? "most" : "thin" };
}

function refusalsOf(
  { assessed, outcome, made }: CardQuestion,
  until: CardUntil | undefined,
  falls: CardFalls | undefined,
): readonly Refusal[] {
  const { rig, taken, upkeep } = assessed;
  const hasRecord = taken.wear !== undefined;
  const lines = (["main", "backup"] as const).filter(
    (line) => rig[line] !== undefined && !(taken.wear?.lines ?? []).includes(line),
  );
  const isDue = upkeep.nextInspection !== undefined;
  const { lastEntry } = upkeep;
  const refusals: (Refusal | false)[] = [
    outcome.verdict !== "holds" && { kind: "verdict" },
    rig.unconfirmed !== undefined && { kind: "unconfirmed", paths: rig.unconfirmed },
    !hasRecord && { kind: "noRecord" },
    hasRecord && lines.length > 0 && { kind: "noLine", lines },
    hasRecord && !isDue && { kind: "noInspection" },
    hasRecord && isDue && (until === undefined || until.day < taken.on!) && { kind: "noDate" },
    hasRecord && isDue && until !== undefined && falls === undefined && { kind: "noFalls" },
    falls !== undefined && falls.left < 1 && { kind: "noFallLeft" },
    lastEntry !== undefined && lastEntry > made && { kind: "ahead", day: lastEntry },
  ];
  return refusals.filter((one): one is Refusal => one !== false);
}
