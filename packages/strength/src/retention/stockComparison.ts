/** The built-in model against own tests, state by state. */
import type { LineStock } from "@secondline/rig";
import { grouped } from "../breakLog/grouped.ts";
import type { BreakTest } from "../breakLog/logEntry.ts";
import type { StrengthFactor } from "../derating/factor.ts";
import { combineFactors, type LognormalStrength } from "../derating/lognormal.ts";
import { type StockModel, type StockState, stockModel } from "./stockModel.ts";
import { BAND_DEVIATIONS, NEW_SCATTER } from "./stockScatter.ts";
import { type BestTest, bestTest } from "./strongestSample.ts";
import { builtInFactors, type StockFactors, testedFactors } from "./testedStock.ts";
import { builtInAt, builtInLog, doseText, nearestDose, type WearDose } from "./wearFactors.ts";

export interface StateComparison {
  /** "new", or what had happened to the samples. */
  readonly state: string;
  readonly wears: readonly WearDose[];
  readonly testCount: number;
  /** Tests that broke; the others are bounds. */
  readonly brokeCount: number;
  /** The known breaking loads and bounds of these tests. */
  readonly held: HeldLoads;
  /**
   * Centre of the tests, bounds taken at the value to be expected beyond them. It is measured only if every breaking load is
   * known [N].
   */
  readonly tested: number;
  /** The built-in value without tests: central value, and the band in which 19 of 20 such means should lie [N]. */
  readonly builtIn: number;
  readonly builtInBand: readonly [low: number, high: number];
  /** The value that counts from now on: central value, and the strength that 19 of 20 parts reach [N]. */
  readonly counts: number;
  readonly counts5: number;
  /** "agrees", or the side of the band on which the tests lie. */
  readonly finding: "agrees" | "below" | "above";
  /** The comparison, as a sentence. */
  readonly message: string;
  /** The best test, if the 5 % value would be higher had this test held less. */
  readonly bestTest?: BestTest;
}

/** Every breaking load; that none broke up to a load; that all broke below one; or several of these [N]. */
export type HeldLoads =
  | { readonly kind: "loads" }
  | { readonly kind: "atLeast"; readonly load: number }
  | { readonly kind: "atMost"; readonly load: number }
  | { readonly kind: "mixed"; readonly loads: number; readonly bounds: number };

export interface StockComparison {
  readonly stock: { readonly id: string; readonly name: string };
  /** Rated strength [N]. */
  readonly rated: number;
  /** Level of new pieces over the rated strength, where new pieces were tested [-]. */
  readonly level?: number;
  readonly states: readonly StateComparison[];
}

/** One comparison for every stock that has tests that count. */
export function modelAgainstTests(stocks: readonly LineStock[], tests: readonly BreakTest[]): StockComparison[] {
  return stocks.flatMap((stock): StockComparison[] => {
    const model = stockModel(stock, tests);
    if (model === undefined) return [];
    const factors = testedFactors(stock, model);
    const compared = statesTogether(model).map((states): StateComparison => {
      const one = compare(stock, model, factors, states);
      const ofState = states.flatMap((state) => state.tests);
      const best = bestTest(
        tests,
        ofState,
        (others) => heldBy(stock, one.wears, testedFactors(stock, stockModel(stock, others))).strength5,
      );
      return best === undefined ? one : { ...one, bestTest: best };
    });
    return [
      {
        stock: { id: stock.id, name: stock.name },
        rated: stock.rated.strength,
        ...(model.newTests > 0 ? { level: Math.exp(model.means[0]!) } : {}),
        states: compared,
      },
    ];
  });
}

/**
 * States of all batches, the least worn first. Doses that the model does not tell apart are one state, so that a log with
 * thousands of doses stays readable.
 */
export function statesTogether(model: StockModel): (readonly StockState[])[] {
  const key = ({ doses }: StockState) =>
    JSON.stringify(doses.map(({ id, dose }) => [id, nearestDose(model.wears.get(id)!.doses, dose)]));
  return [...grouped(model.states, key).values()].sort((a, b) => a[0]!.doses.length - b[0]!.doses.length);
}

/** "new", or what had happened to the samples. */
export const stateText = (wears: readonly WearDose[]): string =>
  wears.length === 0 ? "new" : wears.map(doseText).join(", ");

