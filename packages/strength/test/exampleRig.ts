/** An invented rig for the tests of this package. */
import type { Basis, Condition, LineEnd, LineStock, Rated, Rig, WebbingSection } from "@secondline/rig";

export const invented: Basis = { kind: "assumed", note: "invented for a test" };
export const rated = (strength: number): Rated => ({ strength, basis: invented });

export const polyesterWebbing: LineStock = {
  id: "pes",
  name: "polyester webbing",
  fibre: "polyester",
  form: "webbing",
  mass: 0.06,
  width: 0.025,
  curve: [
    [0, 0],
    [0.04, 6000],
  ],
  branches: [],
  rated: rated(30000),
  basis: invented,
};
export const leashRope: LineStock = {
  ...polyesterWebbing,
  id: "rope",
  name: "rope",
  fibre: "polyamide",
  form: "rope",
  rated: rated(22000),
};

/** A condition without a blank, because a blank counts as the worst possible value. */
export const asNew: Condition = { monthsOutside: 0, ageYears: 0, wet: false };

export function section(given: Partial<WebbingSection> = {}): WebbingSection {
  return { stock: polyesterWebbing, condition: asNew, wear: [], ...given };
}

const weblock: LineEnd = { kind: "weblock", rated: rated(35000), monthsClamped: 0, bend: 8 };

export function exampleRig(given: Partial<Rig> = {}): Rig {
  const anchor = {
    points: [
      { name: "bolt 1", kind: "bolt" as const, rated: rated(25000), pullAngle: Math.PI / 2, condition: {} },
      { name: "bolt 2", kind: "bolt" as const, rated: rated(25000), pullAngle: Math.PI / 2, condition: {} },
    ],
    hardware: [
      { name: "sling", kind: "sling" as const, rated: rated(40000), rigged: "straight" as const, condition: asNew },
    ],
    legAngle: 0.8,
    legLength: 1,
  };
  return {
    version: 1,
    name: "test rig",
    notes: "",
    invented: true,
    span: 60,
    rise: 0,
    ground: [],
    requiredAfterFailure: 1.5,
    requiredClearance: 1,
    anchorA: anchor,
    anchorB: anchor,
    main: { pretension: 2500, sections: [section()], endA: weblock, endB: weblock },
    backup: {
      slack: 0.05,
      sections: [section()],
      endA: weblock,
      endB: { kind: "sewnLoop", rated: rated(24000), bend: 8 },
      connections: [
        { at: 0.5, kind: "connection", rated: rated(15000), condition: asNew },
        { at: 0.25, kind: "tape", rated: rated(400), condition: asNew },
      ],
    },
    rings: [{ name: "ring", mass: 0.1, clearance: 0.025, friction: 0.15, rated: rated(40000) }],
    leash: {
      stock: leashRope,
      length: 1.4,
      knots: [
        { kind: "barrel", where: "ring" },
        { kind: "figureEight", where: "harness" },
      ],
      condition: asNew,
      falls: 0,
      sheathSlip: 0,
      glazed: 0,
    },
    harness: { rated: rated(15000), condition: asNew },
    walker: { mass: 80, tieIn: 1, lateral: 0.3 },
    requiredFactor: { value: 2, basis: invented },
    ...given,
  };
}
