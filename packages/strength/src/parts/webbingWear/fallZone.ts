/** A stretch on which leash falls were caught. */
import type { WearKind, WearOf } from "./wearKind.ts";

export const fallZone: WearKind<WearOf<"fallZone">> = {
  kind: "fallZone",
  title: "fall zone",
  extent: ({ from, to }) => [from, to],
  factor: ({ falls }, { section, factorsOf }) => factorsOf(section.stock).falls(falls),
};
