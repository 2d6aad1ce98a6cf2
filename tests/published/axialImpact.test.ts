/** Waves along a line: a mass that pulls it taut, and the recoil of an end that is let go. */
import { BareLine, type Material } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { close } from "../support/close.ts";
import { publishedTable } from "../support/table.ts";

const { check, keeps } = evidence("axialImpact");

const linear = (stiffness: number, mass: number): Material => ({
  mass,
  curve: [
    [0, 0],
    [1, stiffness],
  ],
  branches: [],
});

/**
 * The delayed equation of Boussinesq and Saint-Venant for a mass on the end of a rod (Timoshenko & Goodier, Theory of
 * Elasticity, 3rd ed. 1970, longitudinal impact of bars; structure from memory): v' = −α·(v + 2·s(τ − 2)), s = v + s(τ − 2).
 * Returns struck-end and fixed-end stress over σ₀ at steps of Δτ, until the contact ends.
 */
function saintVenant(alpha: number, dt: number) {
  const delay = Math.round(2 / dt);
  const s: number[] = [];
  let v = 1;
  const late = (k: number) => (k < delay ? 0 : s[k - delay]!);
  for (let k = 0; k < 60 / dt; k++) {
    s.push(v + late(k));
    if (s[k]! + late(k) <= 0) break;
    const mid = -alpha * (v + 2 * late(k));
    const half = v + 0.5 * dt * mid;
    v += dt * -alpha * (half + late(k) + late(k + 1));
  }
  // After the contact its last waves still run to the fixed end.
  const far = [...s, ...new Array<number>(delay / 2).fill(0)];
  return {
    struck: s.map((x, k) => x + late(k)),
    fixed: far.map((_, k) => (k < delay / 2 ? 0 : 2 * s[k - delay / 2]!)),
    speed: s.map((x, k) => x - late(k)),
    end: s.length * dt,
    rebound: -v,
  };
}

/** Running mean over `width` entries, run twice: what a slow load cell would show. */
function smooth(signal: readonly number[], width: number): number[] {
  const once = (x: readonly number[]) => {
    let sum = 0;
    return x.map((value, k) => {
      sum += value - (x[k - width] ?? 0);
      return sum / width;
    });
  };
  return once(once(signal));
}

describe("a mass that pulls a line taut (Saint-Venant)", () => {
  // Computed columns of the table; a lumped chain overshoots wave fronts, so forces are compared smoothed over a fifth of
  // the wave's travel time, theory and simulation alike.
  const rows = publishedTable("saintVenantImpact.csv").filter((row) =>
    [0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2, 4].includes(row.alpha_rod_over_mass!),
  );
  const [length, stiffness, mass, speed] = [10, 60_000, 0.06, 1];
  const sigma = speed * Math.sqrt(stiffness * mass);
  const travel = length * Math.sqrt(mass / stiffness);

  function simulated(alpha: number, until: number) {
    const elements = 400;
    const line = new BareLine({
      make: { material: linear(stiffness, mass) },
      length,
      elements,
      masses: [{ node: elements, mass: (mass * length) / alpha }],
      weightless: true,
    });
    line.freeEnd("last");
    line.push(elements, [speed, 0, 0]);
    const struck: number[] = [];
    const fixed: number[] = [];
    const speeds: number[] = [];
    while (line.time < until * travel) {
      line.advance(1);
      struck.push(line.tension(elements - 1) / sigma);
      fixed.push(line.tension(0) / sigma);
      speeds.push(line.velocity(elements)[0] / speed);
    }
    return { struck, fixed, speeds, step: line.step / travel };
  }

  for (const row of rows) {
    const alpha = row.alpha_rod_over_mass!;
    it(`at a line ${alpha} times as heavy as the mass`, () => {
      const step = 1 / 1000;
      const exact = saintVenant(alpha, step);
      close(exact.end, row.contact_duration_ct_over_l!, 2e-3, "steps of a thousandth of the travel time");
      close(exact.rebound, row.rebound_v_over_v0!, 3e-3, "steps of a thousandth of the travel time");
      close(Math.max(...exact.struck), row.max_struck_end_sigma_over_sigma0!, 3e-3, "the same steps");
      close(Math.max(...exact.fixed), row.max_fixed_end_sigma_over_sigma0!, 3e-3, "the same steps");

      const got = simulated(alpha, exact.end + 1);
      // The speed of the mass is the impulse it has had; its sum over time, the displacement.
      const at = (tau: number) => got.speeds[Math.round(tau / got.step)]!;
      const offs = exact.speed.map((v, k) => Math.abs(v - at(k * step)));
      close(Math.max(...offs), 0, 0.03, "speed over v₀ at any time of the contact; a front is some elements wide");
      const turn = exact.speed.findIndex((v) => v < 0);
      const sum = (values: readonly number[]) => values.reduce((total, v) => total + v, 0);
      const deepest = step * sum(exact.speed.slice(0, turn));
      const reached = got.step * sum(got.speeds.slice(0, Math.round((turn * step) / got.step)));
      check({
        source: "saintVenant",
        quantity: `way of the mass to its turn over σ₀'s, line ${alpha} times as heavy`,
        pairs: [[reached, deepest]],
        share: 3e-3,
        why: "displacement at the turn, summed by rectangles",
      });
      for (const end of ["struck", "fixed"] as const) {
        const peak = (signal: readonly number[], width: number) => Math.max(...smooth(signal, Math.round(width)));
        check({
          source: "saintVenant",
          quantity: `largest tension over σ₀ at the ${end} end, line ${alpha} times as heavy`,
          pairs: [[peak(got[end], 0.2 / got.step), peak(exact[end], 0.2 / step)]],
          share: 0.02,
          why: "smoothed alike over a fifth of the travel time; a lumped chain overshoots a front",
        });
      }
    });
  }
});

