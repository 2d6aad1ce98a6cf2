/** Factors of a stock with own break tests: the level of its new pieces, and the loss by every wear. */

import type { Basis, FactValue, KnotKind, LineStock, Note } from "@secondline/rig";
import { choleskyRoot } from "@secondline/statistics";
import type { BreakTest } from "../breakLog/logEntry.ts";
import { clampFactor, clampOfUnknownLoad } from "../derating/clampMark.ts";
import { BEYOND_RANGE_SHARE, type Learnt, type StrengthFactor } from "../derating/factor.ts";
import { fallsFactor } from "../derating/falls.ts";
import { knotIn, webbingKnot } from "../derating/knot.ts";
import { logSpread } from "../derating/lognormal.ts";
import { textileMake } from "../derating/make.ts";
import { sewingFactor, sewnLoopAgeing } from "../derating/sewing.ts";
import { sunFactor } from "../derating/sun.ts";
import { knowTogether } from "../derating/together.ts";
import { type NoteFact, type NoteFacts, noteFact, within } from "../noteFacts.ts";
import { type LearntWear, learntWear } from "./learntWear.ts";
import { StateStrength, type StateTerm, termOf, type WearCurve } from "./stateStrength.ts";
import { type StockModel, stockModel } from "./stockModel.ts";
import { WEIBULL_DEPTH, widened } from "./stockScatter.ts";
import { doseFact, type WearId } from "./wearFactors.ts";
import { WetBound } from "./wetBound.ts";
import { type WetLimit, wetLimits } from "./wetTests.ts";

/** Factors of a stock: from tests and built-in factors together if there are tests, else the built-in ones. */
export interface StockFactors {
  /** How the stock's new pieces compare with its rated strength, with their scatter. Applied once to every part made of it. */
  readonly level: () => StrengthFactor;
  readonly sun: (months: number) => StrengthFactor;
  readonly falls: (falls: number) => StrengthFactor;
  readonly leashFalls: (falls: number) => StrengthFactor;
  /** `loadShare`: load while clamped over rated strength; absent: a usual one; unknown: the worst that it can be [-]. */
  readonly clamp: (months: number, loadShare?: number | "unknown") => StrengthFactor;
  /** On the webbing's strength at stitching, after some months outside. */
  readonly sewing: (months: number) => StrengthFactor;
  /** On the strength of a loop rated as sewn; `ratedShare`: that strength over the webbing's [-]. */
  readonly sewnLoop: (months: number, ratedShare: number) => StrengthFactor;
  readonly knot: (kind: KnotKind) => StrengthFactor;
  readonly webbingKnot: () => StrengthFactor;
}
export type FactorsOf = (stock: LineStock) => StockFactors;

/** The built-in factors: no tests. */
export const builtInFactors: FactorsOf = (stock) => ({
  level: () => textileMake(stock.id),
  sun: (months) => sunFactor(stock.fibre, months),
  falls: (falls) => fallsFactor(falls, "webbing"),
  leashFalls: (falls) => fallsFactor(falls, "leash"),
  clamp: (months, loadShare) => (loadShare === "unknown" ? clampOfUnknownLoad(months) : clampFactor(months, loadShare)),
  sewing: (months) => sewingFactor(months),
  sewnLoop: (months) => sewnLoopAgeing(months),
  knot: (kind) => knotIn(stock, kind),
  webbingKnot: () => webbingKnot(),
});

const FACTORS_OF_LOG = new WeakMap<readonly BreakTest[], FactorsOf>();

/** Factors for `partStrengths` from a break log. The factors of a stock are worked out once, for all days and rigs. */
export function factorsFromLog(tests: readonly BreakTest[]): FactorsOf {
  const kept = FACTORS_OF_LOG.get(tests) ?? factorsOf(tests);
  FACTORS_OF_LOG.set(tests, kept);
  return kept;
}

