/**
 * The characteristic value of a group of break tests: the strength that 95 % of such parts reach (or 90 %, by choice), with the
 * confidence asked for. One method serves complete and censored samples, with and without batches. `test/coverage.long.ts`
 * simulates the coverage of the whole method.
 */

import {
  type FamilyName,
  isComplete,
  mean,
  type Observation,
  observationPlace,
  quantileBelief,
  standardDeviation,
  toleranceFactorKnownSpread,
} from "@secondline/statistics";
import { logSpread } from "../derating/lognormal.ts";

/** Share of parts that reach the characteristic value, by default [-]. */
export const CHARACTERISTIC_CONTENT = 0.95;
/** Coefficient of variation assumed for one or two tests, which cannot show one: twice that of a good make of webbing [-]. */
export const ASSUMED_SPREAD = 0.2;
/** Number of results with a place (a breaking load or an interval) from which a sample can show its own spread [-]. */
const FAILURES_FOR_SPREAD = 3;

export interface Characteristic {
  readonly confidence: number;
  /** Share of such parts that reach the value [-]. */
  readonly content: number;
  /** Strength that this share of such parts reach [N]. */
  readonly value: number;
  readonly family: FamilyName;
  /** Method by which the value was found, in words. */
  readonly method: string;
}

export interface CharacteristicOptions {
  /** Batch of every result; scatter between batches counts where two or more are named. */
  readonly batches?: readonly (string | undefined)[];
  /** Share of parts that reach the value; default 0.95 [-]. */
  readonly content?: number;
}

/**
 * One value for each of the confidences. A piece known only to have broken below a load may lower the value, never raise it. So
 * the least value counts: without such pieces, with the lowest of them, with the two lowest and so on. Such a load above all
 * other results says nothing.
 */
export function characteristicValues(
  sample: readonly Observation[],
  confidences: readonly number[],
  options: CharacteristicOptions = {},
): Characteristic[] {
  const values = samplesToCount(sample).map((counted) => {
    const batches = counted.map((i) => options.batches?.[i]);
    const given = { ...options, ...(options.batches === undefined ? {} : { batches }) };
    return valuesOf(
      counted.map((i) => sample[i]!),
      confidences,
      given,
    );
  });
  return confidences.map((_, k) => values.map((one) => one[k]!).reduce((a, b) => (b.value < a.value ? b : a)));
}

/** Results to count together, by their place in the sample, in its order. */
function samplesToCount(sample: readonly Observation[]): readonly (readonly number[])[] {
  const all = sample.map((_, i) => i);
  const others = all.filter((i) => sample[i]!.kind !== "below");
  if (others.length === sample.length) return [all];
  const below = all
    .filter((i) => sample[i]!.kind === "below")
    .sort((a, b) => largestOf(sample[a]!) - largestOf(sample[b]!));
  // If every piece is known only to have broken below a load, the lowest load alone counts.
  if (others.length === 0) return [below.slice(0, 1)];
  const most = Math.max(...others.map((i) => largestOf(sample[i]!)));
  const lowest = below.filter((i) => largestOf(sample[i]!) < most);
  return [0, ...lowest.map((_, k) => k + 1)].map((k) => [...others, ...lowest.slice(0, k)].sort((a, b) => a - b));
}

const largestOf = (o: Observation): number => (o.kind === "between" ? o.to : o.value);

function valuesOf(
  sample: readonly Observation[],
  confidences: readonly number[],
  { batches = [], content = CHARACTERISTIC_CONTENT }: CharacteristicOptions,
): Characteristic[] {
  const places = sample.filter((o) => o.kind === "exact" || o.kind === "between").map(observationPlace);
  if (places.length < FAILURES_FOR_SPREAD) return confidences.map((c) => assumedSpread(sample, c, content));
  // Equal results do not mean that parts do not scatter: the machine reads too coarsely, or the numbers were copied.
  if (new Set(places).size === 1) {
    return confidences.map((c) => assumedSpread(sample, c, content, "they all broke at one load"));
  }
  const numbers = batchNumbers(sample, batches);
  const belief = quantileBelief(sample, content, numbers);
  if (belief === undefined) {
    return confidences.map((c) => assumedSpread(sample, c, content, "its results contradict each other"));
  }
  const among = belief.families.length > 1 ? `, mixed of ${belief.families.join(", ")}` : "";
  const count = numbers === undefined ? 0 : new Set(numbers).size;
  const scatter = count > 1 ? `, with the scatter between ${count} batches` : "";
  return confidences.map((confidence) => {
    const { value, family } = belief.lowerBound(confidence);
    const bounds = isComplete(sample) ? "" : ", bounds counted as bounds";
    const method = `${family}, n = ${sample.length}${among}${scatter}${bounds}`;
    return { confidence, content, value, family, method };
  });
}

/** `characteristicValues` for one confidence. */
export function characteristicValue(
  sample: readonly Observation[],
  confidence: number,
  options: CharacteristicOptions = {},
): Characteristic {
  return characteristicValues(sample, [confidence], options)[0]!;
}

/** Batches as whole numbers; undefined where fewer than two are named. Results without a batch are one batch of their own. */
function batchNumbers(sample: readonly Observation[], batches: readonly (string | undefined)[]): number[] | undefined {
  const named = new Set(batches.filter((batch) => batch !== undefined && batch !== ""));
  if (named.size < 2) return undefined;
  const names = [...new Set(sample.map((_, i) => batches[i] ?? ""))];
  return sample.map((_, i) => names.indexOf(batches[i] ?? ""));
}

/** Every result as a breaking load on the safe side: a survivor where it stopped, an interval at its lower end. */
export function brokenValues(sample: readonly Observation[]): number[] {
  return sample.map((o) => (o.kind === "between" ? o.from : o.kind === "below" ? o.value / 2 : o.value));
}

function assumedSpread(
  sample: readonly Observation[],
  confidence: number,
  content: number,
  reason?: string,
): Characteristic {
  const values = brokenValues(sample);
  const logs = values.map(Math.log);
  const sigma = Math.max(logSpread(ASSUMED_SPREAD), standardDeviation(logs) ?? 0);
  const count = values.length === 1 ? "one test cannot" : "two tests can hardly";
  const why = reason ?? (isComplete(sample) ? `${count} show a spread` : "too few of them broke to show a spread");
  return {
    confidence,
    content,
    value: Math.exp(mean(logs) - toleranceFactorKnownSpread(values.length, content, confidence) * sigma),
    family: "lognormal",
    method: `lognormal with a spread of at least ${Math.round(100 * ASSUMED_SPREAD)} % assumed: ${why}`,
  };
}
