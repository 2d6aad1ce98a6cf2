import { describe, expect, it } from "vitest";
import { type Problem, simulate } from "../src/index.ts";

const CUT_WITH_CONNECTION: Problem = {
  name: "cut of a short line with a connection and a tape",
  span: 20,
  rise: 0,
  main: { pretension: 2000, material: webbing(0.06, 0.04) },
  backup: {
    slack: 0.05,
    material: webbing(0.05, 0.03),
    connections: [{ at: 0.5 }],
    tapes: [{ at: 0.25, strength: 200 }],
  },
  leash: { length: 1.4, material: webbing(0.08, 0.3) },
  ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
  walker: { mass: 80, at: 0.4, tieIn: 1, lateral: 0 },
  start: "hanging",
  cut: { at: 0, time: 0.05 },
  duration: 1,
};

/** Reaches 6 kN at `strain`; the branches are invented. */
function webbing(mass: number, strain: number) {
  const branches = [0.003, 0.03, 0.3].map((time) => [0.1 * (6000 / strain), time] as const);
  return {
    mass,
    curve: [
      [0, 0],
      [strain, 6000],
    ] as const,
    branches,
  };
}

describe("the force in a connection over time", () => {
  const result = simulate(CUT_WITH_CONNECTION, { accuracy: "quick" });
  if (!result.ok) throw new Error(result.message);
  const { connections, rate, signals } = result.recording;

  it("is recorded at the rate of the signals and holds the peak that is reported, when it is reported", () => {
    const { force, peak, time } = connections[0]!;
    expect(force).toHaveLength(signals.leash.length);
    const most = force!.reduce((best, value, i) => (value > force![best]! ? i : best), 0);
    expect(peak).toBeGreaterThan(100);
    // Samples lie between steps, so that the very peak may fall between two of them.
    expect(force![most]! / peak).toBeGreaterThan(0.98);
    expect(force![most]!).toBeLessThanOrEqual(peak * (1 + 1e-6));
    expect(Math.abs(most / rate - time)).toBeLessThan(2 / rate + 1e-9);
  });

  it("is not recorded of tapes", () => {
    expect(connections[1]).toMatchObject({ tape: true });
    expect(connections[1]).not.toHaveProperty("force");
  });
});
