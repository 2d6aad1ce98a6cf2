/** Inspections in a wear record, of the webbing and the parts that are in a rig on a day. */
import type { Rig } from "@secondline/rig";
import type { WearRecord } from "@secondline/strength";
import type { Inspected } from "./signedSection.ts";

type Entry = WearRecord["webbings"][number]["entries"][number] | WearRecord["parts"][number]["entries"][number];

/** `on`: YYYY-MM-DD, the day of the state; later entries are not counted. The oldest first. */
export function inspectedIn(
  record: WearRecord,
  { id, name }: Pick<Rig, "id" | "name">,
  on: string,
): readonly Inspected[] {
  const isHere = (rig: string | undefined) => rig !== undefined && (rig === id || rig === name);
  const webbings = record.webbings.flatMap((webbing) => {
    const entries = until(webbing.entries, on);
    const rigged = entries.findLast(({ event }) => event === "rigged");
    return isHere(rigged && `${(rigged as { readonly rig?: unknown }).rig}`)
      ? entries.flatMap((entry) => inspectionsOf(entry, { webbing: webbing.name }))
      : [];
  });
  const parts = record.parts.flatMap((part) =>
    isHere(part.rig) ? until(part.entries, on).flatMap((entry) => inspectionsOf(entry, { part: part.part })) : [],
  );
  return [...webbings, ...parts].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
}

const until = <T extends { readonly date: unknown }>(entries: readonly T[], on: string): readonly T[] =>
  entries.filter(({ date }) => `${date}` <= on);

function inspectionsOf(entry: Entry, of: Inspected["of"]): readonly Inspected[] {
  if (entry.event !== "inspected") return [];
  const { by, found, judgement } = entry as unknown as Pick<Inspected, "by" | "found" | "judgement">;
  return [{ of, by, on: `${entry.date}`, judgement, found }];
}
