import { describe, expect, it } from "vitest";
import { type Problem, type Recording, solveStanding } from "../src/index.ts";
import { apart, FALL, run, webbing } from "./rigs.ts";

function standing(problem: Problem) {
  const solved = solveStanding(problem);
  if (!solved.ok) throw new Error(solved.message);
  return solved;
}

describe("sections of different webbing", () => {
  const [soft, stiff] = [webbing(0.06, 0.08), webbing(0.06, 0.02)];
  // In series: the strains at one tension, averaged over the natural length.
  const blended = webbing(0.06, 0.05, 0.1);
  const make = (sections: Problem["main"]["sections"]): Problem => {
    const { material: _, ...main } = FALL.main;
    return { ...FALL, main: { ...main, sections: sections! } };
  };

  it("carry the pretension as one line and stretch in series", () => {
    const two = standing(
      make([
        { to: 0.5, material: soft },
        { to: 1, material: stiff },
      ]),
    );
    // By symmetry of the natural lengths, a line soft at both ends and stiff in the middle is the same spring.
    const three = standing(
      make([
        { to: 0.25, material: soft },
        { to: 0.75, material: stiff },
        { to: 1, material: soft },
      ]),
    );
    const one = standing({ ...FALL, main: { ...FALL.main, material: blended } });
    expect(apart(three.standing.tension, one.standing.tension)).toBeLessThan(2e-3);
    expect(apart(three.standing.sag, one.standing.sag)).toBeLessThan(2e-3);
    expect(apart(two.unloaded.tension, FALL.main.pretension)).toBeLessThan(0.01);
  });

  it("of one webbing are one line", () => {
    const split = run(
      make([
        { to: 0.5, material: FALL.main.material! },
        { to: 1, material: FALL.main.material! },
      ]),
    );
    expect(apart(split.peaks.leash.cfc60, run(FALL).peaks.leash.cfc60)).toBeLessThan(1e-9);
  });

  it("put less on the leash the softer they are", () => {
    const peak = (material: Problem["leash"]["material"]) => run(make([{ to: 1, material }])).peaks.leash.cfc60;
    expect(peak(soft)).toBeLessThan(peak(stiff));
  });
});

describe("an elastic anchor", () => {
  it("is a spring in series with the line: T₀/(1 + 2·EA/(L₀·k)) straight and nearly weightless", () => {
    const [stiffness, k] = [150_000, 40_000];
    const light: Problem = {
      ...FALL,
      main: { pretension: 3000, material: webbing(1e-5, 0.04) },
      anchors: { A: { stiffness: k }, B: { stiffness: k } },
    };
    const length = 20 / (1 + 3000 / stiffness);
    const expected = 3000 / (1 + (2 * stiffness) / (length * k));
    expect(apart(standing(light).unloaded.tension, expected)).toBeLessThan(1e-5);
  });

  it("as stiff as rock changes nothing, a soft one takes the edge off the catch", () => {
    const at = (stiffness: number) => run({ ...FALL, anchors: { A: { stiffness }, B: { stiffness } } });
    const fixed = run(FALL);
    expect(apart(at(1e9).peaks.mainA.cfc60, fixed.peaks.mainA.cfc60)).toBeLessThan(0.01);
    expect(at(2e4).peaks.mainA.cfc60).toBeLessThan(0.95 * fixed.peaks.mainA.cfc60);
  });
});

it("an elastic anchor with a ring beside it, hanging, sliding or caught, balances its energy", () => {
  for (const rise of [-2, 0, 3]) {
    for (const stiffness of [4e4, 6e5]) {
      for (const at of [0.02, 0.96]) {
        const { energy } = run({
          ...FALL,
          rise,
          walker: { ...FALL.walker, at },
          anchors: { A: { stiffness }, B: { stiffness } },
        });
        expect(energy.imbalance / energy.moved).toBeLessThan(0.01);
        expect(energy.created / energy.moved).toBeLessThan(0.01);
      }
    }
  }
});

describe("an anchor on legs", () => {
  const legs = [-1, 1].map((side) => ({ rock: [-2, side, 0] as const, stiffness: 4e5 }));
  const legged: Problem = { ...FALL, anchors: { A: { legs } } };

  it("shares the load evenly on even legs, and the legs carry what the line pulls", () => {
    const { legs: peaks, peaks: line } = run(legged);
    expect(peaks).toHaveLength(2);
    expect(apart(peaks[0]!.peak, peaks[1]!.peak)).toBeLessThan(0.1);
    const direct = line.mainA.raw / (2 * Math.cos(Math.atan2(1, 2)));
    expect(Math.max(...peaks.map(({ peak }) => peak)) / direct).toBeGreaterThan(0.95);
    expect(Math.max(...peaks.map(({ peak }) => peak)) / direct).toBeLessThan(1.15);
  });

  it("of which one fails swings in under the other, which takes the whole load", () => {
    const {
      legs: peaks,
      events,
      peaks: line,
    } = run({
      ...legged,
      legFailure: { anchor: "A", leg: 0, time: 0.5 },
    });
    expect(events.some(({ kind, part, at }) => kind === "cut" && part === "anchorA" && at === 0)).toBe(true);
    expect(peaks.map(({ parted }) => parted)).toEqual([true, false]);
    expect(peaks[1]!.peak).toBeGreaterThan(0.9 * line.mainA.raw);
  });

  it("finds its rest on a long line too, where the legs are stiff and the sag is soft", () => {
    for (const accuracy of ["quick", "standard", "fine"] as const) {
      const long = { ...legged, span: 150, main: { ...FALL.main, pretension: 1300 } };
      expect(solveStanding(long, { accuracy }).ok).toBe(true);
    }
  });

  it("takes the push of a ring beside it: one that hangs, slides or is caught there loses no energy to nothing", () => {
    for (const rise of [0, 2, 6]) {
      const rock = (side: number) => [-2, side, (-2 * rise) / FALL.span] as const;
      const sloping = [-1, 1].map((side) => ({ rock: rock(side), stiffness: 4e5 }));
      for (const start of ["hanging", "standing"] as const) {
        const { letGo: _, ...rest } = FALL;
        const { energy } = run({
          ...(start === "standing" ? FALL : rest),
          start,
          rise,
          walker: { ...FALL.walker, at: 0.04 },
          anchors: { A: { legs: sloping } },
          legFailure: { anchor: "A", leg: 0, time: 0.5 },
        });
        expect(energy.imbalance / energy.moved).toBeLessThan(0.01);
      }
    }
  });

  it("lets a leg go that is loaded above its strength", () => {
    const weak = run({ ...legged, anchors: { A: { legs: [{ ...legs[0]!, strength: 2200 }, legs[1]!] } } });
    expect(weak.firstBreak?.part).toBe("anchorA");
    expect(weak.firstBreak!.value).toBeGreaterThan(2200);
  });
});

