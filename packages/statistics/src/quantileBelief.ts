/**
 * Belief about a low quantile of the strength from a sample: a posterior on a grid for every possible family, with the scatter
 * between batches as a random effect.
 *
 * Within a family the logarithm of the scale and the location have a flat prior (right Haar measure), so that Bayesian bounds
 * of a quantile of a location–scale family are exact confidence bounds for complete samples (J. F. Lawless, *Statistical Models
 * and Methods for Lifetime Data*, 2003, app. E). With the same measure marginal likelihoods can be compared between families
 * (J. O. Berger, L. R. Pericchi, J. A. Varshavsky, Sankhyā A 60 (1998) 307–321).
 */
import { FAMILY_NAMES, type FamilyName } from "./family.ts";
import { familyPosterior } from "./familyPosterior.ts";
import { findRoot } from "./findRoot.ts";
import { type Observation, observationPlace } from "./observation.ts";

/** A lower bound of a quantile over several families, each with its weight. */
export interface QuantileBelief {
  /** Families with a say in the bound, likeliest first. */
  readonly families: readonly FamilyName[];
  /** Value that the quantile exceeds with the confidence, and the likeliest family; in the unit of the sample. */
  readonly lowerBound: (confidence: number) => { readonly value: number; readonly family: FamilyName };
}

/**
 * The bound is that of a mixture of the families, each weighed by its likelihood to this power, so that an unlikely family
 * counts little. But a few tests cannot tell a Weibull population, with its long lower tail, from a normal one, and a Weibull
 * population taken for a normal one would be trusted too much. So a higher confidence is asked of the mixture, see `allowedDoubt`.
 * Both are set by simulation of the coverage, see `test/coverage.long.ts` [-].
 */
const LIKELIHOOD_POWER = 4;
/** A family with a smaller share is not named [-]. */
const LEAST_TOLD_SHARE = 0.01;

/**
 * Share of doubt that the mixture may leave when the answer may leave `1 − confidence`. It is smaller for many tests, where
 * families lie far apart compared with the width of a bound. It is larger for censored tests, whose bounds are cautious anyway,
 * and if scatter between batches hides the family.
 */
function allowedDoubt(confidence: number, { results, censored, batchScatter }: Evidence): number {
  const doubt = 1 - confidence;
  const family = 0.585 + 0.3 / results + (censored ? 0.4 * Math.min(1, 5 / results) : 0);
  const power = 0.4 * (1 - 2 / results);
  return 1 - Math.min(doubt, family * (1 + 0.35 * batchScatter) * doubt * Math.min(1, doubt / 0.25) ** power);
}

interface Evidence {
  /** Number of results with a place [-]. */
  readonly results: number;
  /** Some results are bounds. */
  readonly censored: boolean;
  /** Chance that batches scatter [-]. */
  readonly batchScatter: number;
}

/**
 * `batches`: the batch of every observation, as a whole number; absent: one population. `content`: share above the quantile.
 * Undefined if the results contradict each other so much that no family fits.
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
  const weights = all.map(({ logEvidence }) => Math.exp(LIKELIHOOD_POWER * (logEvidence - most)));
  const total = weights.reduce((a, b) => a + b, 0);
  const likely = all
    .map((one, i) => ({ ...one, share: weights[i]! / total }))
    .filter(({ share }) => share > 1e-6)
    .sort((a, b) => b.share - a.share);
  const above = (x: number) => likely.reduce((sum, one) => sum + one.share * one.above(x), 0);
  const results = sample.filter(({ kind }) => kind === "exact" || kind === "between").length;
  const evidence: Evidence = {
    results,
    censored: results < sample.length,
    batchScatter: likely.reduce((sum, { share, noBatchScatter }) => sum + share * (1 - noBatchScatter), 0),
  };
  return {
    families: likely.filter(({ share }) => share > LEAST_TOLD_SHARE).map(({ name }) => name),
    lowerBound: (confidence) => ({
      family: likely[0]!.name,
      value: unit * Math.exp(rootOf(above, allowedDoubt(confidence, evidence))),
    }),
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
