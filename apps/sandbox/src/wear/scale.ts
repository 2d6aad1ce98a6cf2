/** A straight map from a quantity to pixels and back, and round numbers along it. */
export interface Scale {
  readonly from: number;
  readonly to: number;
  readonly px: (value: number) => number;
  readonly value: (px: number) => number;
}

export function scaleOf(from: number, to: number, start: number, end: number): Scale {
  const slope = (end - start) / (to - from);
  return { from, to, px: (value) => start + (value - from) * slope, value: (px) => from + (px - start) / slope };
}

/** Round numbers from `from` to `to`, at most `most` of them. */
export function roundTicks(from: number, to: number, most: number): number[] {
  const rough = (to - from) / Math.max(1, most);
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((n) => n * size).find((s) => s >= rough) ?? 10 * size;
  const ticks: number[] = [];
  for (let i = Math.ceil(from / step - 1e-9); i * step <= to + 1e-9; i += 1)
    ticks.push(Number((i * step).toPrecision(12)));
  return ticks;
}
