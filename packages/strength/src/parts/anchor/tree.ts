/** A tree: nobody sees its roots. */
import { noRecord } from "../../derating/make.ts";
import type { AnchorKind } from "./anchorKind.ts";

export const tree: AnchorKind = { kind: "tree", factors: () => [noRecord("the tree")] };
