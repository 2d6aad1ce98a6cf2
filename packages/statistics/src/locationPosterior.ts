/** The location of a family given its scale σ: posterior under a flat prior, of a whole sample or batch by batch. */
import { HALF_LOG_2PI } from "./constants.ts";
import { FAMILIES, type Family, type FamilyName } from "./family.ts";
import { gammaP, logGamma } from "./gamma.ts";
import { normalTail } from "./normalTail.ts";
import type { Observation } from "./observation.ts";
import { digamma, trigamma } from "./polygamma.ts";

/** A sample prepared for one family: y = x or ln x. */
export interface LocationSample {
  readonly family: Family;
  readonly exact: readonly number[];
  readonly above: readonly number[];
  /** Left-censored and interval observations: lower end (−∞) and upper end. */
  readonly within: readonly (readonly [number, number])[];
  readonly mean: number;
  /** Sum of squares about the mean. */
  readonly squares: number;
  /** Sum of y where y = ln x: it turns a density over y into one over x. */
  readonly jacobian: number;
}

export function locationSample(sample: readonly Observation[], name: FamilyName): LocationSample {
  const family = FAMILIES[name];
  const y = (x: number) => (family.logarithmic ? Math.log(x) : x);
  const exact = sample.flatMap((o) => (o.kind === "exact" ? [y(o.value)] : []));
  const mean = exact.length === 0 ? 0 : exact.reduce((a, b) => a + b, 0) / exact.length;
  return {
    family,
    exact,
    above: sample.flatMap((o) => (o.kind === "above" ? [y(o.value)] : [])),
    within: sample.flatMap((o) =>
      o.kind === "below"
        ? [[Number.NEGATIVE_INFINITY, y(o.value)] as const]
        : o.kind === "between"
          ? [[y(o.from), y(o.to)] as const]
          : [],
    ),
    mean,
    squares: exact.reduce((sum, v) => sum + (v - mean) ** 2, 0),
    jacobian: family.logarithmic ? exact.reduce((a, b) => a + b, 0) : 0,
  };
}

export interface LocationPosterior {
  /** Logarithm of the integral of the likelihood over the location. */
  readonly logArea: number;
  /** P(location > y) [-]. */
  readonly above: (y: number) => number;
}

export function locationGiven(data: LocationSample, sigma: number): LocationPosterior {
  const { family, exact, above, within } = data;
  if (family.name === "weibull" && within.length === 0) return weibullLocation(data, sigma);
  if (family.name !== "weibull" && above.length === 0 && within.length === 0) {
    const deviation = sigma / Math.sqrt(exact.length);
    return {
      logArea: normalArea(data, sigma),
      above: (y) => normalTail((y - data.mean) / deviation),
    };
  }
  return numericLocation(data, sigma);
}

/** Integral over the location of complete normal observations. */
function normalArea({ exact, squares, jacobian }: LocationSample, sigma: number): number {
  const n = exact.length;
  return (
    -n * (Math.log(sigma) + HALF_LOG_2PI) -
    squares / (2 * sigma * sigma) +
    Math.log(sigma / Math.sqrt(n)) +
    HALF_LOG_2PI -
    jacobian
  );
}

/** Given the shape, exp(−location/σ) of a Weibull sample is gamma-distributed, survivors or not. */
function weibullLocation(data: LocationSample, sigma: number): LocationPosterior {
  const { exact } = data;
  const r = exact.length;
  const { logSum, area } = weibullArea(data, sigma);
  return {
    logArea: area,
    above: (y) => {
      const z = logSum - y / sigma;
      // Far out the function is 1 or 0 to rounding, and its series would only run into infinities.
      return z > 50 ? 1 : z < -700 ? 0 : gammaP(r, Math.exp(z));
    },
  };
}

function weibullArea({ exact, above, jacobian }: LocationSample, sigma: number) {
  const all = [...exact, ...above];
  let most = Number.NEGATIVE_INFINITY;
  for (const v of all) if (v > most) most = v;
  let total = 0;
  for (const v of all) total += Math.exp((v - most) / sigma);
  const logSum = Math.log(total) + most / sigma;
  const r = exact.length;
  let sum = 0;
  for (const v of exact) sum += v;
  const area = sum / sigma - (r - 1) * Math.log(sigma) + logGamma(r) - r * logSum - jacobian;
  return { logSum, area };
}

/** Points over the location, evenly spaced [-]. */
const LOCATION_POINTS = 41;
/** Half the width of the grid, in standard deviations [-]. */
const GRID_REACH = 6;

