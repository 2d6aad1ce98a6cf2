/** Bounds from a count of tests, without an assumed distribution. */
import { betaQuantile, incompleteBeta } from "./beta.ts";

/** Tests needed so that the least of them bounds the (1 − content) quantile with the confidence (Wilks 1941) [-]. */
export function testsForLeast(content: number, confidence: number): number {
  return Math.ceil(Math.log(1 - confidence) / Math.log(content));
}

/** Tests needed so that least and largest enclose the content with the confidence (Wilks 1941) [-]. */
export function testsForRange(content: number, confidence: number): number {
  let n = 2;
  while (1 - content ** n - n * (1 - content) * content ** (n - 1) < confidence) n++;
  return n;
}

/** Tests without failure that show a reliability with a confidence; the same count as `testsForLeast` [-]. */
export function testsWithoutFailure(reliability: number, confidence: number): number {
  return testsForLeast(reliability, confidence);
}

/**
 * Rank, from 1, of the order statistic that is a lower bound of the (1 − content) quantile with the confidence;
 * undefined when there are too few tests even for the least.
 */
export function lowerBoundRank(n: number, content: number, confidence: number): number | undefined {
  let rank = 0;
  // P(at least r of n lie below the quantile) = I_{1−content}(r, n − r + 1).
  while (rank < n && incompleteBeta(1 - content, rank + 1, n - rank) >= confidence) rank++;
  return rank === 0 ? undefined : rank;
}

/** Clopper–Pearson interval of a share, two-sided [-, -]. */
export function clopperPearson(hits: number, trials: number, confidence: number): [low: number, high: number] {
  const tail = (1 - confidence) / 2;
  return [
    hits === 0 ? 0 : betaQuantile(tail, hits, trials - hits + 1),
    hits === trials ? 1 : betaQuantile(1 - tail, hits + 1, trials - hits),
  ];
}

/** One-sided upper bound of a share [-]. */
export function shareUpperBound(hits: number, trials: number, confidence: number): number {
  return hits === trials ? 1 : betaQuantile(confidence, hits + 1, trials - hits);
}
