/** A webbing whose record begins late, in the rig: the rig's file counts, and the record is added to it. */
import type { AnchorName, LineEnd, WebbingSection } from "@secondline/rig";
import { possibleMonths } from "../derating/unknown.ts";
import { added, addedCondition } from "./addedCondition.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";

/** Whether the file says, or leaves open, that time, falls or clamps have weakened the webbing. */
export function isUsedSection({ condition, wear }: WebbingSection, ends: readonly LineEnd[]): boolean {
  const clamped = ends.some(({ kind, monthsClamped }) => kind === "weblock" && monthsClamped !== 0);
  return condition.monthsOutside !== 0 || wear.length > 0 || clamped;
}

/**
 * The record's marks. The weblocks in which the webbing sat first get the earlier months that the file gives for the `ends` of
 * the section. If the file leaves these blank, they are as many as the webbing can have been outside.
 */
export function lateMarks(
  marks: readonly WearMark[],
  { condition }: WebbingSection,
  ends: readonly LineEnd[],
): readonly WearMark[] {
  const weblocks = ends.filter(({ kind }) => kind === "weblock");
  const before = Math.max(0, ...weblocks.map(({ monthsClamped }) => monthsClamped ?? possibleMonths(condition)));
  const firsts = marks.flatMap((mark) => (isWeblockMark(mark) ? [mark.since.toString()] : [])).sort();
  return marks.map((mark) =>
    isWeblockMark(mark) && mark.since.toString() === firsts[0] ? { ...mark, months: mark.months + before } : mark,
  );
}

const isWeblockMark = (mark: WearMark): mark is Extract<WearMark, { kind: "clampMark" }> =>
  mark.kind === "clampMark" && mark.weblock === true;

/** The condition of the end in the file, with the record's time added. */
export function lateEnd(end: LineEnd, webbing: WebbingState, side: AnchorName): LineEnd {
  const { condition, monthsClamped: written, ...rest } = end;
  const monthsClamped = added(written, webbing.clampedMonths[side] ?? 0);
  return {
    ...rest,
    ...(condition === undefined ? {} : { condition: addedCondition(condition, webbing) }),
    ...(monthsClamped === undefined ? {} : { monthsClamped }),
  };
}