function factorsOf(tests: readonly BreakTest[]): FactorsOf {
  const known = new Map<string, StockFactors>();
  const invented = tests.some((test) => test.invented);
  return (stock) => {
    const key = JSON.stringify([stock.id, stock.name, stock.fibre, stock.form, stock.rated.strength]);
    const found = known.get(key) ?? factorsOfStock(stock, tests, invented);
    known.set(key, found);
    return found;
  };
}

function factorsOfStock(stock: LineStock, tests: readonly BreakTest[], invented: boolean): StockFactors {
  const model = stockModel(stock, tests);
  return model === undefined
    ? wetFactorsOnly(stock, wetLimits(stock, tests), invented)
    : testedFactors(stock, model, invented);
}

/** Factors of a stock without dry tests: the built-in ones, limited by the wet tests. */
function wetFactorsOnly(stock: LineStock, limits: readonly WetLimit[], invented: boolean): StockFactors {
  const builtIn = builtInFactors(stock);
  if (limits.length === 0) return builtIn;
  const bound = new WetBound(undefined, limits, () => false, togetherLine(stock, basisSayer(invented)));
  const sure = builtInErrors(stock, 0);
  const known = (factor: StrengthFactor, term: StateTerm | "level"): StrengthFactor => ({
    ...factor,
    learnt: knowTogether(termOf(sure(factor, term), term), bound),
  });
  return wornFactors(stock, known(builtIn.level(), "level"), (id, dose, factor, curves) =>
    known(factor, { id, dose, curves }),
  );
}

/** Factors of a stock from its model; the built-in ones if no test counts. `invented`: the tests are made up. */
export function testedFactors(stock: LineStock, model: StockModel | undefined, invented = false): StockFactors {
  const builtIn = builtInFactors(stock);
  if (model === undefined) return builtIn;
  const say = basisSayer(invented);
  const wears = new Map<WearId, LearntWear>();
  const level = levelFactor(model, builtIn.level(), say);
  const [{ wide }, { own }] = [levelWidth(model), level.learnt!];
  const line = togetherLine(stock, say);
  const dry = new StateStrength(model, { wide, own: own * own }, line);
  const isKnown = (id: WearId) => model.wears.has(id);
  const together = model.wet.length === 0 ? dry : new WetBound(dry, model.wet, isKnown, line);
  const sure = builtInErrors(stock, model.means.length);
  const known = (factor: StrengthFactor, term: StateTerm | "level"): StrengthFactor => ({
    ...factor,
    learnt: knowTogether(termOf({ ...(factor.learnt ?? sure(factor, term)) }, term), together),
  });
  const wear: WearMaker = (id, dose, factor, curves) => {
    const term = { id, dose, curves };
    if (!isKnown(id)) return model.wet.length === 0 ? factor : known(factor, term);
    const learnt = wears.get(id) ?? learntWear(model, id);
    wears.set(id, learnt);
    const worn = wornFactor(model, learnt, dose, factor, say);
    if (!model.wears.get(id)!.onlyBelow) return known(worn, term);
    // A piece that broke below a load narrows no spread: the factor errs as built in.
    const { spread, shared } = factor;
    return known({ ...worn, spread, shared, learnt: sure(factor, term) }, term);
  };
  return wornFactors(stock, known(level, "level"), wear, isKnown);
}

/** A factor of a wear at a dose, from the built-in one. */
type WearMaker = (id: WearId, dose: number, factor: StrengthFactor, curves: readonly WearCurve[]) => StrengthFactor;

/**
 * Gives factors without dry tests their built-in spread, beside factors that have tests. Every cause has a deviate of its own,
 * from `first` on.
 */
function builtInErrors(stock: LineStock, first: number): (factor: StrengthFactor, term: StateTerm | "level") => Learnt {
  const deviates = new Map<WearId | "level", number>();
  return ({ spread, shared }, term) => {
    const id = term === "level" ? term : term.id;
    const place = deviates.get(id) ?? first + deviates.size;
    deviates.set(id, place);
    const deviation = logSpread(spread);
    const loadings = Array.from({ length: place + 1 }, (_, i) => (i === place ? Math.sqrt(shared) * deviation : 0));
    return { source: sourceOf({ stock }), loadings, own: Math.sqrt(1 - shared) * deviation };
  };
}

