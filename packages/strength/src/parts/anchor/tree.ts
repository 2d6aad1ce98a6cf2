/** A tree: nobody sees its roots. */
import { noRecord } from "../../derating/make.ts";
import { saysSomething } from "../unusedCondition.ts";
import type { AnchorKind } from "./anchorKind.ts";

const UNUSED_NOTE =
  "time outside, sun, age and wet, which are written for this tree, say nothing of live wood and change nothing; a doubt of the tree goes into its own factor";

export const tree: AnchorKind = {
  kind: "tree",
  factors: ({ part }) => [noRecord("the tree", saysSomething(part.condition) ? UNUSED_NOTE : undefined)],
};
