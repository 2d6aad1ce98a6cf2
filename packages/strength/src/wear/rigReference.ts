/** Whether a record means a rig: by its id, or by its name where no id says so. */
import type { Rig } from "@secondline/rig";
import { type NoteFact, noteFact } from "../noteFacts.ts";

export type RigMatch = "id" | "name";

/** How `reference`, as written in a record, fits a rig; undefined when it means another. An id counts before a name. */
export function rigMatch(rig: Pick<Rig, "id" | "name">, reference: string): RigMatch | undefined {
  if (rig.id !== undefined && reference === rig.id) return "id";
  return reference === rig.name ? "name" : undefined;
}

/** What must be said when a record was matched by the rig's name. */
export const nameMatchNote = ({ id, name }: Pick<Rig, "id" | "name">): NoteFact =>
  id === undefined ? noteFact("record.matchedByName", { name }) : noteFact("record.matchedByNameOfId", { name, id });

/** So many names are listed. */
const MOST_NAMES = 5;

/** What is said of rigs that a record names and this is not, each once: one of them may be misspelt. */
export function otherRigNotes(rig: Pick<Rig, "id" | "name">, references: readonly string[]): NoteFact[] {
  const others = [...new Set(references)].filter((reference) => rigMatch(rig, reference) === undefined);
  if (others.length === 0) return [];
  const names = { list: others.slice(0, MOST_NAMES).map((name) => `"${name}"`) };
  const told = { names, own: rig.id ?? rig.name };
  const more = others.length - MOST_NAMES;
  return [more > 0 ? noteFact("record.moreOtherNames", { ...told, more }) : noteFact("record.otherNames", told)];
}
