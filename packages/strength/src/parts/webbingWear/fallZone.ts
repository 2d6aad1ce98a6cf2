/** A stretch on which leash falls were caught. */
import type { WearKind, WearOf } from "./wearKind.ts";

export const fallZone: WearKind<WearOf<"fallZone">> = {
  kind: "fallZone",
  title: "fall zone",
  extent: ({ from, to }) => [from, to],
  factor: ({ falls }, { section, factorsOf }) => factorsOf(section.stock).falls(falls),
  together: (worn) => {
    const falls = worn.reduce((sum, { wear }) => sum + wear.falls, 0);
    return { ...worn[0], wear: { ...worn[0].wear, falls } };
  },
};
