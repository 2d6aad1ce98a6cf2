/**
 * Share of the rope's strength that a knotted loop holds. Static pulls of low-stretch kernmantle rope; knots in flat
 * webbing are worse and kept apart.
 */
import type { Basis, KnotKind, LineStock } from "@secondline/rig";
import { noteFact } from "../noteFacts.ts";
import { constant } from "./constantValues.ts";
import { fixedFactor, type StrengthFactor } from "./factor.ts";
import { standIn } from "./unknown.ts";

interface KnotData {
  readonly label: string;
  readonly basis: Basis;
}

const HSE = "A. Long, M. Lyon, G. Lyon, HSE Contract Research Report 364/2001, ch. 3, numbers from memory";

const ROPE_KNOTS: Readonly<Record<KnotKind, KnotData>> = {
  figureEight: {
    label: "figure-eight",
    basis: { kind: "from memory", note: `${HSE}: double figure-of-eight on a bight 61 to 77 %; low end taken` },
  },
  barrel: {
    label: "barrel",
    basis: {
      kind: "published",
      note: "P. I. Sáez et al., Symmetry 16 (2024) 167: mean 61.82 % of 90 breaks, three low-stretch ropes; spread assumed",
    },
  },
  bowline: {
    label: "bowline",
    basis: { kind: "from memory", note: `${HSE}: bowline 55 to 74 %; low end taken` },
  },
  overhand: {
    label: "overhand",
    basis: { kind: "from memory", note: `${HSE}: overhand 58 to 68 %; low end taken` },
  },
  butterfly: {
    label: "butterfly",
    basis: { kind: "from memory", note: `${HSE}: alpine butterfly 61 to 72 %; low end taken` },
  },
  doubleFisherman: {
    label: "double fisherman",
    basis: { kind: "assumed", note: "one training page says 68 % without test data; less is taken" },
  },
  waterKnot: {
    label: "water knot",
    basis: {
      kind: "assumed",
      note: "one training page says 64 % without test data; the unknown knot's value is taken",
    },
  },
  unknown: {
    label: "unknown knot",
    basis: { kind: "assumed", note: "below every loop knot in rope that is named here" },
  },
};

/** "figure-eight". */
export const ropeKnotName = (kind: KnotKind): string => ROPE_KNOTS[kind].label;

/** Factor of a knot in rope; `tie` tells two knots in one rig apart. */
export function ropeKnot(kind: KnotKind): StrengthFactor {
  const data = ROPE_KNOTS[kind];
  return fixedFactor({
    name: `knot (${data.label})`,
    value: constant(`knot.${kind}.value`),
    spread: constant(`knot.${kind}.spread`),
    basis: data.basis,
    cause: `knot ${kind} in rope`,
    shared: constant("knot.shared"),
  });
}

/** Factor of any knot in flat webbing. */
export function webbingKnot(): StrengthFactor {
  return fixedFactor({
    name: "knot in flat webbing",
    value: constant("knot.webbing.value"),
    spread: constant("knot.webbing.spread"),
    basis: {
      kind: "from memory",
      note: "Austrian slackline association, own pull tests, title and year not known: knotted flat webbing loses at least half, down to a quarter left; middle of 25 to 50 % taken",
    },
    cause: "knot in flat webbing",
    shared: constant("knot.shared"),
  });
}

/** Factor of a knot in a webbing or rope. If nobody stated which of the two it is, the worse factor counts: that of webbing. */
export function knotIn({ id, form }: Pick<LineStock, "id" | "form">, kind: KnotKind): StrengthFactor {
  if (form === undefined) {
    const why = noteFact("why.form", { id });
    return standIn(webbingKnot(), { field: "stocks[].form", best: ropeKnot(kind).value }, why);
  }
  switch (form) {
    case "rope":
      return ropeKnot(kind);
    case "webbing":
      return webbingKnot();
  }
}
