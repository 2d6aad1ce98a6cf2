/**
 * The strength of a state whose wears the same tests know: level and wears together, on a grid of doses. The centre and the 5 %
 * value are least values over all states with no more wear, so neither rises with any dose. Between nodes both are interpolated
 * over the logarithm of the built-in curve. No lower test raises the centre. See STATISTICS.md, "A lower test never raises a
 * strength".
 */
import type { Learnt, StrengthFactor } from "../derating/factor.ts";
import { Z95 } from "../derating/lognormal.ts";
import type { TestedTogether, TogetherValue } from "../derating/together.ts";
import { wearPosterior } from "./learntWear.ts";
import { groupWeights, type OneSided, oneSidedSum, tiedSum } from "./oneSided.ts";
import type { StockModel } from "./stockModel.ts";
import { lastDose, type WearId } from "./wearFactors.ts";

/** A built-in factor over its dose: ln of its value. `key` tells it from others of the same wear. */
export interface WearCurve {
  readonly key: string;
  readonly log: (dose: number) => number;
}

/** One wear of a state. If it has several curves, the one that gives the lowest strength counts. */
export interface StateTerm {
  readonly id: WearId;
  readonly dose: number;
  readonly curves: readonly WearCurve[];
}

/** The level: the factor that widens its deviation for few tests, and the variance of a further piece's own. */
export interface StateLevel {
  readonly wide: number;
  readonly own: number;
}

const TERM_OF_FACTOR = new WeakMap<Learnt, StateTerm | "level">();

export function termOf(learnt: Learnt, term: StateTerm | "level"): Learnt {
  TERM_OF_FACTOR.set(learnt, term);
  return learnt;
}

/** Place of a factor in the state that its tests describe. */
export const termOfFactor = ({ learnt }: StrengthFactor): StateTerm | "level" | undefined =>
  learnt === undefined ? undefined : TERM_OF_FACTOR.get(learnt);

/** A wear at the doses of the grid; the first node is without the wear. */
interface Nodes {
  readonly id: WearId;
  readonly doses: readonly (number | undefined)[];
  /** Weight of every group of tests by node, for each form of the tests; `steps`: weight of every coefficient by node. */
  readonly rows: readonly (readonly Float64Array[])[];
  readonly steps: readonly Float64Array[];
  /** Variance of a piece's own, by node. */
  readonly own: readonly number[];
}

/** Centre and 5 % value by node, logarithms over the rated strength. */
interface Grid {
  readonly centre: Float64Array;
  readonly low: Float64Array;
  readonly axes: readonly { readonly nodes: Nodes; readonly curve: WearCurve; readonly logs: readonly number[] }[];
}

/** Doses between the tested ones, by how many wears were tested: a grid of many dimensions must be coarser [-]. */
const DOSES_BETWEEN = [24, 24, 16, 10, 6];

export class StateStrength implements TestedTogether {
  private readonly wears = new Map<WearId, Nodes>();
  private readonly grids = new Map<string, Grid>();
  private readonly model: StockModel;
  private readonly level: StateLevel;
  readonly line: TestedTogether["line"];

  constructor(model: StockModel, level: StateLevel, line: TestedTogether["line"]) {
    this.model = model;
    this.level = level;
    this.line = line;
  }

  value(factors: readonly StrengthFactor[]): TogetherValue | undefined {
    const terms = factors.flatMap((factor) => termOfFactor(factor) ?? []);
    if (terms.filter((term) => term === "level").length !== 1) return undefined;
    const all = terms.filter((term): term is StateTerm => term !== "level");
    const { once, again } = onceEach(all);
    const log = this.lowest(once, 0, []);
    const more = again.reduce((sum, term) => sum + this.alone(term), 0);
    const beyond = once.some(({ id, dose }) => dose > lastDose(this.model.stock, id));
    if (again.length > 0 || beyond) return { log: log.centre + more };
    return { log: log.centre, variance: ((log.centre - log.low) / Z95) ** 2 - learntVariance(factors) };
  }

  /**
   * The lowest strength over all choices of a curve. Beyond the known range of a wear the lower of two counts: the strength at
   * the edge with the built-in loss from there on, and the strength without that wear with all of its built-in loss.
   */
  private lowest(
    terms: readonly StateTerm[],
    i: number,
    chosen: readonly ChosenTerm[],
  ): { centre: number; low: number } {
    const term = terms[i];
    if (term === undefined) return this.at(chosen);
    const edge = lastDose(this.model.stock, term.id);
    const found = term.curves.flatMap((curve) => {
      if (term.dose <= edge) return [this.lowest(terms, i + 1, [...chosen, { id: term.id, dose: term.dose, curve }])];
      const last = this.lowest(terms, i + 1, [...chosen, { id: term.id, dose: edge, curve }]);
      const without = this.lowest(terms, i + 1, chosen);
      return [moved(last, curve.log(term.dose) - curve.log(edge)), moved(without, curve.log(term.dose))];
    });
    return { centre: Math.min(...found.map((x) => x.centre)), low: Math.min(...found.map((x) => x.low)) };
  }

