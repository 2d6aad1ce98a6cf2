/** A shackle, or other metal that lies in the load's way. */
import { usedMetal } from "../../derating/make.ts";
import { unusedOnMetal } from "../unusedCondition.ts";
import type { AnchorKind } from "./anchorKind.ts";

export const shackle: AnchorKind = {
  kind: "shackle",
  factors: () => [usedMetal()],
  unused: ({ condition }) => unusedOnMetal(condition),
};
