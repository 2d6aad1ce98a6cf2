/** The interface of every kind of wear on a webbing; one file per kind, listed in `wearKinds.ts`. */
import type { Wear, WebbingSection } from "@secondline/rig";
import type { StrengthFactor } from "../../derating/factor.ts";
import type { FactorsOf } from "../../retention/testedStock.ts";

export interface WornPlace {
  readonly section: WebbingSection;
  readonly factorsOf: FactorsOf;
  /** Path of the section in the rig document. */
  readonly at: string;
  /** Path of the wear in the rig document. */
  readonly wearAt: string;
}

/** A wear with its path in the rig document. */
export interface WrittenWear<W extends Wear = Wear> {
  readonly wear: W;
  readonly wearAt: string;
}

export interface WearKind<W extends Wear> {
  readonly kind: W["kind"];
  /** Name of the wear as the reason for a weak place. */
  readonly title: string;
  /** Extent of the wear, from the same end as the wear's own places [m]. */
  readonly extent: (wear: W) => readonly [from: number, to: number];
  readonly factor: (wear: W, place: WornPlace) => StrengthFactor;
  /** One wear that stands for several over the same metres; if absent, each counts by itself. */
  readonly together?: (worn: Several<W>) => WrittenWear<W>;
}

export type Several<W extends Wear> = readonly [WrittenWear<W>, ...WrittenWear<W>[]];

export type WearOf<K extends Wear["kind"]> = Extract<Wear, { readonly kind: K }>;

/** Joins the damage of several entries over the same metres. Their depths add, because each entry took other fibres. */
export function damageTogether<W extends Extract<Wear, { readonly depth: number }>>(worn: Several<W>): WrittenWear<W> {
  const depth = worn.reduce((sum, { wear }) => sum + wear.depth, 0);
  return { ...worn[0], wear: { ...worn[0].wear, depth } };
}

/** Extent of a wear with its middle at `at` [m]. */
export function aboutMiddle({ at, length }: { readonly at: number; readonly length: number }) {
  return [at - length / 2, at + length / 2] as const;
}
