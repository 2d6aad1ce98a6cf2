/** Names of values of a rig's file by their paths, grouped by part. */

import { partOfPath, type Rig } from "@secondline/rig";
import type { Say } from "./language.ts";
import { listed } from "./lists.ts";
import { lowered, partName } from "./partNames.ts";
import { spokenField, spokenGroup } from "./spokenFields.ts";

/** "Span; Main line: webbing, tension; Leash: length". */
export function valueNames(say: Say, rig: Rig, paths: readonly string[]): string {
  const groups = new Map<string, string[]>();
  for (const path of paths) {
    const label = spokenField(path)?.label;
    const of = ownerName(say, rig, path);
    const group = of ?? label ?? path;
    const inside = groups.get(group) ?? [];
    groups.set(group, of === undefined || label === undefined ? inside : [...inside, lowered(label)]);
  }
  return listed(
    [...groups].map(([group, inside]) => (inside.length === 0 ? group : `${group}: ${listed(inside)}`)),
    "semicolon",
  );
}

/** The part, or the group of the file, that a value belongs to; undefined for the rig as a whole. */
function ownerName(say: Say, rig: Rig, path: string): string | undefined {
  const part = partOfPath(rig, path);
  if (part !== undefined) return partName(say, rig, part);
  return spokenGroup(path) ?? (path.includes(".") ? spokenGroup(path.slice(0, path.lastIndexOf("."))) : undefined);
}
