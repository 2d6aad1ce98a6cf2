/** The notes on a record that begins after a possible first use. */
import type { Condition, FactValue } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import { countsAnywhere } from "./inOnePlace.ts";
import type { RecordReach } from "./reach.ts";

/** `name`: the webbing or part, in the form that begins a sentence; `written`: its conditions in the rig's file. */
export function lateNotes(
  name: FactValue,
  { begun }: RecordReach,
  written: readonly (Condition | undefined)[],
): readonly NoteFact[] {
  return [
    begun === undefined
      ? noteFact("record.noEntry", { name })
      : noteFact("record.late", { name, begun: { day: `${begun}` }, typed: `${begun}` }),
    ...(written.some((one) => one !== undefined && countsAnywhere(one)) ? [noteFact("rig.latitude", {})] : []),
  ];
}
