/** How far the site card of a state is: what it rests on, or what is still waited for. */
import type { Assessed, CardQuestion, SearchResult } from "@secondline/scenarios";
import { sayCard } from "@secondline/words/page/card";
import type { ViewName } from "../inHand/state.ts";
import type { Job } from "../job/job.ts";
import type { CardDates } from "../wear/dates.ts";

export type CardState =
  /** The verdict is looked for, or there can be none. */
  | { readonly kind: "searching" }
  | { readonly kind: "dating" }
  | { readonly kind: "failed"; readonly message: string }
  | { readonly kind: "ready"; readonly question: Omit<CardQuestion, "made"> };

/** A state whose record speaks of the rig has days that follow from it. */
export const isDated = (assessed: Assessed, found: SearchResult | undefined): found is SearchResult =>
  found !== undefined && assessed.taken.wear !== undefined;

/** Days that were worked out for a question. */
export interface DatesOf {
  readonly of: unknown;
  readonly dates: CardDates;
}

/** `job`: works the days out that the card tells; those of another question than `asked` are none. */
export function cardState(
  assessed: Assessed,
  found: SearchResult | undefined,
  job: Job<DatesOf>,
  asked: unknown,
): CardState {
  if (!found) return { kind: "searching" };
  const { outcome } = found;
  if (!isDated(assessed, found)) return { kind: "ready", question: { assessed, outcome } };
  if (job.kind === "failed") return { kind: "failed", message: job.message };
  if (job.kind !== "done" || job.value.of !== asked) return { kind: "dating" };
  return { kind: "ready", question: { assessed, outcome, ...job.value.dates } };
}

export interface CardNotice {
  readonly title: string;
  readonly says: string;
  /** How it is told to who does not see it. */
  readonly role: "status" | "alert" | undefined;
  /** Where to go meanwhile. */
  readonly way: { readonly label: string; readonly view: ViewName };
}

/** What stands in place of a card that is not there. */
export function cardNotice(state: Exclude<CardState, { kind: "ready" }>): CardNotice {
  const back = { label: sayCard("cardView.backToRig"), view: "rig" } as const;
  const title = sayCard("cardView.noCardYet");
  switch (state.kind) {
    case "searching":
      return { title, says: sayCard("cardView.needsWholeSearch"), role: undefined, way: back };
    case "dating":
      return { title, says: sayCard("cardView.computing"), role: "status", way: back };
    case "failed":
      return {
        title: sayCard("cardView.noCard"),
        says: sayCard("cardView.notComputed", { message: state.message }),
        role: "alert",
        way: { label: sayCard("cardView.lookWearRecord"), view: "wear" },
      };
  }
}