describe("a weblock that slips", () => {
  const slipping = run({ ...FALL, main: { ...FALL.main, slip: { A: 4000 } } });
  const held = run(FALL);

  it("holds the load at the slip load, and takes the energy", () => {
    const { events, peaks, energy } = slipping;
    expect(held.peaks.mainA.raw).toBeGreaterThan(5000);
    expect(events.find(({ kind }) => kind === "slip")?.part).toBe("weblockA");
    expect(peaks.mainA.cfc60).toBeLessThan(1.02 * 4000);
    expect(energy.series.lossSlip.at(-1)!).toBeGreaterThan(20);
    expect(slipping.walker.drop).toBeGreaterThan(held.walker.drop);
  });

  it("does nothing below it", () => {
    const idle = run({ ...FALL, main: { ...FALL.main, slip: { A: 20_000, B: 20_000 } } });
    expect(idle.peaks.mainA.raw).toBe(held.peaks.mainA.raw);
  });
});

describe("drag", () => {
  it("brings a falling walker to √(2·m·g/(ρ·C_d·A))", () => {
    const { walkerHeight, rate } = run({
      ...FALL,
      leash: { ...FALL.leash, strength: 500 },
      walker: { ...FALL.walker, dragArea: 5 },
      airDensity: 1.225,
      duration: 12,
    });
    const end = walkerHeight.length - 1;
    const speed = (walkerHeight[end - rate]! - walkerHeight[end]!) / 1;
    expect(apart(speed, Math.sqrt((2 * 80 * 9.80665) / (1.225 * 5)))).toBeLessThan(1e-3);
  });

  it("of the line takes energy and lessens no load by more than it can", () => {
    const windy = run({
      ...FALL,
      main: { ...FALL.main, width: 0.025, dragCoefficient: 2 },
      airDensity: 1.225,
    });
    expect(windy.energy.series.lossDrag.at(-1)!).toBeGreaterThan(1);
    expect(apart(windy.peaks.leash.cfc60, run(FALL).peaks.leash.cfc60)).toBeLessThan(0.06);
    // Drag acts between steps: first order in the step.
    expect(windy.energy.imbalance / windy.energy.moved).toBeLessThan(5e-4);
  });

  it("is absent without an air density", () => {
    const still = run({ ...FALL, main: { ...FALL.main, width: 0.025, dragCoefficient: 2 } });
    expect(still.peaks.leash.raw).toBe(run(FALL).peaks.leash.raw);
  });
});

describe("where energy goes", () => {
  const total = ({ energy: { series } }: Recording, k: number) =>
    Object.entries(series).reduce((sum, [name, values]) => sum + (name === "feet" ? -1 : 1) * values[k]!, 0);
  const RUNS: readonly (readonly [string, Problem])[] = [
    ["a fall", FALL],
    ["a fall with rise", { ...FALL, rise: 2 }],
    ["a fall on elastic anchors", { ...FALL, anchors: { A: { stiffness: 5e4 } } }],
    ["a fall with a slipping weblock", { ...FALL, main: { ...FALL.main, slip: { A: 4000 } } }],
    ["a fall in which the leash parts", { ...FALL, leash: { ...FALL.leash, strength: 2000 } }],
    ["a fall in which the main line parts", { ...FALL, main: { ...FALL.main, strength: 5000 } }],
  ];
  for (const [name, problem] of RUNS) {
    // A line that has parted whips: there the square of the step shows.
    const share = problem.main.strength === undefined ? 1e-4 : 3e-4;
    it(`in ${name} balances to ${share} of what was moved, in total and in the parts that are shown`, () => {
      const recording = run(problem, { accuracy: "standard" });
      const { imbalance, moved, gain, times } = recording.energy;
      expect(imbalance / moved).toBeLessThan(share);
      expect(gain).toBeLessThan(1e-4 * moved);
      const start = total(recording, 0);
      for (let k = 0; k < times.length; k += 50)
        expect(Math.abs(total(recording, k) - start) / moved).toBeLessThan(2 * share);
    });
  }
});
