/** Cables at rest against published values and the elastic catenary. */
import { BareLine, GRAVITY, type Material, type Problem, solveStanding } from "@secondline/engine";
import { describe, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("catenary");

const linear = (stiffness: number, weight: number): Material => ({
  mass: weight / GRAVITY,
  curve: [
    [0, 0],
    [1, stiffness],
  ],
  branches: [],
});
const cable = (stiffness: number, weight: number, length: number, elements: number) =>
  new BareLine({ make: { material: linear(stiffness, weight) }, length, elements });

describe("validation test SSNL114 of code_aster (manual V6.02.114): a heavy elastic cable between level supports", () => {
  const [half, stiffness, weight] = [162.5, 2.2783e-4 * 5.7e10, 2844.23 * 2.2783e-4 * 9.81];
  const sag = (length: number) => {
    const line = cable(stiffness, weight, length, 400);
    line.hang(2 * half, 0);
    return line.position(200)[2];
  };

  it("sags 6.352 m (published to 1e-3 m)", () => {
    const got = sag(2 * half);
    const why = "the published figure is rounded to 1 mm, and the cable has 400 pieces";
    check({
      source: "codeAster",
      quantity: "sag under its weight",
      unit: "m",
      pairs: [[got, -6.352]],
      share: 1.6e-4,
      why,
    });
    const pairs = [[got, -6.35216147]] as const;
    check({ source: "catenary", quantity: "sag of that cable", unit: "m", pairs, share: 2e-5, why: "400 pieces" });
  });

  it("sags 8.195 m after warming by 39.26 K (published to 1e-3 m)", () => {
    const longer = 2 * half * (1 + 2.3e-5 * 39.26);
    const got = sag(longer);
    const why = "the published figure is rounded to 1 mm, and the cable has 400 pieces";
    check({ source: "codeAster", quantity: "sag when warm", unit: "m", pairs: [[got, -8.195]], share: 1.3e-4, why });
    const pairs = [[got, -8.19545175]] as const;
    check({
      source: "catenary",
      quantity: "sag of that cable, warm",
      unit: "m",
      pairs,
      share: 2e-5,
      why: "400 pieces",
    });
  });
});

describe("unit test tests/test_catenary.py of MoorPy (NREL, commit 9191d188): a hanging line, 400 m across and 200 m up", () => {
  it("pulls with 43 694.58 N across, 22 365.60 N at the lower and 77 634.40 N at the upper end", () => {
    // Half-sized pieces twice: the lumped chain's error falls with the square of the piece.
    const [coarse, fine] = [200, 400].map((pieces) => {
      const { along, up } = cable(7.51e12, 200, 500, pieces).hang(400, 200);
      return [along, up - (0.5 * 200 * 500) / pieces] as const;
    });
    const [across, lower] = [0, 1].map((k) => (4 * fine![k]! - coarse![k]!) / 3);
    for (const [quantity, got, expected, share] of [
      ["pull across", across!, 43694.580989, 2e-6],
      ["pull up at the lower end", -lower!, 22365.59935, 4e-6],
      ["pull up at the upper end", 500 * 200 + lower!, 77634.40065, 2e-6],
    ] as const) {
      const why = "that program's own tolerance is 1e-6, and the chain is extrapolated";
      check({ source: "moorPy", quantity, unit: "N", pairs: [[got, expected]], share, why });
    }
  });
});

/** A rig that is nothing but its line and a walker: the ring and the leash weigh next to nothing. */
const rig = (span: number, pretension: number, weight: number, load: number): Problem => ({
  name: "point load",
  span,
  rise: 0,
  main: { pretension, material: linear(60_000, weight) },
  leash: { length: 1, material: linear(20_000, 0.5) },
  ring: { mass: 1e-6, clearance: 0.025, friction: 0 },
  walker: { mass: load / GRAVITY, at: 0.5, tieIn: 1, lateral: 0 },
  start: "hanging",
  duration: 1,
});
const standing = (problem: Problem, size: number) => {
  const solved = solveStanding(problem, { size });
  if (!solved.ok) throw new Error(solved.message);
  return solved;
};

describe("a point load in the middle of a line", () => {
  it("stretches a weightless line as two straight halves, computed from T = EA·(2√((l/2)² + d²)/L₀ − 1)", () => {
    for (const [span, sag] of [
      [100, 7.50537886],
      [20, 1.50107577],
    ] as const) {
      const solved = standing(rig(span, 2000, 1e-7, 800), span / 20);
      const [why, share] = ["nothing but rounding and a line of 1e-7 N/m", 1e-6];
      const [weight, source] = ["800 N in the middle of a weightless line", "catenary"] as const;
      check({
        source,
        quantity: `sag, ${weight} of ${span} m`,
        unit: "m",
        pairs: [[solved.standing.sag, sag]],
        share,
        why,
      });
      const pairs = [[solved.standing.tension, 2694.609836]] as const;
      check({ source, quantity: `tension, ${weight} of ${span} m`, unit: "N", pairs, share, why });
    }
  });

  it("on a heavy line hangs 7.71616 m deep and pulls 2734.09 N at the anchor, computed from the elastic catenary", () => {
    // The natural length of the computed case follows from its own unloaded catenary, a little longer than a straight line's.
    const pretension = 60_000 * (100 / 96.7784989 - 1);
    const solved = standing(rig(100, pretension, 0.6864655, 800), 0.125);
    for (const [quantity, unit, got, expected, share] of [
      ["sag of a heavy line of 100 m", "m", solved.unloaded.sag, 0.41521014, 1e-4],
      ["sag of a heavy line of 100 m under 800 N", "m", solved.standing.sag, 7.71616081, 1e-5],
      ["tension of a heavy line of 100 m under 800 N", "N", solved.standing.tension, 2734.09392, 1e-4],
    ] as const) {
      const why = "lumped chain of 0.125 m; tension of its first piece, not at the anchor itself";
      check({ source: "catenary", quantity, unit, pairs: [[got, expected]], share, why });
    }
  });
});

keeps();
