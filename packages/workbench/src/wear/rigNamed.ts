/** Records hang on a rig by its id; where it has none, by its name. */
import type { Rig } from "@secondline/rig";
import { rigMatch } from "@secondline/strength";

export const isNamed = (rig: Rig, named: string): boolean => rigMatch(rig, named) !== undefined;

/** What a new entry names a rig by. */
export const nameFor = ({ id, name }: Rig): string => id ?? name;
