/** Scatter between new parts of one make, and what stands in when nothing is known of a part. */
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

/** What stands in for what nobody knows of a part: central value and spread [-]. */
export const UNKNOWN_VALUE = constant("unknown.value");
export const UNKNOWN_SPREAD = constant("unknown.spread");

/** Cautious factor for a part whose kind says nothing of what weakens it; `why` where there is more to say. */
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
