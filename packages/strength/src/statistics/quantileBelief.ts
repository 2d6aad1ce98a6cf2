/**
 * What a sample says of a low quantile of the strength: a posterior on a grid for every family that could be, with the scatter
 * between batches as a random effect.
 *
 * Within a family the logarithm of the scale and the location have a flat prior (right Haar measure), with which Bayesian
 * bounds of a quantile of a location–scale family are exact confidence bounds for complete samples (J. F. Lawless,
 * *Statistical Models and Methods for Lifetime Data*, 2003, app. E). With the same measure marginal likelihoods can be
 * compared between families (J. O. Berger, L. R. Pericchi, J. A. Varshavsky, Sankhyā A 60 (1998) 307–321).
 */
import { FAMILY_NAMES, type FamilyName } from "./family.ts";
import { familyPosterior } from "./familyPosterior.ts";
import { findRoot } from "./findRoot.ts";
import { type Observation, observationPlace } from "./observation.ts";

export interface QuantileBelief {
  /** Families that the sample does not speak against, likeliest first; the bound is the lowest of theirs. */
  readonly families: readonly FamilyName[];
  /** Value that the quantile exceeds with the confidence, and the family that gives it; in the unit of the sample. */
  readonly lowerBound: (confidence: number) => { readonly value: number; readonly family: FamilyName };
}

/**
 * A family counts unless another is so many times as likely. A few tests cannot tell a Weibull population, with its long
 * lower tail, from a normal one, so the lowest bound must count; the more tests, the more it takes to rule a family out, for
 * the bounds lie ever further apart beside their own width. Set by simulation of the coverage, see `test/coverage.long.ts` [-].
 */
const countsFrom = (results: number): number => Math.min(0.5, 1.1 / Math.sqrt(results));

/**
 * `batches`: the batch of every observation, as a whole number; absent: one population. `content`: share above the quantile.
 * Undefined where the results contradict each other so that no family can be held against them.
 */
export function quantileBelief(
  sample: readonly Observation[],
  content: number,
  batches?: readonly number[],
): QuantileBelief | undefined {
  const unit = Math.exp(sample.reduce((sum, o) => sum + Math.log(observationPlace(o)), 0) / sample.length);
  const scaled = sample.map((o) => scaledBy(o, 1 / unit));
  const all = FAMILY_NAMES.map((name) => ({ name, ...familyPosterior(scaled, name, 1 - content, batches) })).filter(
    ({ logEvidence }) => Number.isFinite(logEvidence),
  );
  if (all.length === 0) return undefined;
  const most = Math.max(...all.map(({ logEvidence }) => logEvidence));
  const places = sample.filter(({ kind }) => kind === "exact" || kind === "between").length;
  const likely = all
    .filter(({ logEvidence }) => logEvidence >= most + Math.log(countsFrom(places)))
    .sort((a, b) => b.logEvidence - a.logEvidence);
  return {
    families: likely.map(({ name }) => name),
    lowerBound: (confidence) =>
      likely
        .map(({ name, above }) => ({ family: name, value: unit * Math.exp(rootOf(above, confidence)) }))
        .reduce((least, one) => (one.value < least.value ? one : least)),
  };
}

/** ln x at which P(quantile > x) is the confidence. */
function rootOf(above: (x: number) => number, confidence: number): number {
  const f = (log: number) => above(Math.exp(log)) - confidence;
  let [low, high] = [-1, 0.5];
  while (f(low) < 0 && low > -600) low *= 2;
  while (f(high) > 0 && high < 600) high *= 2;
  return f(low) <= 0 ? low : findRoot(f, low, high, 1e-9);
}

function scaledBy(o: Observation, factor: number): Observation {
  return o.kind === "between"
    ? { kind: o.kind, from: o.from * factor, to: o.to * factor }
    : { kind: o.kind, value: o.value * factor };
}
