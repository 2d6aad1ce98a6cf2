/** The load cell's filter, channel frequency class 60 of SAE J211-1 and ISO 6487, against its gain limits. */
import { cfc60 } from "@secondline/engine";
import { describe, expect, it } from "vitest";
import { evidence } from "../evidence/evidence.ts";
import { close } from "../support/close.ts";

const { check, keeps } = evidence("filter");

const RATE = 10_000;

/** Gain at a frequency in dB, from a filtered swing, read in the middle of 4 s. */
function gain(frequency: number): number {
  const input = Float64Array.from({ length: 4 * RATE }, (_, k) => Math.sin((2 * Math.PI * frequency * k) / RATE));
  const output = cfc60(input, RATE).subarray(RATE, 3 * RATE);
  let square = 0;
  for (const y of output) square += y * y;
  return 10 * Math.log10((2 * square) / output.length);
}

describe("CFC 60", () => {
  // Limits from memory, not read in the standards: ±0.5 dB up to F_H = 60 Hz, +0.5/−4 dB at F_N = 100 Hz; above it the upper
  // limit falls by 9 dB an octave from +0.5 dB, the lower one by 24 dB an octave from −4 dB.
  const upper = (f: number) => (f <= 100 ? 0.5 : 0.5 - 9 * Math.log2(f / 100));
  const lower = (f: number) =>
    f <= 60 ? -0.5 : f <= 100 ? -0.5 - 3.5 * (Math.log2(f / 60) / Math.log2(100 / 60)) : -4 - 24 * Math.log2(f / 100);

  it("keeps within the class's limits from 0.5 to 500 Hz", () => {
    const frequencies = [0.5, 1, 5, 10, 20, 40, 60, 80, 100, 150, 200, 300, 500];
    check({
      source: "cfc",
      quantity: "gain from 0.5 to 500 Hz",
      unit: "dB",
      pairs: frequencies.map((frequency) => [gain(frequency), [lower(frequency), upper(frequency)]]),
      why: "the limits themselves",
    });
  });

  it("passes 100 Hz 3 dB down, as a two-pole Butterworth run both ways does: −10·log(1 + (f/f₀)⁴), f₀ = 2.0775·60 Hz", () => {
    const pairs = [10, 30, 60, 100, 200, 400].map((frequency) => {
      const warped = Math.tan((Math.PI * frequency) / RATE) / Math.tan((Math.PI * 60 * 2.0775) / RATE);
      return [gain(frequency), -20 * Math.log10(1 + warped ** 4)] as const;
    });
    const why = "closed form of the bilinear transform";
    check({ source: "butterworth", quantity: "gain at 10 to 400 Hz", unit: "dB", pairs, share: 1e-4, why });
    close(gain(100), -3.01, 0.02, "the class is often named by its 100 Hz at −3 dB");
  });

  it("delays nothing: a symmetric pulse keeps its middle", () => {
    const pulse = Float64Array.from({ length: RATE }, (_, k) => Math.exp(-(((k - 5000) / 60) ** 2)));
    const out = cfc60(pulse, RATE);
    expect(out.indexOf(Math.max(...out))).toBe(5000);
    close(
      out.reduce((sum, x) => sum + x, 0),
      pulse.reduce((sum, x) => sum + x, 0),
      1e-9,
      "the impulse passes whole",
    );
  });

  it("refuses a rate too low to carry the class", () => {
    expect(() => cfc60(new Float64Array(10), 500)).toThrow(/600/);
  });
});

keeps();
