/** Free vibrations of a line: Irvine's parameter, and the harmonics of a string of lumped masses. */
import { BareLine, GRAVITY, type Material } from "@secondline/engine";
import { describe, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { close } from "../support/close.ts";
import { strongestFrequency } from "../support/frequency.ts";
import { publishedTable } from "../support/table.ts";

const { check, keeps } = evidence("vibration");

const linear = (stiffness: number, mass: number): Material => ({
  mass,
  curve: [
    [0, 0],
    [1, stiffness],
  ],
  branches: [],
});

/** Sag over span of the cables below; flat enough for a theory of flat cables. */
const SAG = 1 / 70;

/** A cable hung level over 100 m with the λ² that is wanted; λ² = (mgL/H)²·L·EA/(H·Lₑ), Lₑ = L·(1 + (mgL/H)²/8). */
function cableOf(wanted: number, elements: number) {
  const [span, mass] = [100, 1];
  const H0 = (mass * GRAVITY * span) / (8 * SAG);
  const pull0 = 8 * SAG;
  let stiffness = (wanted / pull0 ** 2) * H0;
  for (let i = 0; ; i++) {
    // Natural length of an elastic parabola; what it then really pulls, weighs and stretches is read off.
    const length = (span * (1 + pull0 ** 2 / 24)) / (1 + H0 / stiffness);
    const line = new BareLine({ make: { material: linear(stiffness, mass) }, length, elements, stepShare: 0.9 });
    const { along: H } = line.hang(span, 0);
    const stretch = 1 + H / stiffness;
    const pull = ((mass / stretch) * GRAVITY * span) / H;
    const lambda2 = (pull ** 2 * stiffness * stretch) / (H * (1 + pull ** 2 / 8));
    if (i === 20) return { line, lambda2, unit: Math.sqrt((H * stretch) / mass) / span };
    stiffness *= wanted / lambda2;
  }
}

/**
 * First symmetric in-plane frequency of a hanging cable, measured: in equilibrium, given a small upward speed in the shape of
 * half a sine, and left to swing for 25 periods of the taut string. Returns ω·L·√(m/H).
 */
function firstSymmetric(wanted: number) {
  const elements = 60;
  const { line, lambda2, unit } = cableOf(wanted, elements);
  for (let i = 1; i < elements; i++) line.push(i, [0, 0, 1e-3 * Math.sin((Math.PI * i) / elements)]);
  const every = Math.max(1, Math.floor(0.1 / unit / line.step));
  const motion = new Float64Array(Math.floor((25 * 2) / unit / (every * line.step)));
  for (let k = 0; k < motion.length; k++) {
    motion[k] = line.position(elements / 2)[2];
    line.advance(every);
  }
  const frequency = strongestFrequency(motion, every * line.step, 0.4 * unit, 1.6 * unit);
  return { omega: (2 * Math.PI * frequency) / unit, lambda2 };
}

/** tan(x) = x − (4/λ²)·x³ at x = ω/2, first root: Irvine & Caughey 1974, the equation from memory. */
function irvine(lambda2: number): number {
  let [low, high] = [Math.PI / 2, 1.4303 * Math.PI];
  const f = (x: number) => Math.sin(x) - (x - (4 / lambda2) * x ** 3) * Math.cos(x);
  for (let i = 0; i < 100; i++) {
    const middle = 0.5 * (low + high);
    if (f(middle) > 0) low = middle;
    else high = middle;
  }
  return 2 * low;
}

describe("Irvine's first symmetric in-plane frequency, from a simulated free vibration", () => {
  const table = publishedTable("irvineLambda2.csv");
  const rows = [0.1, 1, 4, 10, 20, 60, 100, 200, 1000, 10_000].map(
    (wanted) => table.find((row) => row.lambda2 === wanted)!,
  );

  it("the table agrees with the equation as it stands in this test", () => {
    for (const row of rows) close(irvine(row.lambda2!), row.omega1_sym!, 1e-7, "eight digits are printed");
  });

  for (const row of rows) {
    const wanted = row.lambda2!;
    it(`is ${row.omega1_sym_over_pi} π at λ² = ${wanted}`, () => {
      const { omega, lambda2 } = firstSymmetric(wanted);
      close(lambda2, wanted, 1e-6, "the cable was made to have it");
      check({
        source: "irvine",
        quantity: `first symmetric frequency at λ² = ${wanted}`,
        unit: "ω·L·√(m/H)",
        pairs: [[omega, row.omega1_sym!]],
        share: 2e-3,
        why: "60 elements, a sag of 1/70, a signal of 25 periods",
      });
    });
  }

  it("is that of the taut string, π, when λ² goes to 0", () => {
    const line = new BareLine({ make: { material: linear(60_000, 0.06) }, length: 20, elements: 60, weightless: true });
    const T = 3000;
    line.lay([0, 0, 0], [20 * (1 + T / 60_000), 0, 0]);
    for (let i = 1; i < 60; i++) line.push(i, [0, 0, 1e-3 * Math.sin((Math.PI * i) / 60)]);
    const unit = Math.sqrt(T / (0.06 / 1.05)) / 21 / (2 * Math.PI);
    const motion = new Float64Array(4000);
    for (let k = 0; k < motion.length; k++) {
      motion[k] = line.position(30)[2];
      line.advance(8);
    }
    close(
      strongestFrequency(motion, 8 * line.step, 2 * unit, 4 * unit) / unit,
      Math.PI,
      3e-4,
      "60 elements: sin(x)/x of the lumped string is 1.1e-4 low",
    );
  });
});

describe("harmonics of a string of N equal masses", () => {
  // ω/ω_exact = sin(nπ/2(N+1)) / (nπ/2(N+1)), computed; lumped masses make a string slow.
  for (const [n, N, ratio] of [
    [1, 9, 0.99589274],
    [1, 19, 0.99897223],
    [1, 49, 0.99983551],
    [1, 99, 0.99995888],
    [5, 9, 0.90031632],
    [5, 19, 0.97449536],
    [5, 49, 0.99589274],
    [5, 99, 0.99897223],
  ] as const) {
    it(`mode ${n} of ${N} masses is slow by the factor ${ratio}`, () => {
      const [length, T, stiffness, mass] = [10, 2000, 60_000, 0.06];
      const line = new BareLine({
        make: { material: linear(stiffness, mass) },
        length,
        elements: N + 1,
        weightless: true,
      });
      const now = length * (1 + T / stiffness);
      line.lay([0, 0, 0], [now, 0, 0]);
      for (let i = 1; i <= N; i++) line.push(i, [0, 1e-4 * Math.sin((n * Math.PI * i) / (N + 1)), 0]);
      const exact = ((n * Math.PI) / now) * Math.sqrt(T / ((mass * length) / now));
      // The leapfrog scheme is fast by a known amount: sin(ω'·Δt/2) = ω·Δt/2.
      const omega = (2 / line.step) * Math.sin((Math.PI * line.step) / periodOf(line, Math.ceil((N + 1) / (2 * n))));
      check({
        source: "lumpedString",
        quantity: `mode ${n} of ${N} masses, over that of a string`,
        pairs: [[omega / exact, ratio]],
        share: 2e-6,
        why: "an exact mode of the lumped string; passages found between steps",
      });
    });
  }
});

/** Time between the 1st and the 21st upward passage of a node through its mean, over 20. */
function periodOf(line: BareLine, node: number): number {
  const passages: number[] = [];
  let before = line.position(node)[1];
  while (passages.length < 21) {
    line.advance(1);
    const now = line.position(node)[1];
    if (before < 0 && now >= 0) passages.push(line.time - (line.step * now) / (now - before));
    before = now;
  }
  return (passages.at(-1)! - passages[0]!) / 20;
}

keeps();
