/** Old clamp marks, fall zones and stitching that lie inside the loaded span of a webbing. */
import { formatLength, formatMonths } from "@secondline/rig";
import { isBefore } from "../dates/calendarDate.ts";
import { sectionPosition } from "./sectionPosition.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";

export interface WearFlag {
  /** Id of the webbing. */
  readonly webbing: string;
  readonly kind: WearMark["kind"];
  /** Positions on the webbing, from the marked end [m]. */
  readonly from: number;
  readonly to: number;
  /** Middle of it, from the A end of the section it hangs in [m]. */
  readonly fromA: number;
  readonly message: string;
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
    const where = `${formatLength(middle)} from the marked end, ${formatLength(fromA)} from the end at A`;
    const message = `${state.name}: ${describe(mark)} lies inside the loaded span, ${where}.`;
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

function describe(mark: WearMark): string {
  switch (mark.kind) {
    case "clampMark":
      return `an old clamp mark of ${formatMonths(mark.months)}`;
    case "fallZone":
      return `a fall zone of an earlier rigging (${mark.falls} falls)`;
    case "stitching":
      return "stitching";
    case "heat":
      return "a glazed place";
    default:
      return mark.kind === "cut" ? "a cut" : "an abraded place";
  }
}
