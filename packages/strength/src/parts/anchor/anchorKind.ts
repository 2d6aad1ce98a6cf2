/** The interface of every kind of an anchor's part; one file per kind, listed in `anchorKinds.ts`. */
import type { AnchorPart, AnchorSide } from "@secondline/rig";
import type { StrengthFactor } from "../../derating/factor.ts";
import type { NoteFact } from "../../noteFacts.ts";

/** A part of an anchor with its surroundings. */
export interface AnchorPlace {
  readonly part: AnchorPart;
  readonly side: AnchorSide;
  /** Path of the part in the rig document. */
  readonly at: string;
}

export interface AnchorKind {
  readonly kind: AnchorPart["kind"];
  readonly factors: (place: AnchorPlace) => StrengthFactor[];
  /** Notes on a condition that no factor of this kind uses. */
  readonly unused?: (part: AnchorPart) => readonly NoteFact[];
}
