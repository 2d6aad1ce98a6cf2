/** Loss while wet. */
import type { Basis, Fibre } from "@secondline/rig";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

const WET: Readonly<Record<Fibre, { readonly value: number; readonly spread: number; readonly basis: Basis }>> = {
  polyamide: {
    value: 0.85,
    spread: 0.04,
    basis: {
      kind: "published",
      note: "UFC 4-159-03 (2005), Table 6-8 note: reduce nylon lines by 15 % for wet conditions",
    },
  },
  polyester: {
    value: 1,
    spread: 0.02,
    basis: {
      kind: "published",
      note: "UFC 4-159-03 (2005) and a yarn table of Tension Technology International: no loss wet",
    },
  },
  hmpe: { value: 1, spread: 0.03, basis: { kind: "from memory", note: "HMPE takes up no water" } },
  aramid: {
    value: 0.92,
    spread: 0.04,
    basis: {
      kind: "published",
      note: "L. Orear, ribbon parachute fabrics: aramid fabric 3 to 13 % weaker wet; middle taken",
    },
  },
};

export function wetFactor(fibre: Fibre): StrengthFactor {
  return fixedFactor({ name: "wet", ...WET[fibre], cause: `wet ${fibre}`, shared: 1 });
}
