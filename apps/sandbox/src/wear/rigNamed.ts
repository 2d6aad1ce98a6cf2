/** Records hang on a rig by its id; where it has none, by its name. */
import type { Rig } from "@secondline/rig";

export const isNamed = (rig: Rig, named: string): boolean =>
  named === (rig as { readonly id?: string }).id || named === rig.name;

/** What a new entry names a rig by. */
export const nameFor = (rig: Rig): string => (rig as { readonly id?: string }).id ?? rig.name;
