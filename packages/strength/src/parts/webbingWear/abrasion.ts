/** A place where part of the width is worn away. */
import { abrasionFactor } from "../../derating/damage.ts";
import type { WearKind, WearOf } from "./wearKind.ts";

export const abrasion: WearKind<WearOf<"abrasion">> = {
  kind: "abrasion",
  title: "abrasion",
  extent: ({ from, to }) => [from, to],
  factor: ({ depth }) => abrasionFactor(depth),
};