function compare(
  stock: LineStock,
  model: StockModel,
  factors: StockFactors,
  batches: readonly StockState[],
): StateComparison {
  const wears = meanDoses(batches);
  const tests = batches.flatMap((state) => state.tests);
  const rated = stock.rated.strength;
  const log = batches.reduce((sum, state) => sum + model.tested.get(state)! * state.tests.length, 0) / tests.length;
  const { strength, strength5 } = heldBy(stock, wears, factors);
  const variances = wears.map((wear) => builtInAt(stock, wear));
  const make = Math.log1p(builtInFactors(stock).level().spread ** 2);
  const common = variances.reduce((sum, { common }) => sum + common, make);
  const own = variances.reduce((sum, { own }) => sum + own, NEW_SCATTER ** 2) / tests.length;
  const deviation = Math.sqrt(common + own);
  const builtIn = rated * Math.exp(builtInLog(stock, wears));
  const band = [
    builtIn * Math.exp(-BAND_DEVIATIONS * deviation),
    builtIn * Math.exp(BAND_DEVIATIONS * deviation),
  ] as const;
  const tested = rated * Math.exp(log);
  const held = heldLoads(tests);
  const finding = findingOf(held, tested, band);
  const clipped = batches.some((state) => model.clipped.has(state));
  return {
    state: stateText(wears),
    wears,
    testCount: tests.length,
    brokeCount: tests.filter(({ result }) => result.kind !== "above").length,
    held,
    tested,
    builtIn,
    builtInBand: band,
    counts: strength,
    counts5: strength5,
    finding,
    message: messageOf(finding, wears.length === 0, clipped || strength < 0.98 * tested),
  };
}

function heldLoads(tests: readonly BreakTest[]): HeldLoads {
  const results = tests.map(({ result }) => result);
  const least = results.flatMap((result) => (result.kind === "above" ? [result.value] : []));
  const most = results.flatMap((result) => (result.kind === "below" ? [result.value] : []));
  const loads = results.filter(({ kind }) => kind === "exact").length;
  if (loads === tests.length) return { kind: "loads" };
  if (least.length === tests.length) return { kind: "atLeast", load: Math.min(...least) };
  if (most.length === tests.length) return { kind: "atMost", load: Math.max(...most) };
  return { kind: "mixed", loads, bounds: tests.length - loads };
}

/** A bound contradicts the model only by itself, not by the value to be expected beyond it. */
function findingOf(held: HeldLoads, tested: number, [low, high]: StateComparison["builtInBand"]) {
  switch (held.kind) {
    case "atLeast":
      return held.load > high ? "above" : "agrees";
    case "atMost":
      return held.load < low ? "below" : "agrees";
    case "loads":
    case "mixed":
      return tested < low ? "below" : tested > high ? "above" : "agrees";
  }
}

/** Strength of parts of a state by some factors. */
function heldBy({ rated }: LineStock, wears: readonly WearDose[], factors: StockFactors): LognormalStrength {
  return combineFactors(rated.strength, [factors.level(), ...wears.map((wear) => factorOf(factors, wear))]);
}

/** The doses of states that count as one, each the mean over the tests. */
export function meanDoses(states: readonly StockState[]): WearDose[] {
  const count = states.reduce((sum, { tests }) => sum + tests.length, 0);
  return states[0]!.doses.map(({ id }, i) => ({
    id,
    dose: states.reduce((sum, { doses, tests }) => sum + doses[i]!.dose * tests.length, 0) / count,
  }));
}

function messageOf(finding: StateComparison["finding"], isNew: boolean, held: boolean): string {
  switch (finding) {
    case "agrees":
      return "Tests and built-in model agree within what the model leaves open.";
    case "below":
      return `THE TESTS CONTRADICT THE ${isNew ? "RATED STRENGTH" : "BUILT-IN MODEL"}: they hold less. The tests govern.`;
    case "above":
      return `The tests contradict the ${isNew ? "rated strength" : "built-in model"}: they hold more.${
        held
          ? " The lower value governs: they count only as far as the model can be believed wrong."
          : " They count, which RAISES the strength: look for a reason."
      }`;
  }
}

export function factorOf(factors: StockFactors, { id, dose }: WearDose): StrengthFactor {
  switch (id) {
    case "sun":
      return factors.sun(dose);
    case "falls":
      return factors.falls(dose);
    case "leash falls":
      return factors.leashFalls(dose);
    case "clamp mark":
      return factors.clamp(dose);
    case "sewing":
      return factors.sewing(dose);
    case "knot in webbing":
      return factors.webbingKnot();
    default:
      return factors.knot(id.slice("knot ".length) as Parameters<StockFactors["knot"]>[0]);
  }
}
