/**
 * A reliability model in standard normal space: uncertain inputs give loads, parts have lognormal strengths that share
 * what their factors' causes have in common.
 */
import { logSpread } from "../derating/lognormal.ts";
import type { PartStrength } from "../parts/partStrength.ts";
import { normalCdf } from "../statistics/normal.ts";

/** One uncertain input of the loads: walker's mass, place of the fall, stiffness, damping … */
export interface RandomInput {
  readonly name: string;
  /** Value for a standard normal deviate. */
  readonly value: (deviate: number) => number;
}

export function normalInput(name: string, mean: number, deviation: number): RandomInput {
  return { name, value: (u) => mean + deviation * u };
}

/** `spread`: coefficient of variation [-]. */
export function lognormalInput(name: string, median: number, spread: number): RandomInput {
  const sigma = logSpread(spread);
  return { name, value: (u) => median * Math.exp(sigma * u) };
}

export function uniformInput(name: string, from: number, to: number): RandomInput {
  return { name, value: (u) => from + (to - from) * normalCdf(u) };
}

export interface ReliabilityPart {
  readonly id: string;
  readonly name: string;
  /** The part that this is one stretch of, with a load and a strength of its own; they are counted as one part. */
  readonly stretchOf?: { readonly id: string; readonly name: string };
  /** Median strength [N]. */
  readonly median: number;
  /** Standard deviation of ln strength that comes from each common cause [-]. */
  readonly causes: Readonly<Record<string, number>>;
  /** Standard deviation of ln strength that is the part's own [-]. */
  readonly own: number;
}

/** A part's strength split into what it shares with other parts, by cause, and what is its own; a line's in its weakest zone. */
export function reliabilityPart(part: PartStrength): ReliabilityPart {
  const causes: Record<string, number> = {};
  let own = 0;
  for (const factor of part.factors) {
    if (factor.learnt !== undefined) {
      // What the same tests say of several factors is shared by all parts of that stock, with its signs.
      factor.learnt.loadings.forEach((loading, k) => {
        if (loading === 0) return;
        const cause = `${factor.learnt!.source}, ${k + 1}`;
        causes[cause] = (causes[cause] ?? 0) + loading;
      });
      own += factor.learnt.own ** 2;
      continue;
    }
    const sigma = logSpread(factor.spread);
    if (factor.shared > 0) causes[factor.cause] = (causes[factor.cause] ?? 0) + sigma * Math.sqrt(factor.shared);
    own += sigma * sigma * (1 - factor.shared);
  }
  return { id: part.id, name: part.name, median: part.strength, causes, own: Math.sqrt(own) };
}

export interface ReliabilityModel {
  readonly inputs: readonly RandomInput[];
  readonly parts: readonly ReliabilityPart[];
  /** Load of every part, in the order of `parts`, for values of the inputs [N]. Must not keep or change its argument. */
  readonly loads: (inputs: readonly number[]) => readonly number[];
}

/** The model over a vector of independent standard normal deviates: inputs, then common causes, then the parts' own. */
export interface NormalSpaceModel {
  readonly names: readonly string[];
  readonly dimension: number;
  /** ln(strength / load) of every part; infinite without load. */
  readonly logMargins: (deviates: Float64Array) => Float64Array;
}

/** What scatters from one part of its kind to the next; of the stretches of one part under one name. */
const ownName = (part: ReliabilityPart) => `${(part.stretchOf ?? part).name}, its own`;

export function normalSpace(model: ReliabilityModel): NormalSpaceModel {
  const { inputs, parts } = model;
  const causes = [...new Set(parts.flatMap((part) => Object.keys(part.causes)))];
  const loadings = parts.map((part) => causes.map((cause) => part.causes[cause] ?? 0));
  const own = inputs.length + causes.length;
  return {
    names: [...inputs.map((input) => input.name), ...causes, ...parts.map((part) => ownName(part))],
    dimension: own + parts.length,
    logMargins: (u) => {
      const loads = model.loads(inputs.map((input, i) => input.value(u[i]!)));
      return Float64Array.from(parts, (part, i) => {
        const load = loads[i];
        if (load === undefined || Number.isNaN(load)) throw new Error(`no load was given for ${part.name}`);
        if (load <= 0) return Number.POSITIVE_INFINITY;
        let logStrength = Math.log(part.median) + part.own * u[own + i]!;
        for (let c = 0; c < causes.length; c++) logStrength += loadings[i]![c]! * u[inputs.length + c]!;
        return logStrength - Math.log(load);
      });
    },
  };
}
