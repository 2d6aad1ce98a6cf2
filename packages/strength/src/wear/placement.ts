/** Place of a webbing in a rig. */
import type { AnchorName, LineName } from "@secondline/rig";
import * as z from "zod";
import { force, position, quantity, share, side, text } from "./values.ts";

export interface Placement {
  /** Id of the rig, or its name, as in its document. */
  readonly rig: string;
  readonly line: LineName;
  /** Index of the section in that line, 0 at anchor A [-]. */
  readonly section: number;
  /** The anchor towards which the marked end points. */
  readonly markedEnd: AnchorName;
  /** Loaded span, positions on the webbing [m]. */
  readonly from: number;
  readonly to: number;
  /** Ends of the loaded span that sit in a weblock, by the anchor's side. */
  readonly clampedAt: readonly AnchorName[];
  /** True when the record does not say which ends sit in a weblock: then both are counted. */
  readonly clampsAssumed?: true;
  /** Share of the light that falls on it, 0 to 1 [-]. */
  readonly sun: number;
  /** True when the record does not say how much light falls on it: then all of it is counted. */
  readonly sunAssumed?: true;
  /** Tension of the webbing; absent if it is not written down [N]. */
  readonly tension?: number;
}

export const placementShape = {
  rig: text,
  line: z.enum(["main", "backup"]),
  section: quantity("count", 0, 49, ["0", "49"]).optional(),
  markedEnd: side,
  from: position,
  to: position,
  clampedAt: z.array(side).max(2).optional(),
  sun: share.optional(),
  tension: force.optional(),
};

type Written = z.output<z.ZodObject<typeof placementShape>>;

export function readPlacement({ section, clampedAt, sun, tension, ...place }: Written): Placement {
  return {
    ...place,
    section: section ?? 0,
    // If the record does not mention clamps, both ends may have sat in one.
    ...(clampedAt === undefined ? { clampedAt: ["A", "B"], clampsAssumed: true } : { clampedAt }),
    // If the record does not mention shade, the webbing hung in full light.
    ...(sun === undefined ? { sun: 1, sunAssumed: true } : { sun }),
    ...(tension === undefined ? {} : { tension }),
  };
}

/** Position on the webbing at an anchor's end of its loaded span [m from the marked end]. */
export function endPosition(placement: Pick<Placement, "markedEnd" | "from" | "to">, end: AnchorName): number {
  return placement.markedEnd === end ? placement.from : placement.to;
}

/** The placement after webbing was pulled out of the span through the weblock at an end; negative when let in [m]. */
export function pulledPlacement<P extends Placement>(placement: P, end: AnchorName, pulled: number): P {
  return placement.markedEnd === end
    ? { ...placement, from: placement.from + pulled }
    : { ...placement, to: placement.to - pulled };
}