  /** A second wear of one kind at the same place: the built-in value, or a lower one by the tests. */
  private alone({ id, dose, curves }: StateTerm): number {
    const steps = this.stepsAt(id, Math.min(dose, lastDose(this.model.stock, id)));
    const below = this.model.oneSided.map((tests) => {
      const lower = tests.means.map((mean) => Math.min(0, mean));
      return oneSidedSum(groupWeights(tests, steps), lower, tests.references);
    });
    return Math.min(...curves.map((curve) => curve.log(dose))) + Math.min(...below);
  }

  private at(terms: readonly ChosenTerm[]): { centre: number; low: number } {
    const ordered = [...terms].sort((a, b) => (a.id < b.id ? -1 : 1));
    const { centre, low, axes } = this.grid(ordered);
    // Corners of the cell, each with its share.
    let corners: [index: number, share: number][] = [[0, 1]];
    let stride = 1;
    axes.forEach(({ nodes, curve, logs }, k) => {
      const { dose } = ordered[k]!;
      let j = 1;
      while (j < nodes.doses.length - 1 && nodes.doses[j]! < dose) j++;
      const [from, to] = nodes.doses[j]! === dose || j === 1 ? [j, j] : [j - 1, j];
      const width = logs[to]! - logs[from]!;
      const by = width === 0 ? Number(to !== from) : Math.min(1, Math.max(0, (curve.log(dose) - logs[from]!) / width));
      const step = stride;
      corners = corners.flatMap(([index, share]): [number, number][] =>
        by === 0 || from === to
          ? [[index + step * from, share]]
          : [
              [index + step * from, share * (1 - by)],
              [index + step * to, share * by],
            ],
      );
      stride *= nodes.doses.length;
    });
    const mix = (values: Float64Array) => corners.reduce((sum, [index, share]) => sum + share * values[index]!, 0);
    return { centre: mix(centre), low: mix(low) };
  }

  private grid(terms: readonly ChosenTerm[]): Grid {
    const key = terms.map(({ id, curve }) => `${id} ${curve.key}`).join("; ");
    const known = this.grids.get(key) ?? this.makeGrid(terms);
    this.grids.set(key, known);
    return known;
  }

  private makeGrid(terms: readonly ChosenTerm[]): Grid {
    const { raise } = this.model;
    const axes = terms.map(({ id, curve }) => {
      const nodes = this.nodes(id);
      return { nodes, curve, logs: nodes.doses.map((dose) => (dose === undefined ? 0 : curve.log(dose))) };
    });
    const strides: number[] = [];
    const size = axes.reduce((total, { nodes }) => {
      strides.push(total);
      return total * nodes.doses.length;
    }, 1);
    const [centre, low] = [new Float64Array(size), new Float64Array(size)];
    const limits = this.limits(axes, strides);
    const sums = this.model.oneSided.map((tests, form) => this.sumsAt(tests, form, axes));
    const variance = this.varianceOf(axes.map(({ nodes }) => nodes));
    const place = axes.map(() => 0);
    for (let index = 0; index < size; index++) {
      let builtIn = 0;
      axes.forEach(({ nodes, logs }, k) => {
        place[k] = Math.floor(index / strides[k]!) % nodes.doses.length;
        builtIn += logs[place[k]!]!;
      });
      const limit = Math.min(index === 0 ? raise.level : raise.state, limits.get(index) ?? Number.POSITIVE_INFINITY);
      const by = sums.reduce((least, sumAt) => Math.min(least, sumAt(place)), limit);
      let [c, l] = [builtIn + by, builtIn + by - Z95 * Math.sqrt(variance(place))];
      place.forEach((at, k) => {
        if (at === 0) return;
        c = Math.min(c, centre[index - strides[k]!]!);
        l = Math.min(l, low[index - strides[k]!]!);
      });
      centre[index] = c;
      low[index] = l;
    }
    return { centre, low, axes };
  }

  /**
   * Credit of one form of the tests over the built-in value, by the nodes of a place. Callers go through the doses of the first
   * wear one after the other.
   */
  private sumsAt({ gain, means, references }: OneSided, form: number, axes: Grid["axes"]) {
    const levelRows = gain[0]!;
    const untested = this.model.newTests === 0;
    const [first, ...others] = axes;
    // Weights of the level and of all wears but the first.
    const outer = new Float64Array(means.length);
    return (place: readonly number[]): number => {
      if ((place[0] ?? 0) === 0) {
        outer.set(levelRows);
        others.forEach(({ nodes }, k) => {
          const add = nodes.rows[form]![place[k + 1]!]!;
          for (let r = 0; r < outer.length; r++) outer[r]! += add[r]!;
        });
      }
      const inner = first === undefined ? undefined : first.nodes.rows[form]![place[0]!];
      const by = tiedSum(outer, inner, undefined, means, references);
      // Tests of used pieces may lower the level, never raise it.
      return untested ? Math.min(by, tiedSum(outer, inner, levelRows, means, references)) : by;
    };
  }

