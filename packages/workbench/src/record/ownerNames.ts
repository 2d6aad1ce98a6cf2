/** What a webbing or part of the record is called. */

import type { WearRecord } from "@secondline/strength";
import { capital } from "@secondline/words";
import { sayRecord } from "@secondline/words/page/record";
import type { WrittenRecord } from "../documents/documents.ts";
import type { Owner } from "../wear/entryEdits.ts";

export function ownerName(record: WrittenRecord, { list, index }: Owner): string {
  if (list === "webbings") return record.webbings?.[index]?.name ?? sayRecord("ownerChoice.noWebbingYet");
  const part = record.parts?.[index];
  return part ? `${capitalPartName(part.part)}, ${part.rig}` : sayRecord("ownerChoice.noPartYet");
}

/** "anchorA.hardware.0" as "Anchor A, hardware 1". */
export function capitalPartName(part: string): string {
  const words = part
    .replace(/^anchor([AB])/, "anchor $1")
    .replaceAll(/\.(\d+)/g, (_, index) => ` ${Number(index) + 1}`);
  return capital(words.replaceAll(".", ", "));
}

/** Names of the rigs in which the webbings of the record hung or hang, each once. */
export const rigsIn = ({ webbings }: WearRecord): readonly string[] => [
  ...new Set(
    webbings.flatMap(({ entries }) =>
      entries.flatMap((entry) => (entry.event === "rigged" || entry.event === "moved" ? [entry.placement.rig] : [])),
    ),
  ),
];