/** Every factor of a stock, with its wears made by `wear`; `isKnown`: whether dry tests tell of a wear. */
function wornFactors(
  stock: LineStock,
  level: StrengthFactor,
  wear: WearMaker,
  isKnown: (id: WearId) => boolean = () => false,
): StockFactors {
  const builtIn = builtInFactors(stock);
  const over = (id: WearId, dose: number, at: (dose: number) => StrengthFactor, key = "") =>
    wear(id, dose, at(dose), [{ key, log: (x) => Math.log(at(x).value) }]);
  return {
    level: () => level,
    sun: (months) => over("sun", months, builtIn.sun),
    falls: (falls) => over("falls", falls, builtIn.falls),
    leashFalls: (falls) => over("leash falls", falls, builtIn.leashFalls),
    clamp: (months, load) => over("clamp mark", months, (x) => builtIn.clamp(x, load), `${load}`),
    sewing: (months) => over("sewing", months, builtIn.sewing),
    sewnLoop: (months, ratedShare) => {
      // The tested share of the webbing's strength in such stitching, over the loop's rating: the lower factor governs.
      const curves: WearCurve[] = [
        { key: "loop", log: (x) => Math.log(builtIn.sewnLoop(x, ratedShare).value) },
        { key: `seam ${ratedShare}`, log: (x) => Math.log(builtIn.sewing(x).value / ratedShare) },
      ];
      const loop = wear("sewing", months, builtIn.sewnLoop(months, ratedShare), curves);
      if (!isKnown("sewing")) return loop;
      const share = wear("sewing", months, builtIn.sewing(months), curves).value / ratedShare;
      return share < loop.value ? { ...loop, value: share } : loop;
    },
    knot: (kind) => over(stock.form === "rope" ? `knot ${kind}` : "knot in webbing", 0, () => builtIn.knot(kind)),
    webbingKnot: () => over("knot in webbing", 0, () => builtIn.webbingKnot()),
  };
}

/** The table line that brings the product of the factors to the strength of the whole state by the tests. */
function togetherLine(stock: LineStock, say: Say): StateStrength["line"] {
  return (value, adds) => {
    const variance = Math.max(0, adds);
    const name = "own tests together";
    return {
      name,
      value,
      spread: Math.sqrt(Math.expm1(variance)),
      basis: say(
        "tested",
        "the tests know the whole state otherwise than its factors one by one; no test counts so that a lower one would raise it",
      ),
      cause: name,
      shared: 0,
      beyond: false,
      noData: false,
      learnt: { source: sourceOf({ stock }), loadings: [], own: Math.sqrt(variance), adds },
      ...(value > 1 + LEAST_FLAGGED_RISE ? { flagged: true } : {}),
    };
  };
}

/** Factor that widens the deviation of the level: for few tests, and for a family that they cannot show. */
const levelWidth = ({ newTests, freedom }: StockModel) => ({
  wide: newTests > 0 ? WEIBULL_DEPTH * widened(freedom) : 1,
});

type Say = (kind: Basis["kind"], note: Note) => Basis;

/** A factor from invented tests is never called tested. */
const basisSayer =
  (invented: boolean): Say =>
  (kind, note) =>
    invented ? { kind: "assumed", note: noteFact("basis.invented", { note: within(note) }) } : { kind, note };

const counted = (count: number) => noteFact("tests.own", { count });

/** A smaller rise of a strength is not flagged [-]. */
const LEAST_FLAGGED_RISE = 0.005;

