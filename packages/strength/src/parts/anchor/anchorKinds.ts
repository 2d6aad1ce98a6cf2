/** The kinds of an anchor's parts. A new kind is a file of its own and a line here. */
import type { AnchorPart } from "@secondline/rig";
import type { AnchorKind } from "./anchorKind.ts";
import { bolt } from "./bolt.ts";
import { other } from "./other.ts";
import { shackle } from "./shackle.ts";
import { sling } from "./sling.ts";
import { tree } from "./tree.ts";

export const ANCHOR_KINDS: Readonly<Record<AnchorPart["kind"], AnchorKind>> = { bolt, sling, shackle, tree, other };
