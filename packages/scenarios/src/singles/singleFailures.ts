/** Every part, one at a time, gone: what then carries the walker, and which parts have no second. */
import { type PartId, partIds, type Rig } from "@secondline/rig";
import { type Absence, type Remaining, whenGone } from "./whenGone.ts";

export interface SingleFailure {
  readonly part: PartId;
  readonly ways: readonly Absence[];
  readonly leaves: Remaining;
  /** Nothing carries the walker when it has gone, whatever its margin. */
  readonly single: boolean;
  /** Indices of the events of the outcome that show it by a run, if any. */
  readonly shownBy: readonly number[];
  /** What those runs say: whether something catches the walker in every run. */
  readonly catches?: boolean;
}

/** The single points of failure, in the order of the load's way. `shown`: events that take a part away, by part, and whether the walker is caught in all their runs. */
export function singleFailures(
  rig: Rig,
  shown: ReadonlyMap<PartId, readonly { readonly event: number; readonly caught: boolean }[]> = new Map(),
): readonly SingleFailure[] {
  return partIds(rig).flatMap((part): SingleFailure[] => {
    const gone = whenGone(rig, part);
    if (!gone) return [];
    const runs = shown.get(part) ?? [];
    return [
      {
        part,
        ways: gone.ways,
        leaves: gone.leaves,
        single: gone.leaves === "nothing",
        shownBy: runs.map(({ event }) => event),
        ...(runs.length > 0 ? { catches: runs.every(({ caught }) => caught) } : {}),
      },
    ];
  });
}
