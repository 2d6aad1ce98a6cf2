/**
 * Share of the rope's strength that a knotted loop holds. Static pulls of low-stretch kernmantle rope; knots in flat
 * webbing are worse and kept apart.
 */
import type { Basis, KnotKind } from "@secondline/rig";
import { fixedFactor, type StrengthFactor } from "./factor.ts";

interface KnotData {
  readonly label: string;
  readonly value: number;
  readonly spread: number;
  readonly basis: Basis;
}

const HSE = "A. Long, M. Lyon, G. Lyon, HSE Contract Research Report 364/2001, ch. 3, numbers from memory";

const ROPE_KNOTS: Readonly<Record<KnotKind, KnotData>> = {
  figureEight: {
    label: "figure-eight",
    value: 0.61,
    spread: 0.1,
    basis: { kind: "from memory", note: `${HSE}: double figure-of-eight on a bight 61 to 77 %; low end taken` },
  },
  barrel: {
    label: "barrel",
    value: 0.618,
    spread: 0.1,
    basis: {
      kind: "published",
      note: "P. I. Sáez et al., Symmetry 16 (2024) 167: mean 61.82 % of 90 breaks, three low-stretch ropes; spread assumed",
    },
  },
  bowline: {
    label: "bowline",
    value: 0.55,
    spread: 0.1,
    basis: { kind: "from memory", note: `${HSE}: bowline 55 to 74 %; low end taken` },
  },
  overhand: {
    label: "overhand",
    value: 0.58,
    spread: 0.12,
    basis: { kind: "from memory", note: `${HSE}: overhand 58 to 68 %; low end taken` },
  },
  butterfly: {
    label: "butterfly",
    value: 0.61,
    spread: 0.1,
    basis: { kind: "from memory", note: `${HSE}: alpine butterfly 61 to 72 %; low end taken` },
  },
  doubleFisherman: {
    label: "double fisherman",
    value: 0.6,
    spread: 0.12,
    basis: { kind: "assumed", note: "one training page says 68 % without test data; less is taken" },
  },
  waterKnot: {
    label: "water knot",
    value: 0.5,
    spread: 0.2,
    basis: {
      kind: "assumed",
      note: "one training page says 64 % without test data; the unknown knot's value is taken",
    },
  },
  unknown: {
    label: "unknown knot",
    value: 0.5,
    spread: 0.2,
    basis: { kind: "assumed", note: "below every published loop knot in rope" },
  },
};

/** Factor of a knot in rope; `tie` tells two knots in one rig apart. */
export function ropeKnot(kind: KnotKind): StrengthFactor {
  const data = ROPE_KNOTS[kind];
  return fixedFactor({
    name: `knot (${data.label})`,
    value: data.value,
    spread: data.spread,
    basis: data.basis,
    cause: `knot ${kind} in rope`,
    shared: 0.5,
  });
}

/** Factor of any knot in flat webbing. */
export function webbingKnot(): StrengthFactor {
  return fixedFactor({
    name: "knot in flat webbing",
    value: 0.375,
    spread: 0.25,
    basis: {
      kind: "published",
      note: "Austrian slackline association, own pull tests: knotted flat webbing loses at least half, down to a quarter left; middle of 25 to 50 % taken",
    },
    cause: "knot in flat webbing",
    shared: 0.5,
  });
}
