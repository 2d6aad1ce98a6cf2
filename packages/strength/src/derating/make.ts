/** Scatter between new parts of one make, and the factors of parts about which nothing is known. */
import type { Basis } from "@secondline/rig";
import { noteFact } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

const TEXTILE_BASIS: Basis = {
  kind: "assumed",
  note: "new textile parts scatter by about 5 % around the rated strength",
};
const METAL_BASIS: Basis = {
  kind: "assumed",
  note: "metal parts scatter by about 5 %; wear and dents cost about as much",
};

export function textileMake(stock: string): StrengthFactor {
  return fixedFactor({
    name: "make",
    value: 1,
    spread: constant("make.textile.spread"),
    basis: TEXTILE_BASIS,
    cause: `make of ${stock}`,
    shared: constant("make.textile.shared"),
  });
}

export function usedMetal(): StrengthFactor {
  return fixedFactor({
    name: "used metal",
    value: constant("make.metal.value"),
    spread: constant("make.metal.spread"),
    basis: METAL_BASIS,
  });
}

/** Placement, rock and ageing of a bolt, as far as anyone can say unseen. */
export function boltPlacement(): StrengthFactor {
  return fixedFactor({
    name: "rock and placement",
    value: constant("bolt.placement.value"),
    spread: constant("bolt.placement.spread"),
    basis: {
      kind: "assumed",
      note: "a bolt holds its rating only in sound rock and well placed; the numbers are assumed",
    },
  });
}

/** Central value and spread of the factor for a part about which nothing is known [-]. */
export const UNKNOWN_VALUE = constant("unknown.value");
export const UNKNOWN_SPREAD = constant("unknown.spread");

/** Cautious factor for a part whose kind does not tell what weakens it; `why`: a further reason. */
export function noRecord(what: string, why?: string): StrengthFactor {
  return fixedFactor({
    name: "no record",
    value: UNKNOWN_VALUE,
    spread: UNKNOWN_SPREAD,
    basis: {
      kind: "assumed",
      note:
        why === undefined
          ? noteFact("basis.noRecord", { what: { brought: what } })
          : noteFact("basis.noRecordBecause", { why: { brought: why } }),
    },
    noData: true,
  });
}
