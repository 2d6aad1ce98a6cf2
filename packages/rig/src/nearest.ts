/** Edit distance of two words: insertions, deletions, replacements and swaps of neighbours [-]. */
function distance(a: string, b: string): number {
  const rows: number[][] = [];
  for (let i = 0; i <= a.length; i++) {
    const row: number[] = [i];
    for (let j = 1; j <= b.length; j++) {
      if (i === 0) {
        row.push(j);
        continue;
      }
      const above = rows[i - 1]!;
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let d = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) d = Math.min(d, rows[i - 2]![j - 2]! + 1);
      row.push(d);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}

/** The word of the list that was probably meant, or undefined when none is near. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  if (word.length > 40) return undefined;
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of words) {
    const d = distance(word.toLowerCase(), candidate.toLowerCase());
    if (d < least) {
      least = d;
      best = candidate;
    }
  }
  return least <= Math.max(1, Math.floor(word.length / 3)) ? best : undefined;
}
