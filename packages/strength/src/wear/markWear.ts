/** Marks on a webbing as wear of a stretch of it. */
import type { Wear } from "@secondline/rig";
import { fallZones } from "./fallZones.ts";
import type { Placement } from "./placement.ts";
import { sectionPosition } from "./sectionPosition.ts";
import type { WearMark } from "./webbingState.ts";

type Stretch = Pick<Placement, "markedEnd" | "from" | "to">;

/**
 * Marks as wear of a stretch of `length` [m]: clipped to it, falls of overlapping zones added. If the loaded span in the record
 * is longer than that, marks inside the span but beyond the length are put at the stretch's end.
 */
export function wearOfMarks(marks: readonly WearMark[], stretch: Stretch, length: number): Wear[] {
  const excess = Math.max(0, stretch.to - stretch.from - length);
  const place = (position: number) => sectionPosition(stretch, position);
  return placedWear(marks, place, length, excess);
}

/**
 * `place` turns a position on the webbing into one along the stretch; `excess`: length of the loaded span beyond the
 * stretch [m].
 */
export function placedWear(
  marks: readonly WearMark[],
  place: (position: number) => number,
  length: number,
  excess = 0,
): Wear[] {
  const others = marks.filter((m) => m.kind !== "fallZone");
  return [...fallZones(marks), ...others].flatMap((mark) => {
    const ends = [place(mark.from), place(mark.to)];
    const [from, to] = [Math.max(0, Math.min(...ends)), Math.min(length + excess, Math.max(...ends))];
    // A mark that lies wholly beyond the length is moved back by as much as it reaches beyond.
    const back = from >= length && from <= to ? to - length : 0;
    return wearOf(mark, from - back, Math.min(length, to - back));
  });
}

/** A mark as wear from one place of a stretch to another; empty if the mark does not touch it. */
function wearOf(mark: WearMark, from: number, to: number): Wear[] {
  if (from > to || (from === to && mark.kind !== "cut")) return [];
  const spot = { at: (from + to) / 2, length: to - from };
  switch (mark.kind) {
    case "clampMark":
      return [
        { kind: "clampMark", ...spot, months: mark.months, ...(mark.load === undefined ? {} : { load: mark.load }) },
      ];
    case "fallZone":
      return [{ kind: "fallZone", from, to, falls: mark.falls }];
    case "stitching":
      return [{ kind: "stitching", ...spot }];
    case "cut":
      return [{ kind: "cut", at: spot.at, depth: mark.depth }];
    case "abrasion":
    case "heat":
      return [{ kind: mark.kind, from, to, depth: mark.depth }];
  }
}
