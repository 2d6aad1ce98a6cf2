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
