/** A mass falling on an elastic line, with and without damping, and the large pendulum. */
import { BareLine, GRAVITY, type Material } from "@secondline/engine";
import { describe, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { publishedTable } from "../support/table.ts";

const { check, keeps } = evidence("drops");

const linear = (stiffness: number, branches: Material["branches"] = []): Material => ({
  // Next to no mass: the line is a spring.
  mass: 1e-9,
  curve: [
    [0, 0],
    [1, stiffness],
  ],
  branches,
});

/** A mass on the lower end of a hanging spring of one element, moving down; largest force and stretch. */
function drop(length: number, material: Material, mass: number, speed: number, step: number) {
  const line = new BareLine({ make: { material }, length, elements: 1, masses: [{ node: 1, mass }], step });
  line.lay([0, 0, 0], [0, 0, -length]);
  line.freeEnd("last");
  line.push(1, [0, 0, -speed]);
  let [force, stretch] = [0, 0];
  while (line.velocity(1)[2] < 0 || stretch === 0) {
    line.advance(1);
    force = Math.max(force, line.tension(0));
    stretch = Math.max(stretch, -line.position(1)[2] - length);
  }
  return { force, stretch };
}

describe("impact-force equation F = mg + √((mg)² + 2·mg·EA·f), as printed in encyclopaedias (fall factor)", () => {
  // A. Wexler, Am. Alpine J. 7 (1950) 379; columns computed for the standard fall of 80 kg, 4.6 m on 2.6 m.
  const length = 2.6;
  for (const row of publishedTable("impactForce.csv")) {
    const stiffness = row["K=EA_N"]!;
    it(`holds over fall factors 0 to 2 at EA = ${stiffness} N`, () => {
      const cases = [
        [80, 0],
        [80, 0.25],
        [80, 0.5],
        [80, 1],
        [80, 1.5],
        [80, 2],
        [100, 1],
      ] as const;
      const pairs = cases.map(([mass, factor]) => {
        const speed = Math.sqrt(2 * GRAVITY * factor * length);
        const { force } = drop(length, linear(stiffness), mass, speed, 1e-5);
        return [force, row[`F_N m=${mass} f=${factor}`]!] as const;
      });
      const quantity = `largest force over fall factors 0 to 2 at EA ${stiffness} N`;
      check({ source: "wexler", quantity, unit: "N", pairs, share: 1e-4, why: "steps of 10 µs" });
    });
  }
});

describe("a Kelvin–Voigt drop: 80 kg at 6 m/s on 5000 N/m", () => {
  // Computed. A line has Maxwell branches only; one of τ = 0.1 ms and E = c·l/τ is a damper for motions much slower than that.
  for (const [ratio, force, stretch] of [
    [0, 4659.51464, 0.931903],
    [0.05, 4320.9176, 0.86065],
    [0.1, 4057.9446, 0.798539],
    [0.2, 3709.8077, 0.695791],
    [0.3, 3556.3731, 0.614594],
  ] as const) {
    it(`at a damping ratio of ${ratio} peaks at ${force} N and stretches ${stretch} m`, () => {
      const [length, time] = [2, 1e-4];
      const damper = 2 * ratio * Math.sqrt(5000 * 80);
      const branches = ratio === 0 ? [] : [[(damper * length) / time, time] as const];
      const got = drop(length, linear(5000 * length, branches), 80, 6, 2e-6);
      const [why, source] = ["the branch stands for a damper up to some τ·ω = 8e-4", "dampedDrop"] as const;
      const [F, x] = [`force at a damping ratio of ${ratio}`, `stretch at a damping ratio of ${ratio}`];
      check({ source, quantity: F, unit: "N", pairs: [[got.force, force]], share: 2e-3, why });
      check({ source, quantity: x, unit: "m", pairs: [[got.stretch, stretch]], share: 1e-3, why });
    });
  }
});

describe("a pendulum let go at a right angle", () => {
  it("swings 1.1803405990 times as long as one of small amplitude", () => {
    const length = 1.4;
    const material = linear(4e6);
    const line = new BareLine({ make: { material }, length, elements: 1, masses: [{ node: 1, mass: 80 }], step: 2e-5 });
    line.lay([0, 0, 0], [length, 0, 0]);
    line.freeEnd("last");
    // From the first passage through the lowest point to the third: one whole swing.
    const passages: number[] = [];
    let before = line.position(1)[0];
    while (passages.length < 3) {
      line.advance(1);
      const now = line.position(1)[0];
      if (before > 0 !== now > 0) passages.push(line.time - (line.step * now) / (now - before));
      before = now;
    }
    const small = 2 * Math.PI * Math.sqrt(length / GRAVITY);
    check({
      source: "pendulum",
      quantity: "period from a right angle, over that of a small swing",
      pairs: [[(passages[2]! - passages[0]!) / small, 1.180340599]],
      share: 1e-3,
      why: "the string stretches by half a millimetre on average",
    });
  });
});

keeps();
