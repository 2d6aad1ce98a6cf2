/** What the break log says of a webbing or rope over sun and falls, as factors that stand in for the published ones. */
import type { LineStock } from "@secondline/rig";
import type { BreakTest } from "../breakLog/breakTest.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { fallsFactor } from "../derating/falls.ts";
import { logSpread } from "../derating/lognormal.ts";
import { sunFactor } from "../derating/sun.ts";
import { type Retention, type RetentionTest, retention } from "./retention.ts";
import { isOfStock, useOfTest } from "./testUse.ts";

/** Factors of a stock: from tests and publication together where there are tests, else as published. */
export interface StockFactors {
  readonly sun: (months: number) => StrengthFactor;
  readonly falls: (falls: number) => StrengthFactor;
}
export type FactorsOf = (stock: LineStock) => StockFactors;

export const publishedFactors: FactorsOf = ({ fibre }) => ({
  sun: (months) => sunFactor(fibre, months),
  falls: (falls) => fallsFactor(falls, "webbing"),
});

/** Retention of a stock from a log; a cause without tests is left out. */
export interface StockRetention {
  readonly sun?: Retention;
  readonly falls?: Retention;
}

/**
 * Retention over sun and over falls from the tests of one stock: those whose material is the stock's id or name, as far as
 * `useOfTest` lets them count. Parts that held without breaking are left out, which errs on the safe side; an interval
 * counts at its lower end, "broke below" at half the load.
 */
export function stockRetention(stock: LineStock, tests: readonly BreakTest[]): StockRetention {
  const own = tests.filter((t) => isOfStock(t, stock)).map((test) => ({ test, use: useOfTest(test, stock) }));
  const sun = own.flatMap(({ test, use }) =>
    typeof use !== "string" && use.sun ? doseTest(test, test.sunMonths) : [],
  );
  const falls = own.flatMap(({ test, use }) =>
    typeof use !== "string" && use.falls ? doseTest(test, test.falls) : [],
  );
  const rated = stock.rated.strength;
  return {
    ...(sun.length > 0 ? { sun: retention({ kind: "sun", fibre: stock.fibre }, rated, sun) } : {}),
    ...(falls.length > 0 ? { falls: retention({ kind: "falls" }, rated, falls) } : {}),
  };
}

/** Factors for `partStrengths` that rest on a break log. */
export function factorsFromLog(tests: readonly BreakTest[]): FactorsOf {
  const known = new Map<string, StockRetention>();
  const invented = tests.some((test) => test.invented);
  return (stock) => {
    const found = known.get(stock.id) ?? stockRetention(stock, tests);
    known.set(stock.id, found);
    const { sun, falls } = found;
    const published = publishedFactors(stock);
    return {
      sun: (months) => testedFactor(published.sun(months), stock, sun, months, invented),
      falls: (count) => testedFactor(published.falls(count), stock, falls, count, invented),
    };
  };
}

/** 84 % point of the standard normal: one standard deviation. */
const ONE_SIGMA = 0.8413447460685429;

function testedFactor(
  published: StrengthFactor,
  stock: LineStock,
  found: Retention | undefined,
  dose: number,
  invented: boolean,
): StrengthFactor {
  // Beyond the range the cautious factor stands: tests within it say nothing about what is outside.
  if (found === undefined || published.beyond) return published;
  const { central, lower } = found.posterior(dose, ONE_SIGMA);
  const sigma = Math.log(central / lower);
  const note = `${found.testCount} own break ${found.testCount === 1 ? "test" : "tests"} of ${stock.name} together with: ${published.basis.note}`;
  return {
    ...published,
    value: central / stock.rated.strength,
    spread: Math.max(logSpread(0.01), Math.sqrt(Math.expm1(sigma * sigma))),
    basis: invented
      ? { kind: "assumed", note: `invented tests, nothing was pulled: ${note}` }
      : { kind: "tested", note },
  };
}

function doseTest({ result }: BreakTest, dose: number | undefined): RetentionTest[] {
  if (dose === undefined || result.kind === "above") return [];
  if (result.kind === "between") return [{ dose, strength: result.from }];
  return [{ dose, strength: result.kind === "below" ? result.value / 2 : result.value }];
}
