/** Groups things by the family of their event. Events of one family differ by places and moments alone. */
import { spaceOf, type WhatIf } from "../events/registry.ts";

export interface InFamily<T> {
  readonly one: T;
  /** Coordinates of its event. */
  readonly at: readonly number[];
}

/** A thing whose event stands alone is in no family. */
export function familiesOf<T>(ones: readonly T[], eventOf: (one: T) => WhatIf): readonly (readonly InFamily<T>[])[] {
  const families = new Map<string, InFamily<T>[]>();
  for (const one of ones) {
    const space = spaceOf(eventOf(one));
    if (!space) continue;
    const family = families.get(space.family) ?? [];
    family.push({ one, at: space.coordinates });
    families.set(space.family, family);
  }
  return [...families.values()];
}
