/**
 * The wear record: what happened to each metre of webbing, and to each part, with dates. Positions on a webbing are
 * natural metres from its marked end as it was when new, and stay so when it is cut.
 */
import type { PlainDate } from "../dates/calendarDate.ts";
import type { Hemisphere, LatitudeClass } from "../derating/sunDose.ts";

export type LineName = "main" | "backup";

/** Where a webbing hangs in a rig. */
export interface Placement {
  /** Name of the rig, as in its document. */
  readonly rig: string;
  readonly line: LineName;
  /** Index of the section in that line, 0 at anchor A [-]. */
  readonly section: number;
  /** The anchor towards which the marked end points. */
  readonly markedEnd: "A" | "B";
  /** Loaded span, positions on the webbing [m]. */
  readonly from: number;
  readonly to: number;
  /** Ends of the loaded span that sit in a weblock, by the anchor's side. */
  readonly clampedAt: readonly ("A" | "B")[];
  /** Share of the light that falls on it, 0 to 1 [-]. */
  readonly sun: number;
}

export type DamageKind = "abrasion" | "heat" | "cut";

/** One dated entry of a webbing. */
export type WebbingEntry = { readonly date: PlainDate } & (
  | { readonly event: "rigged"; readonly placement: Placement }
  | { readonly event: "moved"; readonly placement: Placement }
  | { readonly event: "takenDown" }
  /** Webbing pulled out of the span through the weblock at an anchor; negative when let in [m]. */
  | { readonly event: "retensioned"; readonly end: "A" | "B"; readonly pulled: number }
  | { readonly event: "falls"; readonly from: number; readonly to: number; readonly falls: number }
  | { readonly event: "shade"; readonly sun: number }
  | { readonly event: "wet"; readonly wet: boolean }
  | {
      readonly event: "damage";
      readonly kind: DamageKind;
      readonly from: number;
      readonly to: number;
      /** Share of the width [-]. */
      readonly depth: number;
    }
  | {
      readonly event: "clamped";
      /** Last day in the clamp; absent: still in it. */
      readonly until?: PlainDate;
      readonly at: number;
      readonly length: number;
      /** Load in the clamp [N]. */
      readonly load?: number;
    }
  | { readonly event: "sewn"; readonly at: number; readonly length: number }
  /** What is left of it. */
  | { readonly event: "cutToLength"; readonly from: number; readonly to: number }
);

export interface WebbingRecord {
  readonly id: string;
  readonly name: string;
  /** Length as new [m]. */
  readonly length: number;
  /** What the marked end can be told by. */
  readonly mark: string;
  readonly made?: PlainDate;
  readonly entries: readonly WebbingEntry[];
}

export type PartEntry = { readonly date: PlainDate } & (
  | { readonly event: "putUp"; readonly sun: number }
  | { readonly event: "takenDown" }
  | { readonly event: "shade"; readonly sun: number }
  | { readonly event: "wet"; readonly wet: boolean }
  | { readonly event: "falls"; readonly falls: number }
  /** A new part of the same kind takes its place, made on that date. */
  | { readonly event: "replaced" }
);

/** Record of any other part: leash, sling, connection … */
export interface PartRecord {
  /** Name of the rig, as in its document. */
  readonly rig: string;
  /** Id of the part, as in results: "leash", "anchorA.hardware.0", "connection.1" … */
  readonly part: string;
  readonly made?: PlainDate;
  readonly entries: readonly PartEntry[];
}

export interface WearRecord {
  readonly name: string;
  readonly invented: boolean;
  readonly latitude: LatitudeClass;
  readonly hemisphere: Hemisphere;
  readonly webbings: readonly WebbingRecord[];
  readonly parts: readonly PartRecord[];
}
