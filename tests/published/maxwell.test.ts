/**
 * Maxwell branches against the closed forms of linear viscoelasticity (J. D. Ferry, Viscoelastic Properties of Polymers, 3rd
 * ed. 1980, ch. 1 to 3): relaxation, creep and its recovery, storage and loss over five decades of frequency.
 */
import { BareLine, type Branch } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { close } from "../support/close.ts";

const { check, keeps } = evidence("maxwell");

const slow = 60_000;
const branches: readonly Branch[] = [
  [15_000, 0.003],
  [15_000, 0.03],
  [15_000, 0.3],
  [15_000, 3],
];
const make = (parts: readonly Branch[]) => ({
  material: {
    mass: 1e-6,
    curve: [
      [0, 0],
      [1, slow],
    ] as const,
    branches: parts,
  },
});
const piece = (step: number, parts = branches) =>
  new BareLine({ make: make(parts), length: 1, elements: 1, step, weightless: true });

describe("relaxation after a sudden stretch", () => {
  it("follows T(t) = ε·(E∞ + Σ Eᵢ·e^(−t/τᵢ)) from the first step on", () => {
    const line = piece(1e-4);
    line.place(1, [1.02, 0, 0]);
    // The jump happens within the first step; the exact law for a straight rise over that step is what is stepped.
    line.advance(1);
    const rise = branches.map(([E, tau]) => (E * tau * -Math.expm1(-line.step / tau)) / line.step);
    const pairs: [number, number][] = [];
    for (const until of [1e-3, 1e-2, 0.1, 1, 10]) {
      while (line.time < until) line.advance(1);
      const since = line.time - line.step;
      const expected = 0.02 * branches.reduce((sum, [, tau], k) => sum + rise[k]! * Math.exp(-since / tau), slow);
      close(line.tension(0), expected, 1e-9, "the exponential step is exact for this");
      const sudden = 0.02 * branches.reduce((sum, [E, tau]) => sum + E * Math.exp(-since / tau), slow);
      pairs.push([line.tension(0), sudden]);
    }
    const why = "a rise over 0.1 ms instead of a sudden one";
    check({ source: "ferry", quantity: "tension while it relaxes, 1 ms to 10 s", unit: "N", pairs, share: 3e-3, why });
  });
});

describe("creep under a constant pull, and recovery", () => {
  it("follows the standard linear solid: ε(t) = F/E∞·(1 − E₁/(E∞ + E₁)·e^(−t/λ)), λ = τ·(E∞ + E₁)/E∞", () => {
    const [E1, tau, pull] = [30_000, 0.3, 3000];
    const line = new BareLine({
      make: make([[E1, tau]]),
      length: 1,
      elements: 1,
      step: 2e-5,
      weightless: true,
      masses: [{ node: 1, mass: 0.01 }],
    });
    const late = (tau * (slow + E1)) / slow;
    const creep = (t: number) => (pull / slow) * (1 - (E1 / (slow + E1)) * Math.exp(-t / late));
    line.freeEnd("last", [pull, 0, 0]);
    // The mass starts where the sudden part of the stretch ends, moving as fast as it then creeps.
    line.place(1, [1 + creep(0), 0, 0]);
    line.push(1, [(creep(1e-6) - creep(0)) / 1e-6, 0, 0]);
    const why = "the small mass that carries the pull rings a little";
    const source = "ferry";
    const crept = [0.05, 0.2, 0.5, 1, 4].map((until) => {
      while (line.time < until) line.advance(1);
      return [line.position(1)[0] - 1, creep(until)] as const;
    });
    check({ source, quantity: "creep under a constant pull, 0.05 to 4 s", unit: "m", pairs: crept, share: 2e-3, why });
    // Half of the pull is taken off: by superposition the same creep, backwards.
    const turn = line.time;
    line.freeEnd("last", [0.5 * pull, 0, 0]);
    const sudden = (0.5 * pull) / (slow + E1);
    line.place(1, [line.position(1)[0] - sudden, 0, 0]);
    const recovered = [0.05, 0.5, 3].map((after) => {
      while (line.time < turn + after) line.advance(1);
      return [line.position(1)[0] - 1, creep(line.time) - 0.5 * creep(after)] as const;
    });
    check({ source, quantity: "recovery when half is taken off", unit: "m", pairs: recovered, share: 5e-3, why });
  });
});

describe("a small swing of strain about a standing one", () => {
  const storage = (omega: number) =>
    branches.reduce((sum, [E, tau]) => sum + (E * (omega * tau) ** 2) / (1 + (omega * tau) ** 2), slow);
  const loss = (omega: number) =>
    branches.reduce((sum, [E, tau]) => sum + (E * omega * tau) / (1 + (omega * tau) ** 2), 0);

  for (const omega of [0.1, 1, 10, 100, 1000, 10_000]) {
    it(`has the storage and loss of the branches at ${omega} rad/s`, () => {
      const perTurn = 400;
      const line = piece((2 * Math.PI) / (omega * perTurn));
      const [standing, swing] = [0.02, 0.002];
      line.lay([0, 0, 0], [1 + standing, 0, 0]);
      let [inPhase, outOfPhase] = [0, 0];
      // The start must be forgotten first, or drift too slowly to matter; then one turn is read.
      const settle = Math.min(Math.ceil((30 * omega) / (2 * Math.PI)) + 1, 1000);
      for (let k = 0; k < (settle + 1) * perTurn; k++) {
        const strain = standing + swing * Math.sin((2 * Math.PI * k) / perTurn);
        line.place(1, [1 + strain, 0, 0]);
        line.advance(1);
        if (k < settle * perTurn) continue;
        inPhase += (line.tension(0) * Math.sin((2 * Math.PI * k) / perTurn) * 2) / perTurn;
        outOfPhase += (line.tension(0) * Math.cos((2 * Math.PI * k) / perTurn) * 2) / perTurn;
      }
      const [why, source] = ["400 steps a turn", "ferry"] as const;
      const at = `at ${omega} rad/s`;
      const [stored, lost] = [[[inPhase / swing, storage(omega)]], [[outOfPhase / swing, loss(omega)]]] as const;
      check({ source, quantity: `storage ${at}`, unit: "N", pairs: stored, share: 1e-3, why });
      check({ source, quantity: `loss ${at}`, unit: "N", pairs: lost, share: 5e-3, why });
    });
  }

  it("loses the same share within a factor of two over two decades, as textile fibres about do", () => {
    const shares = [1, 3, 10, 30, 100].map((omega) => loss(omega) / storage(omega));
    expect(Math.max(...shares) / Math.min(...shares)).toBeLessThan(2);
  });
});

keeps();
