/** A condition of a part of which no factor depends on it: it changes nothing, and the results say so. */
import type { Condition } from "@secondline/rig";

export function saysSomething({ needsInspection: _, ...rest }: Condition): boolean {
  return Object.values(rest).some((value) => value !== undefined);
}

/** A sentence where something is written of metal that no factor takes up. */
export function unusedOnMetal(condition: Condition = {}): readonly string[] {
  if (!saysSomething(condition)) return [];
  return [
    "Time outside, sun, age and wet, which are written for it, change nothing: no factor knows what they do to metal. A doubt of it goes into its own factor.",
  ];
}
