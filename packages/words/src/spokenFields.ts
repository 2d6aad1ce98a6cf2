/** Fields of the rig's file by their names in the language. */
import { type Field, fieldAt, groupName } from "@secondline/rig";
import { broughtIn } from "./broughtEnglish.ts";

/** The field at a path of the document, with its label, its help and its choices; undefined where there is none. */
export function spokenField(path: string): Field | undefined {
  const field = fieldAt(path);
  if (!field) return undefined;
  const said = { label: broughtIn(field.label), help: broughtIn(field.help) };
  if (field.kind !== "choice") return { ...field, ...said };
  return { ...field, ...said, options: field.options.map((one) => ({ ...one, label: broughtIn(one.label) })) };
}

/** The group of fields at a path; undefined where there is none. */
export function spokenGroup(path: string): string | undefined {
  const name = groupName(path);
  return name === undefined ? undefined : broughtIn(name);
}
