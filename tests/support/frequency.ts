/** Frequencies of a recorded motion. */

/**
 * Frequency of the strongest component between two bounds [1/s]: maximum of the amplitude spectrum of the signal under a Hann
 * window, found to well below the bin width by golden section.
 */
export function strongestFrequency(signal: Float64Array, step: number, low: number, high: number): number {
  const duration = signal.length * step;
  const mean = signal.reduce((sum, x) => sum + x, 0) / signal.length;
  const windowed = signal.map((x, i) => (x - mean) * (1 - Math.cos((2 * Math.PI * (i + 0.5)) / signal.length)));
  const amplitude = (frequency: number) => {
    const turn = 2 * Math.PI * frequency * step;
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    let [c, s, re, im] = [1, 0, 0, 0];
    for (const x of windowed) {
      re += x * c;
      im += x * s;
      [c, s] = [c * cos - s * sin, s * cos + c * sin];
    }
    return re * re + im * im;
  };
  let best = low;
  let most = 0;
  for (let f = low; f <= high; f += 0.25 / duration) {
    const a = amplitude(f);
    if (a > most) [best, most] = [f, a];
  }
  let [from, to] = [best - 0.5 / duration, best + 0.5 / duration];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let i = 0; i < 50; i++) {
    const [a, b] = [to - golden * (to - from), from + golden * (to - from)];
    if (amplitude(a) > amplitude(b)) to = b;
    else from = a;
  }
  return 0.5 * (from + to);
}
