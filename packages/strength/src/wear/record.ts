/**
 * The wear record: what happened to each metre of webbing, and to each part, with dates. Positions on a webbing are natural
 * metres from its marked end, measured on the new webbing. A cut does not change them.
 */
import type { Climate } from "../derating/sunDose.ts";
import type { WebbingEntry } from "./entries/entryKinds.ts";
import type { PartEntry } from "./partEntries/partEntryKinds.ts";
import type { Beginning } from "./reach.ts";

export type DamageKind = "abrasion" | "heat" | "cut";

export interface WebbingRecord extends Beginning {
  readonly id: string;
  readonly name: string;
  /** Length as new [m]. */
  readonly length: number;
  /** Mark by which the marked end is known. */
  readonly mark: string;
  readonly entries: readonly WebbingEntry[];
}

/** Record of any other part: leash, sling, connection … */
export interface PartRecord extends Beginning {
  /** Id of the rig, or its name, as in its document. */
  readonly rig: string;
  /** Id of the part, as in results: "leash", "anchorA.hardware.0", "connection.1" … */
  readonly part: string;
  readonly entries: readonly PartEntry[];
}

/** The plan for a rig while it hangs. */
export interface UsePlan {
  /** Id of the rig, or its name, as in its document. */
  readonly rig: string;
  /** Whole days within which everything of the rig is inspected again [-]; absent: nobody said. */
  readonly inspectEveryDays?: number;
  /** Falls on a webbing or part between two inspections [-]; absent: nobody said. */
  readonly falls?: number;
}

export interface WearRecord extends Climate {
  readonly name: string;
  readonly invented: boolean;
  readonly webbings: readonly WebbingRecord[];
  readonly parts: readonly PartRecord[];
  readonly plans: readonly UsePlan[];
}
