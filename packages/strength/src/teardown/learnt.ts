/** The gain of a teardown's results: factors before and after, contradictions, strengths of parts, and the next line. */
import type { LineStock, Rig } from "@secondline/rig";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { date } from "../dates/calendarDate.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { partStrengths } from "../parts/partStrengths.ts";
import { factorOf, modelAgainstTests, type StateComparison } from "../retention/stockComparison.ts";
import { stockModel } from "../retention/stockModel.ts";
import { factorsFromLog } from "../retention/testedStock.ts";
import { isOfStock, wearOfTest } from "../retention/testState.ts";
import { doseText, nearestDose, type WearDose } from "../retention/wearFactors.ts";
import { takeDown } from "../takeDown/takeDown.ts";
import { applyWear } from "../wear/applyWear.ts";
import type { WearRecord } from "../wear/record.ts";
import { differentStocks } from "./governing.ts";
import { nextLine } from "./nextLine.ts";

export interface LearntQuestion {
  readonly rig: Rig;
  readonly record: WearRecord;
  readonly on: string;
  /** Own tests that were known before. */
  readonly before?: readonly BreakTest[];
  readonly results: readonly BreakTest[];
  /** Share of a new part's strength at which the days are counted; default three quarters [-]. */
  readonly share?: number;
}

export const DEFAULT_LOAD_SHARE = 0.75;
/** How far ahead the next line is looked at [days]. */
const HORIZON_DAYS = 5 * 365;

export interface FactorValue {
  readonly value: number;
  readonly spread: number;
  readonly basis: StrengthFactor["basis"];
}

export interface LearntFactor {
  readonly stock: string;
  /** "level", or the wear with the dose at which it was tested. */
  readonly what: string;
  readonly before: FactorValue;
  readonly after: FactorValue;
  readonly testCount: number;
}

export interface LearntPart {
  readonly part: string;
  /** Strength that 19 of 20 such parts reach on the day [N]. */
  readonly before: number;
  readonly after: number;
  /**
   * The next line: days until its strength falls to this [N], by the tests before and by those now; absent beyond the horizon.
   */
  readonly next?: { readonly until: number; readonly before?: number; readonly after?: number };
}

export interface Contradiction extends StateComparison {
  readonly stock: string;
}

export interface TeardownLearnt {
  readonly rig: string;
  readonly on: string;
  readonly invented: boolean;
  readonly results: number;
  /** Materials that a row must name to count. */
  readonly materials: readonly string[];
  /** Results that feed a factor of this rig. */
  readonly counted: number;
  readonly factors: readonly LearntFactor[];
  readonly contradictions: readonly Contradiction[];
  readonly parts: readonly LearntPart[];
  readonly share: number;
  readonly horizon: number;
}

export function teardownLearnt(question: LearntQuestion): TeardownLearnt {
  const { rig, record, on, before = [], results, share = DEFAULT_LOAD_SHARE } = question;
  const worn = applyWear(rig, record, on).rig;
  const stocks = stocksOf(worn);
  const all = [...before, ...results];
  const counted = results.filter((test) =>
    stocks.some((stock) => isOfStock(test, stock) && typeof wearOfTest(test, stock) !== "string"),
  );
  const compared = modelAgainstTests(stocks, all);
  return {
    rig: rig.name,
    on,
    invented: rig.invented || record.invented || results.some(({ invented }) => invented),
    results: results.length,
    materials: stocks.map(({ id }) => id),
    counted: counted.length,
    factors: stocks.flatMap((stock) => factorsLearnt(stock, before, all, results)),
    contradictions: compared.flatMap(({ stock, states }) =>
      states.filter(({ finding }) => finding !== "agrees").map((state) => ({ ...state, stock: stock.name })),
    ),
    parts: partsLearnt(question, worn, stocks, share),
    share,
    horizon: HORIZON_DAYS,
  };
}

/** Webbings and ropes of a rig, each once. */
export function stocksOf({ main, backup, leash }: Rig): LineStock[] {
  const all = [...main.sections, ...(backup?.sections ?? []), leash].map(({ stock }) => stock);
  return differentStocks(all);
}

/** The level, and every wear at the largest dose that the results have of it. */
function factorsLearnt(
  stock: LineStock,
  before: readonly BreakTest[],
  all: readonly BreakTest[],
  results: readonly BreakTest[],
): LearntFactor[] {
  const used = results.flatMap((test) => {
    const doses = isOfStock(test, stock) ? wearOfTest(test, stock) : "no dose";
    return typeof doses === "string" ? [] : [doses];
  });
  if (used.length === 0) return [];
  const [known, now] = [before, all].map((tests) => factorsFromLog(tests)(stock));
  const model = stockModel(stock, all)!;
  const value = ({ value, spread, basis }: StrengthFactor): FactorValue => ({ value, spread, basis });
  const largest = new Map<string, WearDose>();
  for (const wear of used.flat()) {
    const other = largest.get(wear.id);
    if (other === undefined || other.dose < wear.dose) largest.set(wear.id, wear);
  }
  const wears = [...largest.values()].map((wear): LearntFactor => {
    const { doses } = model.wears.get(wear.id)!;
    const testCount = used.filter((of) =>
      of.some(({ id, dose }) => id === wear.id && nearestDose(doses, dose) === nearestDose(doses, wear.dose)),
    ).length;
    return {
      stock: stock.name,
      what: doseText(wear),
      before: value(factorOf(known!, wear)),
      after: value(factorOf(now!, wear)),
      testCount,
    };
  });
  const level: LearntFactor = {
    stock: stock.name,
    what: "level",
    before: value(known!.level()),
    after: value(now!.level()),
    testCount: used.filter((doses) => doses.length === 0).length,
  };
  return [level, ...wears];
}

function partsLearnt(
  { rig, record, on, before = [], results }: LearntQuestion,
  worn: Rig,
  stocks: readonly LineStock[],
  share: number,
): LearntPart[] {
  const [known, now] = [before, [...before, ...results]].map((tests) => factorsFromLog(tests));
  const rigOn = nextLine(rig, record, on);
  const held = (of: Rig, factorsOf: typeof known) =>
    new Map(partStrengths(of, factorsOf).map((part) => [part.id, part.strength5]));
  const [old, learnt, fresh] = [held(worn, known), held(worn, now), held(rigOn(date(on)), known)];
  const touched = [...old.keys()].filter((id) => Math.abs(old.get(id)! - learnt.get(id)!) > 1e-6 * old.get(id)!);
  const loads = Object.fromEntries(touched.map((id) => [id, share * fresh.get(id)!]));
  const daysOf = (factorsOf: NonNullable<typeof known>) => {
    const { parts } = takeDown({
      rigOn,
      on,
      loads,
      requiredFactor: 1,
      confidence: 0.95,
      horizon: HORIZON_DAYS,
      factorsOf,
    });
    return new Map(parts.map((part) => [part.id, part.date === undefined ? undefined : daysBetween(on, part.date)]));
  };
  if (touched.length === 0 || stocks.length === 0) return [];
  const [first, second] = [daysOf(known!), daysOf(now!)];
  return touched.map((part) => {
    const days = { before: first.get(part), after: second.get(part) };
    const given = Object.fromEntries(Object.entries(days).filter(([, value]) => value !== undefined));
    return {
      part,
      before: old.get(part)!,
      after: learnt.get(part)!,
      next: { until: loads[part]!, ...given },
    };
  });
}

const daysBetween = (from: string, to: string): number => date(from).until(date(to), { largestUnit: "days" }).days;
