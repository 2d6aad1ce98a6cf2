/** What is wrong with answers, as data: the place, what it is, and where there is one a value that would do. */
import type { RigIssue } from "@secondline/rig";
import type { AnswerId } from "./answers.ts";

/** The answer that is meant; `rig`: what no single answer says. */
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

/** What can be, and seldom is: it stands in nobody's way. */
export interface AnswerDoubt {
  readonly kind: "unusual" | "tensionHigh" | "noBackup" | "wideGap" | "olderOutside";
  readonly place: AnswerPlace;
  readonly values: Readonly<Record<string, string | number>>;
}
