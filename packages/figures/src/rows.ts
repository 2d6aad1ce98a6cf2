/** Bars laid in as few rows as they need so that none covers another. */
export interface Bar {
  readonly from: number;
  readonly to: number;
}

/** Row of every bar, 0 first; `gap` is kept free after each, in the bars' own unit. */
export function rowsOf(bars: readonly Bar[], gap: number): number[] {
  const ends: number[] = [];
  const rows = new Array<number>(bars.length).fill(0);
  const order = bars.map((_, i) => i).sort((a, b) => bars[a]!.from - bars[b]!.from);
  for (const i of order) {
    const bar = bars[i]!;
    const row = ends.findIndex((end) => end <= bar.from);
    const own = row < 0 ? ends.length : row;
    ends[own] = bar.to + gap;
    rows[i] = own;
  }
  return rows;
}
