/** What is said where a record begins after a first use may have been. */
import type { FactValue } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import type { RecordReach } from "./reach.ts";

/** `name`: the webbing or part, as a sentence begins with it. */
export const lateNote = (name: FactValue, { begun }: RecordReach): NoteFact =>
  begun === undefined ? noteFact("record.noEntry", { name }) : noteFact("record.late", { name, begun: `${begun}` });
