/**
 * The engine against a general-purpose integrator: ODEX of E. Hairer and G. Wanner (extrapolation of variable order; Hairer,
 * Nørsett & Wanner, Solving Ordinary Differential Equations I, 1993, ch. II.9) in its npm port. It solves the same equations,
 * written down anew here as dq/dt, from the same start, to twelve digits. And both against a closed form.
 */
import { BareLine, GRAVITY, type Material } from "@secondline/engine";
import { Outcome, Solver } from "odex";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { close } from "../support/close.ts";

const { check, keeps } = evidence("secondOpinion");

/** A line between two fixed points with a mass on one of its nodes; motion in the vertical plane. */
interface Case {
  readonly material: Material;
  readonly length: number;
  readonly span: number;
  readonly elements: number;
  readonly node: number;
  readonly mass: number;
  /** Velocity of the node with the mass at the start [m/s]. */
  readonly kick: readonly [number, number];
  readonly weightless?: boolean;
}

/** Right-hand side: x, z, vx, vz of every inner node, then the tension of every branch of every element. */
function rightHandSide({ material, length, span, elements, node, mass, weightless }: Case) {
  const fall = weightless ? 0 : GRAVITY;
  const inner = elements - 1;
  const piece = length / elements;
  const stiffness = material.curve[1]![1] / material.curve[1]![0];
  const branches = material.branches;
  const at = (y: readonly number[], i: number, c: number) =>
    i === 0 ? 0 : i === elements ? (c === 0 ? span : 0) : y[2 * (i - 1) + c]!;
  const speed = (y: readonly number[], i: number, c: number) =>
    i === 0 || i === elements ? 0 : y[2 * inner + 2 * (i - 1) + c]!;
  return (_t: number, y: readonly number[]) => {
    const out = new Array<number>(y.length).fill(0);
    for (let i = 1; i <= inner; i++) {
      for (let c = 0; c < 2; c++) out[2 * (i - 1) + c] = speed(y, i, c);
      out[2 * inner + 2 * (i - 1) + 1] = -fall;
    }
    for (let e = 0; e < elements; e++) {
      const d = [0, 1].map((c) => at(y, e + 1, c) - at(y, e, c));
      const now = Math.hypot(d[0]!, d[1]!);
      const strain = now / piece - 1;
      const rate = [0, 1].reduce((sum, c) => sum + (d[c]! / now) * (speed(y, e + 1, c) - speed(y, e, c)), 0) / piece;
      let tension = stiffness * strain;
      for (const [b, [E, tau]] of branches.entries()) {
        const k = 4 * inner + e * branches.length + b;
        tension += y[k]!;
        out[k] = E * rate - y[k]! / tau;
      }
      if (strain <= 0 || tension < 0) throw new Error("this comparison is for a line that stays taut");
      for (const [i, sign] of [
        [e, 1],
        [e + 1, -1],
      ] as const) {
        if (i === 0 || i === elements) continue;
        const m = material.mass * piece + (i === node ? mass : 0);
        for (let c = 0; c < 2; c++) {
          const V = 2 * inner + 2 * (i - 1) + c;
          out[V] = out[V]! + (sign * tension * d[c]!) / now / m;
        }
      }
    }
    return out;
  };
}

function byOdex(problem: Case, until: number): readonly number[] {
  const { elements, span, node, kick, material } = problem;
  const inner = elements - 1;
  const y = new Array<number>(4 * inner + elements * material.branches.length).fill(0);
  for (let i = 1; i <= inner; i++) y[2 * (i - 1)] = (span * i) / elements;
  for (let c = 0; c < 2; c++) y[2 * inner + 2 * (node - 1) + c] = kick[c]!;
  const solver = new Solver(y.length);
  solver.relativeTolerance = solver.absoluteTolerance = 1e-12;
  solver.maxSteps = 1_000_000;
  const { y: end, outcome } = solver.solve(rightHandSide(problem), 0, y, until);
  expect(outcome).toBe(Outcome.Converged);
  return end;
}

