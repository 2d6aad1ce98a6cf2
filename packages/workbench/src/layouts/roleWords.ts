import { sayLayouts } from "@secondline/words/page/layouts";

/** More than these changes are another rig rather than a change. */
export const MOST_CHANGES = 6;

/** What a layout is beside the first one, by how many changes tell them apart. */
export function roleWords(changes: number): string {
  if (changes === 0) return sayLayouts("layoutHead.same");
  if (changes > MOST_CHANGES) return sayLayouts("layoutHead.anotherRig");
  return sayLayouts("layoutHead.changes", { changes });
}
