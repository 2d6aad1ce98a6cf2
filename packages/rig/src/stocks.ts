/**
 * Generic webbings and ropes, so that a rig can be written without a data sheet. They are no maker's products. Strengths
 * and curves are of a plausible size, not measured: where they can be held against a published figure, the note says so.
 */
import type { Basis, LineStock } from "./rig.ts";

const assumed = (note: string): Basis => ({ kind: "assumed", note });

/** Relaxation times a decade apart: nearly the same loss at every speed from a twang to a slow sway [s]. */
const RELAXATION_TIMES = [0.003, 0.03, 0.3, 3] as const;
const branches = (stiffness: number): LineStock["branches"] =>
  RELAXATION_TIMES.map((time) => [stiffness, time] as const);

const YARN_SOURCE = "yarn strength from a consultant's published table of synthetic fibre yarns";
const DAMPING_SOURCE = "branches chosen so that a fast pull is stiffer than a slow one; no measurement behind them";

const STOCK_LIST: readonly LineStock[] = [
  {
    id: "polyester-webbing-25",
    name: "Polyester webbing 25 mm",
    fibre: "polyester",
    form: "webbing",
    mass: 0.06,
    width: 0.025,
    curve: [
      [0, 0],
      [0.04, 6000],
    ],
    branches: branches(15000),
    rated: { strength: 30000, basis: assumed(`60 % of 60 ktex × 0.84 N/tex (${YARN_SOURCE}); not a maker's figure`) },
    basis: assumed(`6 kN at 4 %, of the usual size for flat low-stretch webbing; ${DAMPING_SOURCE}`),
  },
  {
    id: "polyester-webbing-25-light",
    name: "Polyester webbing 25 mm, light",
    fibre: "polyester",
    form: "webbing",
    mass: 0.045,
    width: 0.025,
    curve: [
      [0, 0],
      [0.055, 6000],
    ],
    branches: branches(11000),
    rated: { strength: 22000, basis: assumed(`58 % of 45 ktex × 0.84 N/tex (${YARN_SOURCE}); not a maker's figure`) },
    basis: assumed(`6 kN at 5.5 %, scaled from the heavier webbing by mass; ${DAMPING_SOURCE}`),
  },
  {
    id: "polyamide-webbing-25",
    name: "Polyamide webbing 25 mm",
    fibre: "polyamide",
    form: "webbing",
    mass: 0.065,
    width: 0.025,
    curve: [
      [0, 0],
      [0.133333, 6000],
    ],
    branches: branches(5400),
    rated: { strength: 27000, basis: assumed(`49 % of 65 ktex × 0.84 N/tex (${YARN_SOURCE}); not a maker's figure`) },
    basis: assumed(`6 kN at 13.3 %, of the usual size for stretchy webbing; ${DAMPING_SOURCE}`),
  },
  {
    id: "hmpe-webbing-25",
    name: "HMPE webbing 25 mm",
    fibre: "hmpe",
    form: "webbing",
    mass: 0.04,
    width: 0.025,
    curve: [
      [0, 0],
      [0.01, 6000],
    ],
    branches: branches(24000),
    rated: { strength: 40000, basis: assumed(`38 % of 40 ktex × 2.65 N/tex (${YARN_SOURCE}); not a maker's figure`) },
    basis: assumed(`6 kN at 1 %, of the usual size for high-modulus webbing; ${DAMPING_SOURCE}`),
  },
  {
    id: "aramid-webbing-25",
    name: "Aramid webbing 25 mm",
    fibre: "aramid",
    form: "webbing",
    mass: 0.05,
    width: 0.025,
    curve: [
      [0, 0],
      [0.012, 6000],
    ],
    branches: branches(20000),
    rated: { strength: 40000, basis: assumed(`39 % of 50 ktex × 2.03 N/tex (${YARN_SOURCE}); not a maker's figure`) },
    basis: assumed(`6 kN at 1.2 %, a little softer than HMPE; ${DAMPING_SOURCE}`),
  },
  {
    id: "low-stretch-rope-11",
    name: "Low-stretch rope 11 mm",
    fibre: "polyamide",
    form: "rope",
    mass: 0.075,
    width: 0.011,
    curve: [
      [0, 0],
      [0.24, 6000],
    ],
    branches: branches(6000),
    rated: {
      strength: 22000,
      basis: {
        kind: "from memory",
        note: "EN 1891:1998, type A, static strength at least 22 kN; seen second hand, in a rope-access manual",
      },
    },
    basis: assumed(`25 kN per unit stretch; EN 1891 asks for at least 19.6 (5 % from 50 to 150 kg); ${DAMPING_SOURCE}`),
  },
  {
    id: "dynamic-rope-10",
    name: "Dynamic rope 10 mm",
    fibre: "polyamide",
    form: "rope",
    mass: 0.08,
    width: 0.01,
    curve: [
      [0, 0],
      [0.3, 6000],
    ],
    branches: branches(4000),
    rated: { strength: 20000, basis: assumed("EN 892 states no static strength; of the usual size for a single rope") },
    basis: assumed(
      `6 kN at 30 %: about 8.3 kN in the standard fall by the impact-force equation, below the 12 kN of EN 892; ${DAMPING_SOURCE}`,
    ),
  },
  {
    id: "dynamic-rope-9",
    name: "Dynamic rope 9 mm",
    fibre: "polyamide",
    form: "rope",
    mass: 0.055,
    width: 0.009,
    curve: [
      [0, 0],
      [0.33, 6000],
    ],
    branches: branches(3600),
    rated: {
      strength: 16000,
      basis: assumed("EN 892 states no static strength; of the usual size for a thin single rope"),
    },
    basis: assumed(
      `6 kN at 33 %: about 7.9 kN in the standard fall by the impact-force equation, below the 12 kN of EN 892; ${DAMPING_SOURCE}`,
    ),
  },
];

/** The built-in webbings and ropes by id. */
export const GENERIC_STOCKS: ReadonlyMap<string, LineStock> = new Map(STOCK_LIST.map((stock) => [stock.id, stock]));
