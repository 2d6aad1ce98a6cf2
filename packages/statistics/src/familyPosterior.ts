/** Posterior of a quantile of one family, on a grid of the scale and of the scatter between batches. */
import { FAMILIES, type FamilyName } from "./family.ts";
import {
  type BatchSummary,
  batchSamples,
  batchSummary,
  type LocationSample,
  locationGiven,
  locationSample,
} from "./locationPosterior.ts";
import { mixedQuantile } from "./mixedQuantile.ts";
import { normalTail } from "./normalTail.ts";
import { type Observation, observationPlace, standardDeviation } from "./observation.ts";

export interface FamilyPosterior {
  /** Logarithm of the marginal likelihood, up to a constant that is the same for every family [-]. */
  readonly logEvidence: number;
  /** P(quantile > x); of the normal family given that the quantile is above 0 [-]. */
  readonly above: (x: number) => number;
  /** Chance that batches do not scatter; 1 where none are named [-]. */
  readonly noBatchScatter: number;
}

/** Points of the grid of ln σ: the integrands are smooth and vanish at both ends [-]. */
const SCALE_POINTS = 41;
/**
 * Prior of the standard deviation of ln strength between batches: 0 with this chance, else anything up to the largest, on a
 * grid. A tenth is a bad make, and more than the largest is unheard of. Set by simulation of the coverage, see
 * `test/coverage.long.ts` [-].
 */
export const NO_BATCH_SCATTER_CHANCE = 0.75;
export const MOST_BATCH_SCATTER = 0.3;
const BATCH_STEP = 0.0125;
const BATCH_GRID = Array.from({ length: 1 + MOST_BATCH_SCATTER / BATCH_STEP }, (_, i) => BATCH_STEP * i);
const BATCH_PRIOR = BATCH_GRID.map(
  (_, i) =>
    ((1 - NO_BATCH_SCATTER_CHANCE) * (i === 0 ? 0.5 : 1)) / (BATCH_GRID.length - 0.5) +
    (i === 0 ? NO_BATCH_SCATTER_CHANCE : 0),
);

/** One value of σ and of the scatter between batches, with the location normal given both. */
interface Cell {
  readonly weight: number;
  /** Scatter between batches [-]. */
  readonly tau: number;
  readonly above: (y: number) => number;
}

/** `sample`: of the order of 1; `p`: share below the quantile. */
export function familyPosterior(
  sample: readonly Observation[],
  name: FamilyName,
  p: number,
  batches: readonly number[] | undefined,
): FamilyPosterior {
  const family = FAMILIES[name];
  const data = locationSample(sample, name);
  const scales = scaleGrid(sample, family.logarithmic);
  const grouped = batches !== undefined && new Set(batches).size > 1;
  const cells = grouped ? batchCells(sample, batches, name, scales, p) : plainCells(data, scales, family.quantile(p));
  const logs = cells.map(({ weight }) => (Number.isFinite(weight) ? weight : Number.NEGATIVE_INFINITY));
  const most = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - most));
  const total = weights.reduce((a, b) => a + b, 0);
  const used = cells.flatMap((cell, i) =>
    weights[i]! > 1e-12 * total ? [{ w: weights[i]! / total, above: cell.above }] : [],
  );
  const alike = cells.reduce((sum, { tau }, i) => sum + (tau === 0 ? weights[i]! : 0), 0);
  const mass = (y: number) => used.reduce((sum, { w, above }) => sum + w * above(y), 0);
  const positive = family.logarithmic ? 1 : mass(0);
  return {
    logEvidence: most + Math.log(total * scales.step),
    above: (x) => mass(family.logarithmic ? Math.log(x) : x) / positive,
    noBatchScatter: alike / total,
  };
}

interface ScaleGrid {
  /** Values of σ. */
  readonly values: readonly number[];
  /** Spacing of ln σ. */
  readonly step: number;
}

function scaleGrid(sample: readonly Observation[], logarithmic: boolean): ScaleGrid {
  const places = sample.filter((o) => o.kind !== "above").map(observationPlace);
  const all = sample.map(observationPlace);
  const onScale = (values: readonly number[]) => values.map((x) => (logarithmic ? Math.log(x) : x));
  const deviation = Math.max(standardDeviation(onScale(places)) ?? 0, standardDeviation(onScale(all)) ?? 0, 1e-6);
  const freedom = Math.max(1, places.length - 1);
  const centre = Math.log(deviation);
  const unit = 1 / Math.sqrt(2 * freedom);
  const censored = places.length < sample.length ? 1 : 0;
  const from = centre - Math.min(3, 7 * unit) - 0.25;
  const to = centre + Math.min(5, 8 * unit) + 0.5 * censored + 0.25;
  const step = (to - from) / (SCALE_POINTS - 1);
  return { values: Array.from({ length: SCALE_POINTS }, (_, i) => Math.exp(from + i * step)), step };
}

function plainCells(data: LocationSample, { values }: ScaleGrid, z: number): Cell[] {
  return values.map((sigma) => {
    const { logArea, above } = locationGiven(data, sigma);
    return { weight: logArea, tau: 0, above: (y) => above(y - z * sigma) };
  });
}

/** Given σ and τ, batches and location are taken as normal. For complete normal samples this is exact. */
function batchCells(
  sample: readonly Observation[],
  batches: readonly number[],
  name: FamilyName,
  { values }: ScaleGrid,
  p: number,
): Cell[] {
  const parts = batchSamples(sample, batches, name);
  return values.flatMap((sigma) => {
    const summaries = parts.map((part) => batchSummary(part, sigma));
    return BATCH_GRID.map((tau, i): Cell => {
      const { logArea, centre, deviation } = pooled(summaries, tau);
      const quantile = mixedQuantile(name, p, tau / sigma) * sigma;
      const prior = Math.log(BATCH_PRIOR[i]!);
      return { weight: logArea + prior, tau, above: (y) => normalTail((y - quantile - centre) / deviation) };
    });
  });
}

function pooled(summaries: readonly BatchSummary[], tau: number) {
  let [precision, weighted, log] = [0, 0, 0];
  for (const { centre, variance, logArea } of summaries) {
    const w = 1 / (variance + tau * tau);
    precision += w;
    weighted += w * centre;
    log += logArea + 0.5 * Math.log(w);
  }
  const centre = weighted / precision;
  for (const s of summaries) log -= (0.5 * (s.centre - centre) ** 2) / (s.variance + tau * tau);
  log -= 0.5 * Math.log(precision) + 0.5 * (summaries.length - 1) * Math.log(2 * Math.PI);
  return { logArea: log, centre, deviation: 1 / Math.sqrt(precision) };
}
