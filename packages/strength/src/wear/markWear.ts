/** Marks on a webbing as wear of a stretch of it. */
import type { Wear } from "@secondline/rig";
import { fallZones } from "./fallZones.ts";
import type { Placement } from "./placement.ts";
import { sectionPosition } from "./sectionPosition.ts";
import type { WearMark } from "./webbingState.ts";

type Stretch = Pick<Placement, "markedEnd" | "from" | "to">;

/** Marks as wear of a stretch of `length` [m]: clipped to it, falls of overlapping zones added. */
export function wearOfMarks(marks: readonly WearMark[], stretch: Stretch, length: number): Wear[] {
  return placedWear(marks, (position) => sectionPosition(stretch, position), length);
}

/** `place` turns a position on the webbing into one along the stretch [m]. */
export function placedWear(marks: readonly WearMark[], place: (position: number) => number, length: number): Wear[] {
  const others = marks.filter((m) => m.kind !== "fallZone");
  return [...fallZones(marks), ...others].flatMap((mark) => wearOf(mark, place, length));
}

/** A mark as wear of a stretch, clipped to it; none when it lies outside. */
function wearOf(mark: WearMark, place: (position: number) => number, length: number): Wear[] {
  const ends = [place(mark.from), place(mark.to)];
  const from = Math.max(0, Math.min(...ends));
  const to = Math.min(length, Math.max(...ends));
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
