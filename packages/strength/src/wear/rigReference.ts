/** Whether a record means a rig: by the rig's id, or by its name if no id matches. */
import type { Rig } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";

export type RigMatch = "id" | "name";

/** How `reference`, as written in a record, fits a rig; undefined when it means another. An id counts before a name. */
export function rigMatch(rig: Pick<Rig, "id" | "name">, reference: string): RigMatch | undefined {
  if (rig.id !== undefined && reference === rig.id) return "id";
  return reference === rig.name ? "name" : undefined;
}

/** The fact that a record was matched by the rig's name. */
export const nameMatchNote = ({ id, name }: Pick<Rig, "id" | "name">): NoteFact =>
  id === undefined ? noteFact("record.matchedByName", { name }) : noteFact("record.matchedByNameOfId", { name, id });

/** Most names that are listed [-]. */
const MOST_NAMES = 5;

/** The fact about other rigs that a record names, each once: one of the names may be this rig's, misspelt. */
export function otherRigNotes(rig: Pick<Rig, "id" | "name">, references: readonly string[]): NoteFact[] {
  const others = [...new Set(references)].filter((reference) => rigMatch(rig, reference) === undefined);
  if (others.length === 0) return [];
  const names = { list: others.slice(0, MOST_NAMES).map((name) => `"${name}"`) };
  const values = { names, own: rig.id ?? rig.name };
  const more = others.length - MOST_NAMES;
  return [more > 0 ? noteFact("record.moreOtherNames", { ...values, more }) : noteFact("record.otherNames", values)];
}
