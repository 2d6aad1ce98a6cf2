/**
 * How far pulls are expected to narrow the spread at the weakest place of a stock. Plausible results are drawn from the present
 * knowledge, the regression is made again with them, and the spread is read off at the place. Seeds are fixed.
 */

import type { LineStock, Rig } from "@secondline/rig";
import { type Random, seededRandom } from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { readTest } from "../breakLog/readEntry.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { combineFactors, logSpread } from "../derating/lognormal.ts";
import { factorOf } from "../retention/stockComparison.ts";
import { stockModel } from "../retention/stockModel.ts";
import { builtInFactors, type StockFactors, testedFactors } from "../retention/testedStock.ts";
import { wearOfTest } from "../retention/testState.ts";
import type { WearDose } from "../retention/wearFactors.ts";
import { type PlaceStrength, placeStrength, weakestOf, withFactors } from "./governing.ts";
import type { Sample } from "./sample.ts";

/**
 * Number of drawn sets of results. The averaged spread scatters little from set to set: only the tests' own scatter moves
 * it [-].
 */
const RESULT_DRAWS = 16;
/** Number of sets for a choice between pieces, where fewer do [-]. */
export const FEW_DRAWS = 6;
const SEED = 20_260_711;

/** A sample as a test, with a result in newtons. */
export function asTest({ row }: Sample, newtons: number): BreakTest {
  const reading = readTest({ ...row, outcome: "broke", result: String(newtons / 1000) }, 0);
  if (!reading.ok) throw new Error(`a row of the teardown is no test: ${JSON.stringify(reading.faults[0])}`);
  return reading.value;
}

/** Doses of a sample as the regression takes them, or the reason why it does not count there. */
export function dosesOf(sample: Sample): ReturnType<typeof wearOfTest> | "no stock" {
  return sample.stock === undefined ? "no stock" : wearOfTest(asTest(sample, 10_000), sample.stock);
}

export interface ExpectedBand {
  readonly now: PlaceStrength;
  /** Standard deviation of the logarithm to be expected once these pieces have been pulled: mean over the draws [-]. */
  readonly after: (samples: readonly Sample[], draws?: number) => number;
  /** The same for a factor of the place, by its name; undefined when the place has no such factor [-]. */
  readonly factorAfter: (samples: readonly Sample[], name: string) => number | undefined;
}

/** Undefined when nothing in the rig is made of the stock. `samples`: all samples that `after` may get. */
export function expectedBand(
  rig: Rig,
  stock: LineStock,
  tests: readonly BreakTest[],
  samples: readonly Sample[],
): ExpectedBand | undefined {
  const known = testedFactors(stock, stockModel(stock, tests));
  const asked = new AskedFactors(known);
  const now = weakestOf(rig, stock, withFactors(stock, asked.recorder));
  if (now === undefined) return undefined;
  const usable = samples.flatMap((sample) => {
    const doses = dosesOf(sample);
    return typeof doses === "string" ? [] : [{ sample, doses }];
  });
  const draws = Array.from({ length: RESULT_DRAWS }, (_, draw) => {
    const truth = new Truth(seededRandom(SEED + draw));
    return new Map(
      usable.map(({ sample, doses }) => {
        const factors = [known.level(), ...doses.map((wear: WearDose) => factorOf(known, wear))];
        return [sample, asTest(sample, stock.rated.strength * Math.exp(truth.draw(factors)))];
      }),
    );
  });
  const again = quickPlace(rig, stock, now, asked);
  const places = (chosen: readonly Sample[], count = RESULT_DRAWS): Pick<PlaceStrength, "sigmaLog" | "factors">[] =>
    draws.slice(0, count).map((results) => {
      const drawn = chosen.flatMap((sample) => results.get(sample) ?? []);
      const factors = testedFactors(stock, stockModel(stock, [...tests, ...drawn]));
      return again(factors);
    });
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  return {
    now,
    after: (chosen, count) =>
      chosen.some((sample) => draws[0]!.has(sample))
        ? mean(places(chosen, count).map(({ sigmaLog }) => sigmaLog))
        : now.sigmaLog,
    factorAfter: (chosen, name) => {
      const spreads = places(chosen).flatMap(({ factors }) => factors.find((one) => one.name === name)?.spread ?? []);
      return spreads.length === 0 ? undefined : mean(spreads);
    },
  };
}

