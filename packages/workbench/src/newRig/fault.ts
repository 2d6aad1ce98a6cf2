/** Faults of answers, as data: the place, the kind of fault, and a value that would do, if there is such a value. */
import type { RigIssue } from "@secondline/rig";
import type { AnswerId } from "./answers.ts";

/** The answer that is at fault; `rig`: a fault of no single answer. */
export type AnswerPlace = AnswerId | "profile" | "stocks" | "rig";

export type FaultKind =
  | "yesNo"
  | "points"
  | "places"
  | "placeOutside"
  | "placesMany"
  | "spot"
  | "spotOutside"
  | "depth"
  | "shape"
  | "age";

export type NewRigFault =
  /** Told by the rig's own check, in its words. */
  | { readonly kind: "issue"; readonly place: AnswerPlace; readonly issue: RigIssue; readonly remedy?: string }
  | {
      readonly kind: FaultKind;
      readonly place: AnswerPlace;
      readonly values: Readonly<Record<string, string | number>>;
      /** A value that would do in its place. */
      readonly remedy?: string;
    };

/** An answer that is possible but unusual. It stops nobody. */
export interface AnswerDoubt {
  readonly kind: "unusual" | "tensionHigh" | "noBackup" | "wideGap" | "olderOutside";
  readonly place: AnswerPlace;
  readonly values: Readonly<Record<string, string | number>>;
}
