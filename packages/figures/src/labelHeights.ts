/** Heights of labels, moved apart from the top down so that none covers another [px]. */
export function labelHeights(heights: readonly number[], line = 15): number[] {
  const placed = [...heights];
  let last = Number.NEGATIVE_INFINITY;
  const order = heights.map((_, i) => i).sort((a, b) => (heights[a] ?? 0) - (heights[b] ?? 0));
  for (const i of order) {
    last = Math.max(heights[i] ?? 0, last + line);
    placed[i] = last;
  }
  return placed;
}
