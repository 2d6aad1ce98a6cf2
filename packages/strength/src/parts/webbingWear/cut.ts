/** A cut across part of the width. */
import { constant } from "../../derating/constantValues.ts";
import { cutFactor } from "../../derating/damage.ts";
import { damageTogether, type WearKind, type WearOf } from "./wearKind.ts";

export const cut: WearKind<WearOf<"cut">> = {
  kind: "cut",
  title: "cut",
  extent: ({ at }) => [at - constant("place.cutReach"), at + constant("place.cutReach")],
  factor: ({ depth }) => cutFactor(depth),
  together: damageTogether,
};