/** Notes which question every factor answers, so that it can be put to other factors without going through the rig again. */
class AskedFactors {
  readonly recorder: StockFactors;
  private readonly questions = new Map<StrengthFactor, (factors: StockFactors) => StrengthFactor>();

  constructor(known: StockFactors) {
    const noted = (question: (factors: StockFactors) => StrengthFactor): StrengthFactor => {
      const factor = { ...question(known) };
      this.questions.set(factor, question);
      return factor;
    };
    this.recorder = {
      level: () => noted((f) => f.level()),
      sun: (months) => noted((f) => f.sun(months)),
      falls: (falls) => noted((f) => f.falls(falls)),
      leashFalls: (falls) => noted((f) => f.leashFalls(falls)),
      clamp: (months, share) => noted((f) => f.clamp(months, share)),
      sewing: (months) => noted((f) => f.sewing(months)),
      sewnLoop: (months, share) => noted((f) => f.sewnLoop(months, share)),
      knot: (kind) => noted((f) => f.knot(kind)),
      webbingKnot: () => noted((f) => f.webbingKnot()),
    };
  }

  again(factors: StockFactors, list: readonly StrengthFactor[]): StrengthFactor[] {
    return list.map((factor) => this.questions.get(factor)?.(factors) ?? factor);
  }
}

/** The place with other factors: by its own factors alone where that gives the same as the whole rig does. */
function quickPlace(rig: Rig, stock: LineStock, now: PlaceStrength, asked: AskedFactors) {
  const quick = (factors: StockFactors) => {
    const list = asked.again(factors, now.factors);
    return { factors: list, sigmaLog: combineFactors(1, list).sigmaLog };
  };
  const whole = (factors: StockFactors) => placeStrength(rig, now.place, withFactors(stock, factors));
  // The trial doubles the spread of every factor, so that a factor that was missed would show.
  const trial = withDoubleSpread(builtInFactors(stock));
  return Math.abs(quick(trial).sigmaLog - whole(trial).sigmaLog) < 1e-9 ? quick : whole;
}

function withDoubleSpread(factors: StockFactors): StockFactors {
  const twice = (factor: StrengthFactor): StrengthFactor => ({ ...factor, spread: 2 * factor.spread + 0.01 });
  return {
    level: () => twice(factors.level()),
    sun: (months) => twice(factors.sun(months)),
    falls: (falls) => twice(factors.falls(falls)),
    leashFalls: (falls) => twice(factors.leashFalls(falls)),
    clamp: (months, share) => twice(factors.clamp(months, share)),
    sewing: (months) => twice(factors.sewing(months)),
    sewnLoop: (months, share) => twice(factors.sewnLoop(months, share)),
    knot: (kind) => twice(factors.knot(kind)),
    webbingKnot: () => twice(factors.webbingKnot()),
  };
}

/** One drawn truth: the common deviations are drawn once, the scatter of each piece anew. */
class Truth {
  private readonly causes = new Map<string, number>();
  private readonly random: Random;

  constructor(random: Random) {
    this.random = random;
  }

  /** Logarithm of a piece's strength over the rated one. */
  draw(factors: readonly StrengthFactor[]): number {
    return factors.reduce((sum, factor) => sum + Math.log(factor.value) + this.deviation(factor), 0);
  }

  private deviation({ learnt, cause, shared, spread }: StrengthFactor): number {
    if (learnt !== undefined) {
      const common = learnt.loadings.reduce((sum, x, k) => sum + x * this.common(`${learnt.source} ${k}`), 0);
      return common + learnt.own * this.random.normal();
    }
    const sigma = logSpread(spread);
    return sigma * (Math.sqrt(shared) * this.common(cause) + Math.sqrt(1 - shared) * this.random.normal());
  }

  private common(cause: string): number {
    const known = this.causes.get(cause) ?? this.random.normal();
    this.causes.set(cause, known);
    return known;
  }
}
