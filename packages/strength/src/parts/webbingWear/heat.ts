/** A place that heat has glazed. */
import { heatFactor } from "../../derating/rope.ts";
import { damageTogether, type WearKind, type WearOf } from "./wearKind.ts";

export const heat: WearKind<WearOf<"heat">> = {
  kind: "heat",
  title: "glazed place",
  extent: ({ from, to }) => [from, to],
  factor: ({ depth }) => heatFactor(depth),
  together: damageTogether,
};
