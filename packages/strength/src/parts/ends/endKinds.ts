/** The kinds of a line's end. A new kind is a file of its own and a line here. */
import type { LineEnd } from "@secondline/rig";
import type { EndKind } from "./endKind.ts";
import { knot } from "./knot.ts";
import { sewnLoop } from "./sewnLoop.ts";
import { weblock } from "./weblock.ts";

export const END_KINDS: Readonly<Record<LineEnd["kind"], EndKind>> = { weblock, sewnLoop, knot };
