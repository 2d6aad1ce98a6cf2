/**
 * How likely each part fails, any part fails, and each is the first, from a few draws of a fall: ln of loads and of strengths
 * are normal, so all margins are. Every number is worked out anew for many draws from the posterior of the loads. Its middle
 * and 95 % interval are those over these draws. Within each draw no part fails more often than any part does, so the same holds
 * for middles and limits.
 */
import {
  clopperPearson,
  type LoadCase,
  type NormalMargins,
  type Random,
  seededRandom,
  type UnionChance,
  unionChance,
} from "@secondline/statistics";
import { type LoadDraws, type LoadPosterior, type LoadsBelieved, loadPosterior } from "./loadPosterior.ts";
import type { ReliabilityPart } from "./reliabilityPart.ts";

/** A probability with its two-sided 95 % interval. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface PartChances {
  readonly id: string;
  readonly name: string;
  /** Probability that the load exceeds its strength. */
  readonly fails: Share;
  /** Probability that the part has the least margin of all parts: it would fail first if all loads grew together. */
  readonly first: Share;
  /** Number of draws that load the part with a twentieth of its strength or more; with less it counts as not loaded. */
  readonly loaded: number;
  /** For a part with stretches: id of the stretch that has the least margin most often. */
  readonly stretch?: string;
}

/** Source of a share of the variance of a margin: an input by its place among the deviates, chance, or a cause of strength. */
export type VarianceSource =
  | { readonly kind: "input"; readonly input: number }
  | { readonly kind: "chance" }
  | { readonly kind: "strength"; readonly name: string };

export interface VarianceShare {
  readonly source: VarianceSource;
  readonly share: Share;
  /** False: the draws leave open whether it raises or lowers the load. */
  readonly distinguishable: boolean;
}

export interface FailureChances {
  readonly anyFails: Share;
  /** Stretches of one part are one, in the order of the parts. */
  readonly parts: readonly PartChances[];
  /** For the part or stretch that is likeliest to be first: shares of the variance of ln strength over load; largest first. */
  readonly shares: { readonly of: string; readonly sources: readonly VarianceShare[] };
}

export interface FailureChancesOptions {
  readonly seed: number;
  /** Draws from the posterior; default 400. */
  readonly beliefs?: number;
  /** Draws of margins within each of them; default 500. */
  readonly samples?: number;
}

/** Draws from the posterior of loads and strengths [-]. */
const POSTERIOR_DRAWS = 400;
/** Samples of load and strength for each such draw [-]. */
const SAMPLE_COUNT = 500;

/** The chances that follow from one draw of the posterior. */
interface Believed extends UnionChance {
  readonly fails: readonly number[];
  readonly loads: LoadsBelieved;
}

/** Yields the share done. The same draws and seed give the same answer. */
export function* failureChances(
  parts: readonly ReliabilityPart[],
  draws: LoadDraws,
  { seed, beliefs = POSTERIOR_DRAWS, samples = SAMPLE_COUNT }: FailureChancesOptions,
): Generator<number, FailureChances, void> {
  if (parts.length === 0 || draws.loads.length === 0) throw new Error("chances need a part and a draw");
  const posterior = loadPosterior(parts, draws);
  const strength = strengthCovariance(parts);
  const wholes = wholesOf(parts);
  const patterns = patternsOf(posterior);
  const random = seededRandom(seed);
  const found: Believed[] = [];
  for (let b = 0; b < beliefs; b++) {
    found.push(believed({ parts, posterior, strength, wholes, patterns }, random, samples));
    yield (b + 1) / beliefs;
  }
  return chancesFound(parts, wholes, posterior, found);
}

interface Whole {
  readonly id: string;
  readonly name: string;
  /** Indices of the part's stretches, or of the part itself. */
  readonly of: readonly number[];
}

/** Parts as they are counted: stretches of one part together. */
function wholesOf(parts: readonly ReliabilityPart[]): readonly Whole[] {
  const wholes = new Map<string, { id: string; name: string; of: number[] }>();
  parts.forEach(({ id, name, stretchOf }, i) => {
    const whole = stretchOf ?? { id, name };
    const known = wholes.get(whole.id);
    if (known) known.of.push(i);
    else wholes.set(whole.id, { id: whole.id, name: whole.name, of: [i] });
  });
  return [...wholes.values()];
}

function strengthCovariance(parts: readonly ReliabilityPart[]): readonly Float64Array[] {
  return parts.map((a, i) =>
    Float64Array.from(parts, (b, j) =>
      Object.entries(a.causes).reduce(
        (sum, [cause, of]) => sum + of * (b.causes[cause] ?? 0),
        i === j ? a.own ** 2 : 0,
      ),
    ),
  );
}

/** Which parts are loaded together, and by how many draws each. */
function patternsOf({
  loaded,
}: LoadPosterior): readonly { readonly has: readonly boolean[]; readonly draws: number }[] {
  const found = new Map<string, { has: readonly boolean[]; draws: number }>();
  loaded[0]!.forEach((_, r) => {
    const has = loaded.map((row) => row[r]!);
    const known = found.get(has.join());
    if (known) known.draws++;
    else found.set(has.join(), { has, draws: 1 });
  });
  return [...found.values()];
}

interface Model {
  readonly parts: readonly ReliabilityPart[];
  readonly posterior: LoadPosterior;
  readonly strength: readonly Float64Array[];
  readonly wholes: readonly Whole[];
  readonly patterns: ReturnType<typeof patternsOf>;
}

