/** Loss while wet. */
import type { Basis, Fibre } from "@secondline/rig";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

const WET_BASIS: Readonly<Record<Fibre, Basis>> = {
  polyamide: {
    kind: "published",
    note: "UFC 4-159-03 (2005), Table 6-8 note: reduce nylon lines by 15 % for wet conditions",
  },
  polyester: {
    kind: "published",
    note: "UFC 4-159-03 (2005) and a yarn table of Tension Technology International: no loss wet",
  },
  hmpe: { kind: "from memory", note: "HMPE takes up no water" },
  aramid: {
    kind: "published",
    note: "L. Orear, ribbon parachute fabrics: aramid fabric 3 to 13 % weaker wet; middle taken",
  },
};

export function wetFactor(fibre: Fibre): StrengthFactor {
  return fixedFactor({
    name: "wet",
    value: constant(`wet.${fibre}.value`),
    spread: constant(`wet.${fibre}.spread`),
    basis: WET_BASIS[fibre],
    cause: `wet ${fibre}`,
    shared: 1,
  });
}
