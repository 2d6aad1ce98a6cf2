/** Old clamp marks, fall zones and stitching that lie inside the loaded span of a webbing. */
import { isBefore } from "../dates/calendarDate.ts";
import { type NoteFact, type NoteFacts, noteFact } from "../noteFacts.ts";
import { sectionPosition } from "./sectionPosition.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";

export interface WearFlag {
  /** Id of the webbing. */
  readonly webbing: string;
  readonly kind: WearMark["kind"];
  /** Positions on the webbing, from the marked end [m]. */
  readonly from: number;
  readonly to: number;
  /** Its middle, from the A end of the section in which the webbing hangs [m]. */
  readonly fromA: number;
  readonly message: NoteFact;
}

/** Stitching this close to an end of the span is the end's own [m]. */
const OWN_END_LENGTH = 0.5;

export function wearFlags(state: WebbingState): WearFlag[] {
  const { placement } = state;
  if (placement === undefined) return [];
  return state.marks.flatMap((mark) => {
    const from = Math.max(mark.from, placement.from);
    const to = Math.min(mark.to, placement.to);
    // A cut has no length.
    if (from > to || (from === to && mark.kind !== "cut") || !isTold(mark, state)) return [];
    const middle = (mark.from + mark.to) / 2;
    const fromA = sectionPosition(placement, middle);
    const message = flagOf(mark, { name: state.name, middle: { length: middle }, fromA: { length: fromA } });
    return [{ webbing: state.id, kind: mark.kind, from: mark.from, to: mark.to, fromA, message }];
  });
}

function isTold(mark: WearMark, { placement }: WebbingState): boolean {
  switch (mark.kind) {
    case "clampMark":
      return mark.until !== undefined;
    case "fallZone":
      return isBefore(mark.since, placement!.since);
    case "stitching": {
      const middle = (mark.from + mark.to) / 2;
      return middle - placement!.from > OWN_END_LENGTH && placement!.to - middle > OWN_END_LENGTH;
    }
    default:
      return true;
  }
}

function flagOf(mark: WearMark, placed: NoteFacts["flag.cut"]): NoteFact {
  switch (mark.kind) {
    case "clampMark":
      return noteFact("flag.clampMark", { ...placed, months: { months: mark.months } });
    case "fallZone":
      return noteFact("flag.fallZone", { ...placed, falls: mark.falls });
    default:
      return noteFact(`flag.${mark.kind}`, placed);
  }
}
