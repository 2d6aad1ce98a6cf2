/** What the sheet calls parts of a document, and the groups that faults are in. */
import { parseQuantity } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { spokenField, spokenGroup } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";

export function sectionTitle(section: unknown, number: number): string {
  const { length } = section as { length?: unknown };
  return length === undefined
    ? sayRigSheet("lineFields.sectionOfRest", { number })
    : sayRigSheet("lineFields.sectionOfLength", { number, length: String(length) });
}

const WEAR_WORDS: Readonly<Record<string, string>> = {
  clampMark: sayRigSheet("lineFields.clampMark"),
  fallZone: sayRigSheet("lineFields.fallZone"),
  stitching: sayRigSheet("lineFields.stitching"),
  abrasion: sayRigSheet("lineFields.abrasion"),
  heat: sayRigSheet("lineFields.glazedHeat"),
  cut: sayRigSheet("lineFields.cut"),
};

export function wearItemTitle(item: unknown): string {
  const wear = item as Record<string, unknown>;
  const where =
    wear.at === undefined
      ? sayRigSheet("lineFields.to", { from: String(wear.from), to: String(wear.to) })
      : String(wear.at);
  return `${WEAR_WORDS[String(wear.kind)] ?? sayRigSheet("lineFields.wornPlaceTitle")}, ${where}`;
}

/** Where a connection or tape is, by metre; as it was written where that is no place. `span` [m]. */
export function jointPlace(item: unknown, span: number): string {
  const { at } = item as { at?: unknown };
  const read = parseQuantity(at, "position");
  return read.ok
    ? newRigWords.say("side.fromA", { distance: quantity.along(read.value * span) })
    : sayRigSheet("backupFields.at", { at: String(at) });
}

/** A kind of the parts in the list at that path. */
export function kindWords(at: string, kind: string): string {
  const field = spokenField(`${at}[0].kind`);
  const option = field?.kind === "choice" ? field.options.find(({ value }) => value === kind) : undefined;
  return option?.label ?? kind;
}

/** The group a field is in, with its number in a list; the message itself names the field. */
export function groupOfField(path: string): string | undefined {
  const group = path.replace(/\.?[^.[\]]+$/, "");
  const item = /\[(\d+)\]$/.exec(group);
  const name = spokenGroup(item ? group.slice(0, item.index) : group);
  if (group === "" || name === undefined) return undefined;
  return item ? `${name} ${Number(item[1]) + 1}` : name;
}