describe("recoil: an end let go under tension", () => {
  // Timoshenko & Goodier; Kolsky, Stress Waves in Solids: v = T/√(EA·μ); numbers computed.
  for (const [stiffness, mass, tension, speed] of [
    [60_000, 0.06, 3000, 50],
    [250_000, 0.08, 5000, 35.355339],
  ] as const) {
    it(`moves at ${speed} m/s from ${tension} N at EA ${stiffness} N and ${mass} kg/m, and slackens as the wave passes`, () => {
      const elements = 400;
      const line = new BareLine({
        make: { material: linear(stiffness, mass) },
        length: 20,
        elements,
        weightless: true,
      });
      const now = 20 * (1 + tension / stiffness);
      line.lay([0, 0, 0], [now, 0, 0]);
      line.freeEnd("last");
      const travel = 20 * Math.sqrt(mass / stiffness);
      while (line.time < 0.6 * travel) line.advance(1);
      // The front is at 0.6 of the line: taut before it, slack and moving behind it. The lumped chain's outermost nodes are
      // flung ahead of the rest, which only a mean over the stretch behind the front hides.
      const moving = Array.from({ length: elements * 0.55 }, (_, k) => -line.velocity(elements - k)[0]);
      check({
        source: "recoil",
        quantity: `speed of an end let go under ${tension} N at EA ${stiffness} N`,
        unit: "m/s",
        pairs: [[moving.reduce((sum, v) => sum + v, 0) / moving.length, speed]],
        share: 0.01,
        why: "mean behind the front; 400 elements",
      });
      close(-line.momentum()[0], tension * line.time, 1e-6, "the held end has taken the impulse T·t up to now");
      close(line.tension(elements * 0.3), tension, 1e-3, "the wave has not come here");
      expect(line.tension(elements * 0.8)).toBeLessThan(0.1 * tension);
    });
  }

  it("a leash coming taut at 6 m/s jumps to 360 N at EA 60 kN and 0.06 kg/m: ΔF = V·√(EA·μ)", () => {
    const elements = 400;
    const line = new BareLine({
      make: { material: linear(60_000, 0.06) },
      length: 20,
      elements,
      weightless: true,
    });
    line.moveEnd("last", [6, 0, 0]);
    const forces: number[] = [];
    while (line.time < 0.5 * 0.02) {
      line.advance(1);
      forces.push(line.tension(elements - 1));
    }
    const late = forces.slice(forces.length / 4);
    check({
      source: "recoil",
      quantity: "jump of the tension in a leash that comes taut at 6 m/s",
      unit: "N",
      pairs: [[late.reduce((sum, f) => sum + f, 0) / late.length, 360]],
      share: 5e-3,
      why: "mean after the front; the chain rings about it",
    });
  });
});

keeps();
