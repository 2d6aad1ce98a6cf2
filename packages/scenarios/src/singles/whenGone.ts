/** What is left to carry the walker when one part is absent, cut, or wrongly closed: by how the rig is built up, before any run. */
import {
  type AnchorName,
  type AnchorPart,
  type AnchorSide,
  isTape,
  type PartId,
  partRef,
  type Rig,
} from "@secondline/rig";

/** What carries the walker when a part has gone. */
export type Remaining = "nothing" | "main" | "backup" | "bothLines" | "otherPoints" | "otherRings";

/** How a part can come to carry nothing. */
export type Absence = "absent" | "cut" | "wronglyClosed" | "pulledOut" | "untied";

export interface WhenGone {
  readonly leaves: Remaining;
  readonly ways: readonly Absence[];
  /** The end of a line that is lost with the part; of both lines when both hang on it. */
  readonly loses?: { readonly line: "main" | "backup" | "both"; readonly end: AnchorName };
}

export const anchorSide = (rig: Rig, anchor: AnchorName): AnchorSide => (anchor === "A" ? rig.anchorA : rig.anchorB);

/** Which line hangs on a part of an anchor; where nothing is said, both do. */
export const carriedBy = (part: AnchorPart): "main" | "backup" | "both" => part.carries ?? "both";

const LINE_WAYS: readonly Absence[] = ["cut"];
const END_WAYS: Readonly<Record<"weblock" | "sewnLoop" | "knot", readonly Absence[]>> = {
  weblock: ["wronglyClosed", "absent"],
  sewnLoop: ["cut", "absent"],
  knot: ["untied"],
};
const ANCHOR_WAYS: Readonly<Record<AnchorPart["kind"], readonly Absence[]>> = {
  bolt: ["pulledOut"],
  tree: ["pulledOut"],
  sling: ["cut", "absent"],
  shackle: ["wronglyClosed", "absent"],
  other: ["absent"],
};

/** Undefined when the rig has no such part, or when it is a tape, which is made to part. */
export function whenGone(rig: Rig, id: PartId): WhenGone | undefined {
  const ref = partRef(id);
  if (!ref || isTape(rig, id)) return undefined;
  const other = (line: "main" | "backup"): Remaining =>
    line === "backup" ? "main" : rig.backup ? "backup" : "nothing";
  switch (ref.kind) {
    case "harness":
      return { leaves: "nothing", ways: ["wronglyClosed"] };
    case "leash":
      return { leaves: "nothing", ways: ["cut", "untied"] };
    case "ring":
      if (!rig.rings[ref.index]) return undefined;
      return { leaves: rig.rings.length > 1 ? "otherRings" : "nothing", ways: ["absent", "wronglyClosed"] };
    case "webbing":
      return rig[ref.line] && { leaves: other(ref.line), ways: LINE_WAYS };
    case "connection":
      return rig.backup?.connections[ref.index] && { leaves: "bothLines", ways: ["absent", "cut"] };
    case "end": {
      const end = rig[ref.line]?.[`end${ref.end}`];
      return end && { leaves: other(ref.line), ways: END_WAYS[end.kind], loses: { line: ref.line, end: ref.end } };
    }
    case "hardware": {
      const part = anchorSide(rig, ref.anchor).hardware[ref.index];
      if (!part) return undefined;
      const line = carriedBy(part);
      const leaves = line === "both" ? "nothing" : other(line);
      return { leaves, ways: ANCHOR_WAYS[part.kind], loses: { line, end: ref.anchor } };
    }
    case "point": {
      const { points } = anchorSide(rig, ref.anchor);
      const part = points[ref.index];
      if (!part) return undefined;
      const ways = ANCHOR_WAYS[part.kind];
      return points.length > 1
        ? { leaves: "otherPoints", ways }
        : { leaves: "nothing", ways, loses: { line: "both", end: ref.anchor } };
    }
  }
}
