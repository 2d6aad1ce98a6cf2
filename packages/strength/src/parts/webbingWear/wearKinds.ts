/** The kinds of wear on a webbing. A new kind is a file of its own and a line here. */
import type { Wear } from "@secondline/rig";
import type { StrengthFactor } from "../../derating/factor.ts";
import { abrasion } from "./abrasion.ts";
import { clampMark } from "./clampMark.ts";
import { cut } from "./cut.ts";
import { fallZone } from "./fallZone.ts";
import { heat } from "./heat.ts";
import { stitching } from "./stitching.ts";
import type { Several, WearKind, WearOf, WornPlace, WrittenWear } from "./wearKind.ts";

const WEAR_KINDS: { readonly [K in Wear["kind"]]: WearKind<WearOf<K>> } = {
  clampMark,
  fallZone,
  stitching,
  abrasion,
  heat,
  cut,
};

/** The table knows each kind by its name; the compiler does not see that the two belong together. */
const kindOf = (wear: Wear) => WEAR_KINDS[wear.kind] as unknown as WearKind<Wear>;

/** Extent of a wear, from the A end of its section [m]. Clamp marks and stitching are centred on `at`. */
export function wearExtent(wear: Wear): readonly [from: number, to: number] {
  return kindOf(wear).extent(wear);
}

export function wearFactor(wear: Wear, place: WornPlace): StrengthFactor {
  return kindOf(wear).factor(wear, place);
}

/** Wears over the same metres, those of one kind as one: two halves of a wear weaken no less than the whole. */
export function addedUp(worn: readonly WrittenWear[]): readonly WrittenWear[] {
  const kinds = new Set(worn.map(({ wear }) => wear.kind));
  return [...kinds].flatMap((kind) => {
    const ofKind = worn.filter(({ wear }) => wear.kind === kind);
    const { together } = WEAR_KINDS[kind] as unknown as WearKind<Wear>;
    return together === undefined || ofKind.length === 1 ? ofKind : [together(ofKind as unknown as Several<Wear>)];
  });
}

export function wearTitle(wear: Wear): string {
  return kindOf(wear).title;
}
