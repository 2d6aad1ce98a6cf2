/** What is said where a record begins after a first use may have been. */
import type { RecordReach } from "./reach.ts";

/** `name`: the webbing or part, as a sentence begins with it. */
export function lateNote(name: string, { begun }: RecordReach): string {
  if (begun === undefined)
    return `${name}: the record has no entry by that day. What the rig's file says of it counts.`;
  return `${name}: the record begins on ${begun} and does not say what was before. What the rig's file says of it counts as the state of that day, and the record is added to it; what the file leaves blank stays unknown. If it lay unused until then, write "firstUse": "${begun}" into the record.`;
}
