/** Cables at rest against published values and the elastic catenary. */
import { BareLine, GRAVITY, type Material, type Problem, solveStanding } from "@secondline/engine";
import { describe, it } from "vitest";
import { close } from "../support/close.ts";

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
    close(sag(2 * half), -6.352, 1.6e-4, "the published figure is rounded to 1 mm");
    close(sag(2 * half), -6.35216147, 2e-5, "computed from the cable's equation; 400 pieces");
  });

  it("sags 8.195 m after warming by 39.26 K (published to 1e-3 m)", () => {
    const longer = 2 * half * (1 + 2.3e-5 * 39.26);
    close(sag(longer), -8.195, 1.3e-4, "the published figure is rounded to 1 mm");
    close(sag(longer), -8.19545175, 2e-5, "computed from the cable's equation; 400 pieces");
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
    close(across!, 43694.580989, 2e-6, "that program's own tolerance is 1e-6, and the chain is extrapolated");
    close(-lower!, 22365.59935, 4e-6, "that program's own tolerance is 1e-6, and the chain is extrapolated");
    close(500 * 200 + lower!, 77634.40065, 2e-6, "that program's own tolerance is 1e-6, and the chain is extrapolated");
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
      close(solved.standing.sag, sag, 1e-6, "nothing but rounding and a line of 1e-7 N/m");
      close(solved.standing.tension, 2694.609836, 1e-6, "nothing but rounding and a line of 1e-7 N/m");
    }
  });

  it("on a heavy line hangs 7.71616 m deep and pulls 2734.09 N at the anchor, computed from the elastic catenary", () => {
    // The natural length of the computed case follows from its own unloaded catenary, a little longer than a straight line's.
    const pretension = 60_000 * (100 / 96.7784989 - 1);
    const solved = standing(rig(100, pretension, 0.6864655, 800), 0.125);
    close(solved.unloaded.sag, 0.41521014, 1e-4, "lumped chain of 0.125 m");
    close(solved.standing.sag, 7.71616081, 1e-5, "lumped chain of 0.125 m");
    close(solved.standing.tension, 2734.09392, 1e-4, "tension of the first piece, not at the anchor itself");
  });
});
