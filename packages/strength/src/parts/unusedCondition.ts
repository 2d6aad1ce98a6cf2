/** A condition of a part that has no factor for it. It changes nothing, and the results say so. */
import type { Condition } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";

export function saysSomething({ needsInspection: _, ...rest }: Condition): boolean {
  return Object.values(rest).some((value) => value !== undefined);
}

/** A note if the document gives a condition for metal that no factor uses. */
export function unusedOnMetal(condition: Condition = {}): readonly NoteFact[] {
  if (!saysSomething(condition)) return [];
  return [noteFact("condition.onMetal", {})];
}
