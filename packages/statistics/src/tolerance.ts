/** One-sided factors: how many standard deviations below the mean the characteristic value lies. */
import { normalQuantile } from "./normal.ts";
import { noncentralTQuantile, tQuantile } from "./studentT.ts";

/**
 * Exact one-sided normal tolerance factor: mean − k·s lies below the (1 − content) quantile with the given confidence.
 * k = t'(confidence; n − 1, z·√n) / √n with the non-central t (ISO 16269-6; Natrella, NBS Handbook 91) [-].
 */
export function toleranceFactor(n: number, content: number, confidence: number): number {
  requireCount(n, 2);
  const key = `${n} ${content} ${confidence}`;
  const known = KNOWN_FACTORS.get(key);
  if (known !== undefined) return known;
  const root = Math.sqrt(n);
  const factor = noncentralTQuantile(confidence, n - 1, normalQuantile(content) * root) / root;
  KNOWN_FACTORS.set(key, factor);
  return factor;
}

/** Factors are kept: one costs about a millisecond, and the same few are needed again and again. */
const KNOWN_FACTORS = new Map<string, number>();

/** The same with a standard deviation that is known: z_content + z_confidence / √n [-]. */
export function toleranceFactorKnownSpread(n: number, content: number, confidence: number): number {
  requireCount(n, 1);
  return normalQuantile(content) + normalQuantile(confidence) / Math.sqrt(n);
}

/**
 * k_n of EN 1990:2002 Annex D, table D1: X_k = mean·(1 − k_n·V), prediction method with vague prior. From the formula,
 * which the printed table truncates [-].
 */
export function en1990Factor(n: number, spreadKnown: boolean): number {
  requireCount(n, spreadKnown ? 1 : 2);
  const widen = Math.sqrt(1 + 1 / n);
  return (spreadKnown ? normalQuantile(0.95) : tQuantile(0.95, n - 1)) * widen;
}

/** Natrella's approximation to the tolerance factor, usable from about ten tests; undefined where it fails [-]. */
export function natrellaFactor(n: number, content: number, confidence: number): number | undefined {
  const [zp, zc] = [normalQuantile(content), normalQuantile(confidence)];
  const a = 1 - (zc * zc) / (2 * (n - 1));
  const b = zp * zp - (zc * zc) / n;
  const k = (zp + Math.sqrt(zp * zp - a * b)) / a;
  return a > 0 && Number.isFinite(k) ? k : undefined;
}

function requireCount(n: number, least: number): void {
  if (!Number.isInteger(n) || n < least)
    throw new Error(`the number of tests must be a whole number from ${least}, got ${n}`);
}
