/**
 * A min/max pyramid over evenly spaced samples: the exact extremes of any range, and where they lie, in a time that
 * hardly depends on the range's length. Level k holds, per block of BRANCHING^(k+1) samples, the places of its extremes.
 */
const BRANCHING = 8;

interface Level {
  readonly minAt: Uint32Array;
  readonly maxAt: Uint32Array;
}

export interface Pyramid {
  readonly samples: Float32Array | Float64Array;
  readonly levels: readonly Level[];
}

/** Indices of the least and the greatest sample of a range; −1 when the range holds no finite sample. */
export interface Extremes {
  minAt: number;
  maxAt: number;
}

export function buildPyramid(samples: Float32Array | Float64Array): Pyramid {
  const levels: Level[] = [];
  let below: Level | null = null;
  for (let count = samples.length; count > 1; ) {
    count = Math.ceil(count / BRANCHING);
    const level = { minAt: new Uint32Array(count), maxAt: new Uint32Array(count) };
    for (let block = 0; block < count; block++) fillBlock(samples, below, level, block);
    levels.push(level);
    below = level;
  }
  return { samples, levels };
}

/** The first of equal extremes wins, and a NaN never does (unless a block holds nothing else). */
function fillBlock(samples: Float32Array | Float64Array, below: Level | null, level: Level, block: number): void {
  const first = block * BRANCHING;
  const end = Math.min(first + BRANCHING, below === null ? samples.length : below.minAt.length);
  let minAt = below === null ? first : below.minAt[first]!;
  let maxAt = below === null ? first : below.maxAt[first]!;
  for (let i = first + 1; i < end; i++) {
    const low = below === null ? i : below.minAt[i]!;
    const high = below === null ? i : below.maxAt[i]!;
    if (samples[low]! < samples[minAt]! || Number.isNaN(samples[minAt])) minAt = low;
    if (samples[high]! > samples[maxAt]! || Number.isNaN(samples[maxAt])) maxAt = high;
  }
  level.minAt[block] = minAt;
  level.maxAt[block] = maxAt;
}

/** Exact extremes of the samples from index `from` up to, but without, index `to`. */
export function extremes(pyramid: Pyramid, from: number, to: number): Extremes {
  const { samples, levels } = pyramid;
  const found: Extremes = { minAt: -1, maxAt: -1 };
  let low = Math.max(0, from);
  let high = Math.min(samples.length, to);
  // Ragged ends are taken at the present level; between them lie whole blocks of the next one.
  for (let level = -1; low < high; level++) {
    const last = level + 1 >= levels.length;
    while (low < high && (last || low % BRANCHING !== 0)) takeBlock(pyramid, level, low++, found);
    while (low < high && high % BRANCHING !== 0) takeBlock(pyramid, level, --high, found);
    low /= BRANCHING;
    high /= BRANCHING;
  }
  return found;
}

function takeBlock(pyramid: Pyramid, level: number, block: number, found: Extremes): void {
  const { samples, levels } = pyramid;
  const minAt = level < 0 ? block : levels[level]!.minAt[block]!;
  const maxAt = level < 0 ? block : levels[level]!.maxAt[block]!;
  const least = samples[minAt]!;
  const greatest = samples[maxAt]!;
  if (found.minAt < 0 ? !Number.isNaN(least) : isBetter(samples[found.minAt]! - least, minAt, found.minAt)) {
    found.minAt = minAt;
  }
  if (found.maxAt < 0 ? !Number.isNaN(greatest) : isBetter(greatest - samples[found.maxAt]!, maxAt, found.maxAt)) {
    found.maxAt = maxAt;
  }
}

/** Blocks are visited out of order, so among equal values the earlier sample must be chosen here. */
function isBetter(gain: number, at: number, foundAt: number): boolean {
  return gain > 0 || (gain === 0 && at < foundAt);
}