function byEngine(problem: Case, until: number, steps: number): { x: number; z: number; line: BareLine } {
  const { material, length, span, elements, node, mass, kick, weightless } = problem;
  const line = new BareLine({
    weightless: weightless ?? false,
    make: { material },
    length,
    elements,
    masses: [{ node, mass }],
    step: until / steps,
  });
  line.lay([0, 0, 0], [span, 0, 0]);
  for (let i = 1; i < elements; i++) {
    const [vx, vz] = i === node ? kick : [0, 0];
    // The scheme keeps velocities half a step before: from rest, gravity has then not pulled for half a step.
    line.push(i, [vx, 0, vz + (weightless ? 0 : 0.5 * GRAVITY * line.step)]);
  }
  line.advance(steps);
  const [x, , z] = line.position(node);
  return { x, z, line };
}

const WEBBING: Material = {
  mass: 0.06,
  curve: [
    [0, 0],
    [0.04, 6000],
  ],
  branches: [
    [15_000, 0.003],
    [15_000, 0.03],
    [15_000, 0.3],
    [15_000, 3],
  ],
};

describe("a general-purpose integrator on the same right-hand side", () => {
  const problem: Case = {
    material: WEBBING,
    length: 10,
    span: 10.3,
    elements: 8,
    node: 3,
    mass: 40,
    kick: [0.4, -3],
  };
  const until = 0.4;
  const reference = byOdex(problem, until);
  const [x, z] = [reference[2 * (problem.node - 1)]!, reference[2 * (problem.node - 1) + 1]!];

  it("is itself sure of where the mass is", () => {
    expect(z).toBeLessThan(-0.3);
    expect(Math.abs(x - 3.86)).toBeLessThan(0.3);
  });

  it("puts a mass thrown on a line of four Maxwell branches where the engine does, to 1e-7 m", () => {
    const [coarse, fine] = [16_000, 32_000].map((steps) => byEngine(problem, until, steps));
    // Second order in the step: the extrapolated position has no step left in it.
    for (const [name, value] of [
      ["x", x],
      ["z", z],
    ] as const) {
      const extrapolated = (4 * fine![name] - coarse![name]) / 3;
      check({
        source: "odex",
        quantity: `${name} of a mass thrown on a line of four Maxwell branches`,
        unit: "m",
        pairs: [[extrapolated, value]],
        within: 1e-7,
        why: "extrapolated to no step; ODEX at 1e-12",
      });
      close(fine![name] - value, 0, 2e-5, "metres; steps of 12.5 µs");
    }
  });

  it("and both agree with the closed form of a mass on a damped spring", () => {
    // Two elements without weight, the mass between them: along the line a standard linear solid with a mass on it.
    const [E, tau, mass] = [30_000, 0.05, 40];
    const two: Case = {
      material: {
        mass: 1e-6,
        curve: [
          [0, 0],
          [1, 60_000],
        ],
        branches: [[E, tau]],
      },
      length: 10,
      span: 10.5,
      elements: 2,
      node: 1,
      mass,
      kick: [0.5, 0],
      weightless: true,
    };
    const along = byOdex(two, until)[0]! - 5.25;
    // m·u'' = −k·u − q, q' = e·u' − q/τ with k = 2·60000/5 and e = 2·E/5: three exponentials, summed by a power series.
    const [k, e] = [(2 * 60_000) / 5, (2 * E) / 5];
    let state = [0, 0.5, 0];
    const pieces = 40;
    for (let p = 0; p < pieces; p++) {
      let term = state;
      let sum = [...state];
      for (let n = 1; n < 60; n++) {
        const [u, v, q] = term as [number, number, number];
        const h = until / pieces / n;
        term = [h * v, (h * (-k * u - q)) / mass, h * (e * v - q / tau)];
        sum = sum.map((value, c) => value + term[c]!);
      }
      state = sum;
    }
    close(along, state[0]!, 1e-6, "the line weighs a millionth of a kilogram a metre after all");
    const engine = byEngine(two, until, 64_000).x - 5.25;
    const quantity = "way of a mass on a damped spring";
    check({ source: "odex", quantity, unit: "m", pairs: [[engine, along]], share: 2e-6, why: "steps of 6 µs" });
    close(engine, state[0]!, 1e-6, "steps of 6 µs");
  });
});

keeps();
