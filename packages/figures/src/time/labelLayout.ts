/** Places of labels so that none covers another. Pure geometry in pixels. */

export interface Wish {
  /** Wanted centre of the label [px]. */
  readonly at: number;
  /** Extent along the axis [px]. */
  readonly size: number;
}

/**
 * Centres for labels in one column between `low` and `high`: in their order, as near to their wishes as they can be,
 * none over another. When they do not fit they are spaced evenly, which is the least bad.
 */
export function spreadLabels(wishes: readonly Wish[], low: number, high: number): readonly number[] {
  const order = wishes.map((_, i) => i).sort((a, b) => wishes[a]!.at - wishes[b]!.at || a - b);
  const total = wishes.reduce((sum, wish) => sum + wish.size, 0);
  const squeeze = Math.min(1, (high - low) / Math.max(total, 1e-9));
  // Each cluster is a run of labels that touch; it sits where its members' wishes balance.
  const clusters: Cluster[] = [];
  for (const i of order) {
    const size = wishes[i]!.size * squeeze;
    clusters.push({ members: [i], size, wish: wishes[i]!.at - size / 2 });
    mergeBack(clusters, low, high);
  }
  const centres: number[] = new Array(wishes.length).fill(0);
  for (const cluster of clusters) {
    let top = placed(cluster, low, high);
    for (const i of cluster.members) {
      const size = wishes[i]!.size * squeeze;
      centres[i] = top + size / 2;
      top += size;
    }
  }
  return centres;
}

interface Cluster {
  members: number[];
  size: number;
  /** Mean of the tops that the members want for the cluster. */
  wish: number;
}

function placed(cluster: Cluster, low: number, high: number): number {
  return Math.max(low, Math.min(cluster.wish, high - cluster.size));
}

function mergeBack(clusters: Cluster[], low: number, high: number): void {
  while (clusters.length > 1) {
    const last = clusters.at(-1)!;
    const before = clusters.at(-2)!;
    if (placed(before, low, high) + before.size <= placed(last, low, high)) return;
    const count = before.members.length + last.members.length;
    const wish = (before.wish * before.members.length + (last.wish - before.size) * last.members.length) / count;
    clusters.splice(-2, 2, {
      members: [...before.members, ...last.members],
      size: before.size + last.size,
      wish,
    });
  }
}

export interface Flag extends Wish {
  /** Rank: if two labels want a place, the higher one keeps it. */
  readonly rank: number;
}

/**
 * A lane (0 is the first) and a left edge for each label of a row of marks; null for those without room, which are
 * then drawn without words. Labels start at their mark, or end there near the right edge.
 */
export function flagLanes(
  flags: readonly Flag[],
  lanes: number,
  width: number,
): readonly ({ readonly lane: number; readonly left: number } | null)[] {
  const taken: { left: number; right: number }[][] = Array.from({ length: lanes }, () => []);
  const result: ({ lane: number; left: number } | null)[] = new Array(flags.length).fill(null);
  const order = flags.map((_, i) => i).sort((a, b) => flags[b]!.rank - flags[a]!.rank || flags[a]!.at - flags[b]!.at);
  for (const i of order) {
    const { at, size } = flags[i]!;
    if (at < 0 || at > width || size > width) continue;
    for (const left of [at, at - size]) {
      const right = left + size;
      const lane =
        left < 0 || right > width ? -1 : taken.findIndex((row) => row.every((t) => right <= t.left || left >= t.right));
      if (lane < 0) continue;
      taken[lane]!.push({ left, right });
      result[i] = { lane, left };
      break;
    }
  }
  return result;
}
