/** Something else, of which only the strength is known. */
import { noRecord } from "../../derating/make.ts";
import type { AnchorKind } from "./anchorKind.ts";

export const other: AnchorKind = { kind: "other", factors: () => [noRecord("the part")] };
