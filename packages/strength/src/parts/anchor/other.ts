/**
 * A part of another kind, of which only the strength is known. It may be textile, so its condition counts like that of a sling,
 * on top of the cautious factor.
 */
import { noRecord } from "../../derating/make.ts";
import { conditionFactors } from "../textileCondition.ts";
import type { AnchorKind } from "./anchorKind.ts";

export const other: AnchorKind = {
  kind: "other",
  factors: ({ part, at }) => [
    noRecord("the part"),
    ...conditionFactors({
      condition: part.condition,
      fibre: "polyamide",
      what: "the part",
      at: `${at}.condition`,
    }),
  ],
};
