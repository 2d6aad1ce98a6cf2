/** Shares of two anchor legs, and Coulomb's law where the ring sits on the line. */
import { type Problem, simulate } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";

const { check, keeps } = evidence("anchors");

const webbing = {
  mass: 0.06,
  curve: [
    [0, 0],
    [0.04, 6000],
  ] as const,
  branches: [
    [15_000, 0.003],
    [15_000, 0.03],
    [15_000, 0.3],
    [15_000, 3],
  ] as const,
};
const rig: Problem = {
  name: "taut line",
  span: 20,
  rise: 0,
  main: { pretension: 8000, material: { ...webbing, mass: 0.001 } },
  leash: { length: 1.4, material: webbing },
  ring: { mass: 0.1, clearance: 0.025, friction: 0.15 },
  walker: { mass: 0.01, at: 0.5, tieIn: 1, lateral: 0 },
  start: "hanging",
  duration: 0.2,
};
function run(problem: Problem) {
  const result = simulate(problem, { accuracy: "quick" });
  if (!result.ok) throw new Error(result.message);
  return result.recording;
}

describe("two legs in line with the load: F/(2·cos(θ/2)) each, θ between them", () => {
  for (const [theta, share] of [
    [30, 0.51763809],
    [45, 0.5411961],
    [60, 0.57735027],
    [90, Math.SQRT1_2],
    [120, 1],
    [150, 1.93185165],
  ] as const) {
    it(`at ${theta}° carry ${share} of the line's load each`, () => {
      const half = (theta * Math.PI) / 360;
      const leg = (side: number) =>
        ({ rock: [-2 * Math.cos(half), side * 2 * Math.sin(half), 0], stiffness: 5e5 }) as const;
      const { legs, peaks } = run({ ...rig, anchors: { A: { legs: [leg(1), leg(-1)] } } });
      // The rig is nearly weightless and at rest, so the peak is the standing load.
      check({
        source: "legs",
        quantity: `share of each of two legs at ${theta}°`,
        pairs: legs.map(({ peak }) => [peak / peaks.mainA.raw, share]),
        share: 5e-3,
        why: "a line that sags by a millimetre or two",
      });
    });
  }
});

describe("Coulomb friction of the ring on a sloping line", () => {
  // The line slopes by some 11° at the ring: a walker hanging there is held by a friction above tan(slope).
  const hanging = (friction: number): Problem => ({
    ...rig,
    rise: 3,
    main: { pretension: 6000, material: webbing },
    ring: { mass: 0.1, clearance: 0.025, friction },
    walker: { mass: 80, at: 0.25, tieIn: 1, lateral: 0 },
    duration: 1,
  });
  /** The ring's way along the line [m], the mean slope and the turn of the line at it [rad], and the tensions on either side [N]. */
  function slope(friction: number) {
    const { frames } = run(hanging(friction));
    const ringAt = (frame: number) => frames.ringAt[2 * frame]!;
    const node = Math.round(ringAt(0) * (frames.mainNodes - 1));
    const at = (k: number) => [0, 2].map((c) => frames.positions[3 * (node + k) + c]!) as [number, number];
    const angle = (from: number, to: number) => {
      const [p, q] = [at(from), at(to)];
      return Math.atan2(q[1] - p[1], q[0] - p[0]);
    };
    // Beyond the elements that the ring's weights reach.
    const [left, right] = [angle(-4, -2), angle(2, 4)];
    return {
      slid: Math.abs(ringAt(frames.count - 1) - ringAt(0)) * 20,
      mean: 0.5 * (left + right),
      turn: right - left,
      tensions: [frames.tensions[node - 4]!, frames.tensions[node + 3]!] as const,
    };
  }

  it("holds the ring where it exceeds the slope, and lets it slide where it does not", () => {
    const { mean } = slope(0.15);
    const needed = Math.tan(Math.abs(mean));
    expect(needed).toBeGreaterThan(0.05);
    expect(slope(1.3 * needed).slid).toBeLessThan(0.02);
    expect(slope(0.7 * needed).slid).toBeGreaterThan(0.2);
  });

  it("where it just holds, has the tensions on either side in the capstan's ratio e^(μφ) (Euler, Eytelwein)", () => {
    const { mean, turn, tensions } = slope(0.5);
    const [low, high] = [...tensions].sort((a, b) => a - b) as [number, number];
    // The friction that is just needed is tan(slope); the ratio is that of a wrap by the line's turn at the ring.
    check({
      source: "capstan",
      quantity: "logarithm of the ratio of the tensions beside a ring that friction just holds",
      pairs: [[Math.log(high / low), Math.tan(Math.abs(mean)) * turn]],
      share: 0.05,
      why: "angles from elements two to four away",
    });
  });

  it("lets a frictionless ring slide further than one with friction", () => {
    expect(slope(0).slid).toBeGreaterThan(slope(0.1).slid);
  });
});

keeps();
