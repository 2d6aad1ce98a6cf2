/** A plain rig for tests: 60 m of polyester, a connected low-stretch backup, everything new. All numbers invented. */
import { GENERIC_STOCKS, type LineStock, type Rig } from "@secondline/rig";

const stock = (id: string): LineStock => {
  const found = GENERIC_STOCKS.get(id);
  if (!found) throw new Error(`There is no generic stock ${id}: ${[...GENERIC_STOCKS.keys()].join(", ")}`);
  return found;
};
const basis = { kind: "assumed", note: "test" } as const;
const rated = (strength: number) => ({ strength, basis });
/** Nothing left blank: what is not written down counts as the worst that it can be. */
const asNew = { monthsOutside: 0, ageYears: 0, wet: false };
const across = Math.PI / 2;

const side: Rig["anchorA"] = {
  points: [
    { name: "Bolt 1", kind: "bolt", rated: rated(40_000), pullAngle: across, condition: asNew },
    { name: "Bolt 2", kind: "bolt", rated: rated(40_000), pullAngle: across, condition: asNew },
  ],
  hardware: [{ name: "Shackle", kind: "shackle", rated: rated(60_000), condition: asNew }],
  legAngle: Math.PI / 3,
  legLength: 1,
};

export const testRig: Rig = {
  version: 1,
  name: "Test rig",
  notes: "",
  invented: true,
  span: 60,
  rise: 0,
  ground: [
    [0, -40],
    [60, -40],
  ],
  anchorA: side,
  anchorB: side,
  main: {
    pretension: 2500,
    sections: [{ stock: stock("polyester-webbing-25"), condition: asNew, wear: [] }],
    endA: { kind: "weblock", rated: rated(40_000), monthsClamped: 0, bend: 8 },
    endB: { kind: "weblock", rated: rated(40_000), monthsClamped: 0, bend: 8 },
  },
  backup: {
    slack: 0.05,
    sections: [{ stock: stock("polyester-webbing-25"), condition: asNew, wear: [] }],
    endA: { kind: "sewnLoop", rated: rated(30_000), bend: 8 },
    endB: { kind: "sewnLoop", rated: rated(30_000), bend: 8 },
    connections: [
      { at: 0.25, kind: "tape", rated: rated(350), condition: asNew },
      { at: 0.5, kind: "connection", rated: rated(20_000), condition: asNew },
      { at: 0.75, kind: "tape", rated: rated(350), condition: asNew },
    ],
  },
  rings: [{ name: "Ring", mass: 0.1, clearance: 0.025, friction: 0.15, rated: rated(40_000) }],
  leash: {
    stock: stock("dynamic-rope-10"),
    length: 1.4,
    knots: [
      { kind: "figureEight", where: "ring" },
      { kind: "figureEight", where: "harness" },
    ],
    condition: asNew,
    falls: 0,
    sheathSlip: 0,
    glazed: 0,
  },
  harness: { rated: rated(15_000), condition: asNew },
  walker: { mass: 80, tieIn: 1, lateral: 0.3 },
  requiredAfterFailure: 1.5,
  requiredClearance: 1,
  requiredFactor: { value: 2, basis: { kind: "common practice", note: "no source" } },
};
