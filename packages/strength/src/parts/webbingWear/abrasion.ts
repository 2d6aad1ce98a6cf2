/** A place where part of the width is worn away. */
import { abrasionFactor } from "../../derating/damage.ts";
import { damageTogether, type WearKind, type WearOf } from "./wearKind.ts";

export const abrasion: WearKind<WearOf<"abrasion">> = {
  kind: "abrasion",
  title: "abrasion",
  extent: ({ from, to }) => [from, to],
  factor: ({ depth }) => abrasionFactor(depth),
  together: damageTogether,
};
