/** A condition of a part of which no factor depends on it: it changes nothing, and the results say so. */
import type { Condition } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";

export function saysSomething({ needsInspection: _, ...rest }: Condition): boolean {
  return Object.values(rest).some((value) => value !== undefined);
}

/** A sentence where something is written of metal that no factor takes up. */
export function unusedOnMetal(condition: Condition = {}): readonly NoteFact[] {
  if (!saysSomething(condition)) return [];
  return [noteFact("condition.onMetal", {})];
}
