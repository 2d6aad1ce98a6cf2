/** A seam: as sewn, and weaker the longer it hangs outside. */
import { sewingFactor } from "../../derating/sewing.ts";
import { overMonthsOutside } from "../textileCondition.ts";
import { aboutMiddle, type WearKind, type WearOf } from "./wearKind.ts";

export const stitching: WearKind<WearOf<"stitching">> = {
  kind: "stitching",
  title: "stitching",
  extent: aboutMiddle,
  factor: (_wear, { section, at }) =>
    overMonthsOutside(sewingFactor, {
      condition: section.condition,
      what: "the stitching",
      at: `${at}.condition`,
    }),
};