function numericLocation(data: LocationSample, sigma: number): LocationPosterior {
  const { mode, deviation, peak } = locationPeak(data, sigma);
  const step = (2 * GRID_REACH * deviation) / (LOCATION_POINTS - 1);
  const from = mode - GRID_REACH * deviation;
  const density = Array.from(
    { length: LOCATION_POINTS },
    (_, i) => Math.exp(logLikelihood(data, from + i * step, sigma) - peak) || 0,
  );
  const tail = new Array<number>(LOCATION_POINTS).fill(0);
  for (let i = LOCATION_POINTS - 2; i >= 0; i--) tail[i] = tail[i + 1]! + 0.5 * (density[i]! + density[i + 1]!);
  const total = tail[0]!;
  return {
    logArea: peak + Math.log(total * step) - data.jacobian,
    above: (y) => {
      const place = (y - from) / step;
      if (place <= 0) return 1;
      if (place >= LOCATION_POINTS - 1) return 0;
      const i = Math.floor(place);
      const share = place - i;
      const here = density[i]! + share * (density[i + 1]! - density[i]!);
      return (tail[i + 1]! + 0.5 * (1 - share) * (here + density[i + 1]!)) / total;
    },
  };
}

function logLikelihood(
  { family, exact, above, within, mean, squares }: LocationSample,
  location: number,
  sigma: number,
): number {
  const normal = family.name !== "weibull";
  const n = exact.length;
  let sum = -n * Math.log(sigma);
  if (normal) sum -= n * HALF_LOG_2PI + (squares + n * (mean - location) ** 2) / (2 * sigma * sigma);
  else for (const y of exact) sum += family.logDensity((y - location) / sigma);
  for (const y of above) {
    const z = (y - location) / sigma;
    sum += normal && z < 30 ? Math.log(normalTail(z)) : family.logSurvival(z);
  }
  for (const [low, high] of within) {
    if (low === Number.NEGATIVE_INFINITY) sum += family.logCdf((high - location) / sigma);
    else {
      const [a, b] = [(low - location) / sigma, (high - location) / sigma];
      // From the nearer tail, so that nothing is lost.
      sum +=
        a + b > 0
          ? logDifference(family.logSurvival(a), family.logSurvival(b))
          : logDifference(family.logCdf(b), family.logCdf(a));
    }
  }
  return sum;
}

/** ln(e^a − e^b) for a > b. */
function logDifference(a: number, b: number): number {
  return a === Number.NEGATIVE_INFINITY ? a : a + Math.log(-Math.expm1(b - a));
}

/** Newton's method with differences; the log-likelihood is concave in the location. */
function locationPeak(data: LocationSample, sigma: number) {
  const places = [
    ...data.exact,
    ...data.above,
    ...data.within.map(([low, high]) => (low === Number.NEGATIVE_INFINITY ? high : (low + high) / 2)),
  ];
  let mode = places.reduce((a, b) => a + b, 0) / places.length;
  const h = 1e-3 * sigma;
  const f = (location: number) => logLikelihood(data, location, sigma);
  let curvature = -1 / (sigma * sigma);
  for (let i = 0; i < 40; i++) {
    const [left, middle, right] = [f(mode - h), f(mode), f(mode + h)];
    const slope = (right - left) / (2 * h);
    const bend = (right - 2 * middle + left) / (h * h);
    if (Number.isFinite(bend) && bend < 0) curvature = bend;
    const move = Math.max(-2 * sigma, Math.min(2 * sigma, -slope / curvature));
    if (!Number.isFinite(move)) break;
    mode += move;
    if (Math.abs(move) < 1e-6 * sigma) break;
  }
  return { mode, deviation: 1 / Math.sqrt(-curvature), peak: f(mode) };
}

/** Likelihood of one batch over its location, as a normal density of the same area, centre and variance. */
export interface BatchSummary {
  readonly centre: number;
  readonly variance: number;
  readonly logArea: number;
}

/**
 * The batches of a sample, prepared. Batches of survivors alone bound nothing from above and are left out, which is the safe
 * side.
 */
export function batchSamples(
  sample: readonly Observation[],
  batches: readonly number[],
  name: FamilyName,
): LocationSample[] {
  const parts = new Map<number, Observation[]>();
  sample.forEach((o, i) => {
    const part = parts.get(batches[i]!);
    if (part === undefined) parts.set(batches[i]!, [o]);
    else part.push(o);
  });
  const told = [...parts.values()].filter((part) => part.some((o) => o.kind === "exact" || o.kind === "between"));
  return told.map((part) => locationSample(part, name));
}

export function batchSummary(data: LocationSample, sigma: number): BatchSummary {
  const { family, exact, above, within } = data;
  if (within.length === 0 && exact.length > 0) {
    const r = exact.length;
    if (family.name === "weibull") {
      const { logSum, area } = weibullArea(data, sigma);
      return { centre: sigma * (logSum - digamma(r)), variance: sigma * sigma * trigamma(r), logArea: area };
    }
    if (above.length === 0)
      return { centre: data.mean, variance: (sigma * sigma) / r, logArea: normalArea(data, sigma) };
  }
  const { mode, deviation, peak } = locationPeak(data, sigma);
  return {
    centre: mode,
    variance: deviation * deviation,
    logArea: peak + Math.log(deviation) + HALF_LOG_2PI - data.jacobian,
  };
}
