/** The note on a record that begins after a possible first use. */
import type { FactValue } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import type { RecordReach } from "./reach.ts";

/** `name`: the webbing or part, in the form that begins a sentence. */
export const lateNote = (name: FactValue, { begun }: RecordReach): NoteFact =>
  begun === undefined
    ? noteFact("record.noEntry", { name })
    : noteFact("record.late", { name, begun: { day: `${begun}` }, typed: `${begun}` });