function believed({ parts, posterior, strength, wholes, patterns }: Model, random: Random, samples: number): Believed {
  const loads = posterior.draw(random);
  const { middles, slopes, chances } = loads;
  const means = Float64Array.from(parts, ({ median }, i) => Math.log(median) - middles[i]!);
  const covariance = strength.map((row, i) =>
    row.map((shared, j) => {
      const chance = posterior.correlation[i]![j]! * chances[i]! * chances[j]!;
      return slopes[i]!.reduce((sum, slope, k) => sum + slope * slopes[j]![k]!, shared + chance);
    }),
  );
  const cases = casesOf(patterns, random);
  const union = unionChance({ means, covariance }, random, samples, cases);
  const fails = wholes.map(({ of }) => {
    if (of.length === 1) return union.each[of[0]!]!;
    return unionChance(marginsOf({ means, covariance }, of), random, samples, casesWith(cases, of)).any;
  });
  return { ...union, any: Math.max(union.any, ...fails), fails, loads };
}

/**
 * The frequency of each pattern is as uncertain as the number of draws makes it: D. B. Rubin's Bayesian bootstrap (Annals of
 * Statistics 9 (1981)).
 */
function casesOf(patterns: Model["patterns"], random: Random): readonly LoadCase[] {
  if (patterns.length === 1) return [{ chance: 1, has: patterns[0]!.has }];
  const weights = patterns.map(({ draws }) => {
    let sum = 0;
    for (let d = 0; d < draws; d++) sum -= Math.log(1 - random.uniform());
    return sum;
  });
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return patterns.map(({ has }, p) => ({ chance: weights[p]! / total, has }));
}

const marginsOf = ({ means, covariance }: NormalMargins, of: readonly number[]): NormalMargins => ({
  means: of.map((i) => means[i]!),
  covariance: of.map((i) => of.map((j) => covariance[i]![j]!)),
});

const casesWith = (cases: readonly LoadCase[], of: readonly number[]): readonly LoadCase[] =>
  cases.map(({ chance, has }) => ({ chance, has: of.map((i) => has[i]!) }));

function chancesFound(
  parts: readonly ReliabilityPart[],
  wholes: readonly Whole[],
  { loaded }: LoadPosterior,
  found: readonly Believed[],
): FailureChances {
  const least = parts.map((_, i) => mean(found.map((one) => one.least[i]!)));
  const all = wholes.map(({ id, name, of }, w): PartChances => {
    const most = of.reduce((a, b) => (least[b]! > least[a]! ? b : a));
    const first = aboutMean(found.map((one) => of.reduce((sum, i) => sum + one.least[i]!, 0)));
    const stretch = parts[most]!.stretchOf ? { stretch: parts[most]!.id } : {};
    const draws = loaded[0]!.filter((_, r) => of.some((i) => loaded[i]![r]!)).length;
    return { id, name, fails: aboutMiddle(found.map(({ fails }) => fails[w]!)), first, loaded: draws, ...stretch };
  });
  const likeliest = least.reduce((most, share, i) => (share > least[most]! ? i : most), 0);
  return {
    anyFails: aboutMiddle(found.map(({ any }) => any)),
    parts: all,
    shares: { of: parts[likeliest]!.id, sources: varianceShares(parts[likeliest]!, likeliest, found) },
  };
}

/** Shares of the variance of ln strength over load of one part; they add up to one. */
function varianceShares(part: ReliabilityPart, i: number, found: readonly Believed[]): readonly VarianceShare[] {
  const own = [...Object.entries(part.causes), [`${(part.stretchOf ?? part).name}, its own`, part.own] as const];
  const strength = own.reduce((sum, [, deviation]) => sum + deviation ** 2, 0);
  const whole = found.map(({ loads }) => {
    const fall = loads.slopes[i]!.reduce((sum, slope) => sum + slope ** 2, loads.chances[i]! ** 2);
    return strength + fall;
  });
  const of = (squares: (b: number) => number) => aboutMean(found.map((_, b) => squares(b) / whole[b]!));
  const inputs = Array.from(found[0]!.loads.slopes[i]!, (_, input): VarianceShare => {
    const slopes = found.map(({ loads }) => loads.slopes[i]![input]!);
    const { low, high } = aboutMean(slopes);
    const share = of((b) => slopes[b]! ** 2);
    return { source: { kind: "input", input }, share, distinguishable: low > 0 || high < 0 };
  });
  const chance: VarianceShare = {
    source: { kind: "chance" },
    share: of((b) => found[b]!.loads.chances[i]! ** 2),
    distinguishable: true,
  };
  const strengths = own.map(([name, deviation]): VarianceShare => {
    return { source: { kind: "strength", name }, share: of(() => deviation ** 2), distinguishable: true };
  });
  return [...inputs, chance, ...strengths]
    .filter(({ share }) => share.value > 0)
    .sort((a, b) => b.share.value - a.share.value);
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

const sortedUp = (values: readonly number[]) => [...values].sort((a, b) => a - b);
const at = (sorted: readonly number[], share: number) => sorted[Math.round(share * (sorted.length - 1))]!;

function aboutMiddle(values: readonly number[]): Share {
  const sorted = sortedUp(values);
  return { value: at(sorted, 0.5), low: at(sorted, 0.025), high: at(sorted, 0.975) };
}

/** The means add up to one because the values of each draw do. */
function aboutMean(values: readonly number[]): Share {
  const sorted = sortedUp(values);
  const value = mean(values);
  return { value, low: Math.min(value, at(sorted, 0.025)), high: Math.max(value, at(sorted, 0.975)) };
}

/** Share of draws in which an event happened, with its 95 % interval. */
export function countedShare(hits: number, of: number): Share {
  const [low, high] = clopperPearson(hits, of, 0.95);
  return { value: hits / of, low, high };
}