  /** Most strength of the tested states, at their nodes of the grid. */
  private limits(axes: Grid["axes"], strides: readonly number[]) {
    const limits = new Map<number, number>();
    for (const one of this.model.oneSided.flatMap(({ most }) => most)) {
      if (one.doses.some(({ id }) => !axes.some(({ nodes }) => nodes.id === id))) continue;
      const index = axes.reduce((sum, { nodes }, k) => {
        const dose = one.doses.find(({ id }) => id === nodes.id)?.dose;
        return sum + strides[k]! * nodes.doses.indexOf(dose);
      }, 0);
      limits.set(index, Math.min(one.most, limits.get(index) ?? Number.POSITIVE_INFINITY));
    }
    return limits;
  }

  /**
   * Variance of a further piece by its nodes: the variance of level and wears together that the tests leave, and the piece's
   * own.
   */
  private varianceOf(wears: readonly Nodes[]): (place: readonly number[]) => number {
    const { covariance } = this.model;
    const { wide, own } = this.level;
    const times = (a: Float64Array, b: Float64Array) => {
      let sum = 0;
      for (let i = 0; i < a.length; i++) {
        if (a[i] === 0) continue;
        const row = covariance[i]!;
        for (let j = 0; j < b.length; j++) if (b[j] !== 0) sum += a[i]! * b[j]! * row[j]!;
      }
      return sum;
    };
    const level = new Float64Array(covariance.length);
    level[0] = wide;
    const base = times(level, level) + own;
    const single = wears.map(({ steps, own }) => steps.map((s, j) => 2 * times(level, s) + times(s, s) + own[j]!));
    const pairs = wears.map((a, i) =>
      wears.slice(0, i).map((b) => a.steps.map((s) => b.steps.map((t) => 2 * times(s, t)))),
    );
    return (place) => {
      let sum = base;
      place.forEach((j, a) => {
        sum += single[a]![j]!;
        for (let b = 0; b < a; b++) sum += pairs[a]![b]![j]![place[b]!]!;
      });
      return Math.max(0, sum);
    };
  }

  private nodes(id: WearId): Nodes {
    const known = this.wears.get(id);
    if (known !== undefined) return known;
    const { model } = this;
    const edge = lastDose(model.stock, id);
    const count = DOSES_BETWEEN[Math.min(model.wears.size, DOSES_BETWEEN.length) - 1]!;
    const even = edge === 0 ? [0] : Array.from({ length: count + 1 }, (_, i) => edge * (i / count) ** 2);
    const present = [...new Set([...even, ...model.wears.get(id)!.doses])].sort((a, b) => a - b);
    const doses = [undefined, ...present];
    const steps = doses.map((dose) =>
      dose === undefined ? new Float64Array(model.means.length) : this.stepsAt(id, dose),
    );
    const own = doses.map((dose) => (dose === undefined ? 0 : wearPosterior(model, id, dose).own));
    const rows = model.oneSided.map((tests) => steps.map((step) => groupWeights(tests, step)));
    const made: Nodes = { id, doses, steps, own, rows };
    this.wears.set(id, made);
    return made;
  }

  private stepsAt(id: WearId, dose: number): Float64Array {
    const { weight } = wearPosterior(this.model, id, dose);
    return Float64Array.from(this.model.means, (_, k) => weight(k));
  }
}

interface ChosenTerm {
  readonly id: WearId;
  readonly dose: number;
  readonly curve: WearCurve;
}

const moved = ({ centre, low }: { centre: number; low: number }, by: number) => ({
  centre: centre + by,
  low: low + by,
});

/** Every kind of wear once, with its largest dose; and the other wears. */
function onceEach(terms: readonly StateTerm[]) {
  const once = new Map<WearId, StateTerm>();
  for (const term of terms) {
    const known = once.get(term.id);
    if (known === undefined || known.dose < term.dose) once.set(term.id, term);
  }
  return { once: [...once.values()], again: terms.filter((term) => once.get(term.id) !== term) };
}

/** Variance of the product of factors by the factors' own loadings. */
function learntVariance(factors: readonly StrengthFactor[]): number {
  const sum: number[] = [];
  let own = 0;
  for (const { learnt } of factors) {
    learnt!.loadings.forEach((x, k) => {
      sum[k] = (sum[k] ?? 0) + x;
    });
    own += learnt!.own ** 2;
  }
  return own + sum.reduce((total, x) => total + x * x, 0);
}
