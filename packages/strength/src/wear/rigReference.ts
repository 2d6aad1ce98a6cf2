/** Whether a record means a rig: by its id, or by its name where no id says so. */
import type { Rig } from "@secondline/rig";

export type RigMatch = "id" | "name";

/** How `reference`, as written in a record, fits a rig; undefined when it means another. An id counts before a name. */
export function rigMatch(rig: Pick<Rig, "id" | "name">, reference: string): RigMatch | undefined {
  if (rig.id !== undefined && reference === rig.id) return "id";
  return reference === rig.name ? "name" : undefined;
}

/** What must be said when a record was matched by the rig's name. */
export function nameMatchNote({ id, name }: Pick<Rig, "id" | "name">): string {
  const remedy =
    id === undefined
      ? "Give the rig an id and write that into the record"
      : `Write the rig's id, "${id}", into the record`;
  return `The record means the rig "${name}" by its name, which another rig may have too. ${remedy}.`;
}

/** So many names are listed. */
const MOST_NAMES = 5;

/** What is said of rigs that a record names and this is not, each once: one of them may be misspelt. */
export function otherRigNotes(rig: Pick<Rig, "id" | "name">, references: readonly string[]): string[] {
  const others = [...new Set(references)].filter((reference) => rigMatch(rig, reference) === undefined);
  if (others.length === 0) return [];
  const more = others.length > MOST_NAMES ? ` and ${others.length - MOST_NAMES} more` : "";
  const names = others
    .slice(0, MOST_NAMES)
    .map((name) => `"${name}"`)
    .join(", ");
  const own = rig.id ?? rig.name;
  return [
    `The record has entries of ${names}${more}, which this rig is not: they do not count here. If "${own}" is meant, put the name right.`,
  ];
}