function levelFactor(model: StockModel, make: StrengthFactor, say: Say): StrengthFactor {
  const { means, covariance, newTests, scatter, batchScatter, stock, raise } = model;
  // Too few broken new pieces may lower the level, never raise it. The same holds for used pieces.
  const mean = Math.min(raise.level, means[0]!);
  const { wide } = levelWidth(model);
  const common = covariance[0]![0]! * wide * wide;
  const own =
    newTests > 0 ? (scatter * wide) ** 2 + batchScatter ** 2 : (1 - make.shared) * Math.log1p(make.spread ** 2);
  const value = Math.exp(mean);
  const note =
    newTests > 0
      ? noteFact("basis.newTests", { tests: counted(newTests), stock: { stock: stock.name } })
      : noteFact("basis.noNewTests", { stock: { stock: stock.name }, note: within(make.basis.note) });
  return {
    ...make,
    value,
    spread: Math.sqrt(Math.expm1(common + own)),
    shared: common / (common + own),
    basis: say(newTests > 0 ? "tested" : make.basis.kind, note),
    learnt: { source: sourceOf(model), loadings: loadingsOf(model, (k) => (k === 0 ? wide : 0)), own: Math.sqrt(own) },
    ...(value > 1 + LEAST_FLAGGED_RISE ? { flagged: true } : {}),
  };
}

const sourceOf = ({ stock }: Pick<StockModel, "stock">) => `own tests of ${stock.id}`;

const ROOTS_OF_MODEL = new WeakMap<StockModel, readonly (readonly number[])[]>();

/** Loadings of a sum of coefficients on standard deviates: `weight` of each coefficient. */
function loadingsOf(model: StockModel, weight: (coefficient: number) => number): number[] {
  const root = ROOTS_OF_MODEL.get(model) ?? choleskyRoot(model.covariance.map((row) => [...row]));
  ROOTS_OF_MODEL.set(model, root);
  return root.map((_, k) => root.reduce((sum, row, i) => sum + weight(i) * row[k]!, 0));
}

/** Share of the prior's variance that tests may have left for a factor to be called tested [-]. */
const MOST_VARIANCE_LEFT = 0.5;

function testedNote(tested: boolean, values: NoteFacts["basis.tested"], most: FactValue | undefined): NoteFact {
  if (tested)
    return most === undefined ? noteFact("basis.tested", values) : noteFact("basis.testedUpTo", { ...values, most });
  const { tests, note } = values;
  return most === undefined
    ? noteFact("basis.builtIn", { tests, note })
    : noteFact("basis.builtInUpTo", { tests, note, most });
}

function wornFactor(
  model: StockModel,
  wear: LearntWear,
  dose: number,
  factor: StrengthFactor,
  say: Say,
): StrengthFactor {
  const found = wear.at(dose);
  const beyond = factor.beyond;
  const value = beyond
    ? Math.min(factor.value * Math.min(1, found.over), found.value * BEYOND_RANGE_SHARE)
    : factor.value * found.over;
  const loadings = loadingsOf(model, found.weight);
  const common = loadings.reduce((sum, x) => sum + x * x, 0);
  const total = beyond ? Math.max(common + found.own, Math.log1p(factor.spread ** 2)) : common + found.own;
  const tested = !beyond && found.left <= MOST_VARIANCE_LEFT;
  const { testCount, doses, id } = model.wears.get(wear.id)!;
  const most = doses.length > 0 && doses.at(-1)! > 0 ? doseFact({ id, dose: doses.at(-1)! }) : undefined;
  const values = { tests: counted(testCount), stock: { stock: model.stock.name }, note: within(factor.basis.note) };
  const clipped = [...model.clipped].some((state) => state.doses.some((dose) => dose.id === wear.id));
  const gain = found.gain ? "basis.noLoss" : clipped ? "basis.inPart" : undefined;
  const note = testedNote(tested, values, most);
  return {
    ...factor,
    // No wear raises a strength.
    value: Math.min(1, value),
    spread: Math.sqrt(Math.expm1(total)),
    shared: common / total,
    basis: say(tested ? "tested" : factor.basis.kind, gain === undefined ? note : noteFact(gain, { note })),
    learnt: { source: sourceOf(model), loadings, own: Math.sqrt(total - common) },
    ...(gain !== undefined ? { flagged: true } : {}),
  };
}
