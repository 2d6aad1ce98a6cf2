/** Plain Monte Carlo: how likely each part fails, and how likely it is the first, with confidence intervals. */
import { clopperPearson } from "../statistics/orderStatistics.ts";
import { normalSpace, type ReliabilityModel, type ReliabilityPart } from "./model.ts";
import { normalVector, seededRandom } from "./random.ts";

/** A probability with its two-sided 95 % interval from the number of runs alone. */
export interface Share {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface PartReliability {
  readonly id: string;
  readonly name: string;
  /** Probability that the load exceeds its strength. */
  readonly fails: Share;
  /** Probability that it has the least margin of all parts: that it would be first if the loads grew. */
  readonly first: Share;
  /** Of a part with stretches: id of the one that has the least margin most often. */
  readonly stretch?: string;
}

export interface FirstToFail {
  readonly runs: number;
  readonly seed: number;
  /** Probability that any part fails. */
  readonly anyFails: Share;
  /** In the order of the model's parts. */
  readonly parts: readonly PartReliability[];
  /** The likeliest to be first. */
  readonly likeliest: PartReliability;
  /** "leash is first to fail with 83 % (68 to 93 %)". */
  readonly sentence: string;
}

const CONFIDENCE = 0.95;

export interface FirstToFailOptions {
  readonly runs: number;
  readonly seed: number;
  /** Independent trials behind the numbers, when they are fewer than the runs: the intervals are for these. */
  readonly trials?: number;
}

export function firstToFail(model: ReliabilityModel, options: FirstToFailOptions): FirstToFail {
  if (model.parts.length === 0) throw new Error("a reliability model needs a part");
  const { runs, seed, trials = runs } = options;
  const { wholes, wholeOf } = wholesOf(model.parts);
  const counts = count(model, runs, seed, wholeOf, wholes.length);
  const share = (hits: number): Share => {
    const [low, high] = clopperPearson((hits * trials) / runs, trials, CONFIDENCE);
    return { value: hits / runs, low, high };
  };
  const parts = wholes.map((whole, w): PartReliability => {
    const stretches = model.parts.flatMap((part, i) => (wholeOf[i] === w && part.stretchOf ? [i] : []));
    const most = stretches.reduce((a, b) => (counts.first[b]! > counts.first[a]! ? b : a), stretches[0] ?? -1);
    return {
      ...whole,
      fails: share(counts.fails[w]!),
      first: share(stretches.length > 0 ? sum(stretches, counts.first) : counts.first[wholeOf.indexOf(w)]!),
      ...(most < 0 ? {} : { stretch: model.parts[most]!.id }),
    };
  });
  const likeliest = parts.reduce((most, part) => (part.first.value > most.first.value ? part : most));
  const percent = (x: number) => Math.round(100 * x);
  const { value, low, high } = likeliest.first;
  const sentence = `${likeliest.name} is first to fail with ${percent(value)} % (${percent(low)} to ${percent(high)} %)`;
  return { runs, seed, anyFails: share(counts.any), parts, likeliest, sentence };
}

/** Parts as they are counted: stretches of one part together. `wholeOf`: index into `wholes` of every part. */
function wholesOf(parts: readonly ReliabilityPart[]) {
  const wholes = new Map<string, { readonly id: string; readonly name: string }>();
  for (const { id, name, stretchOf } of parts) {
    const whole = stretchOf ?? { id, name };
    if (!wholes.has(whole.id)) wholes.set(whole.id, { id: whole.id, name: whole.name });
  }
  const ids = [...wholes.keys()];
  return { wholes: [...wholes.values()], wholeOf: parts.map((part) => ids.indexOf((part.stretchOf ?? part).id)) };
}

/** Counts over all runs: of every part how often it is first, of every whole how often it fails, and of any failing. */
function count(model: ReliabilityModel, runs: number, seed: number, wholeOf: readonly number[], wholes: number) {
  const space = normalSpace(model);
  const random = seededRandom(seed);
  const first = new Uint32Array(model.parts.length);
  const fails = new Uint32Array(wholes);
  let any = 0;
  for (let run = 0; run < runs; run++) {
    const margins = space.logMargins(normalVector(random, space.dimension));
    const failed = new Set<number>();
    let least = 0;
    for (let i = 0; i < margins.length; i++) {
      if (margins[i]! < 0) failed.add(wholeOf[i]!);
      if (margins[i]! < margins[least]!) least = i;
    }
    for (const whole of failed) fails[whole]!++;
    first[least]!++;
    if (failed.size > 0) any++;
  }
  return { first, fails, any };
}

const sum = (indices: readonly number[], of: Uint32Array) => indices.reduce((total, i) => total + of[i]!, 0);
