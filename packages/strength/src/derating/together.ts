/**
 * Factors that the same own tests know do not multiply: the tests know the strength of the whole state. A factor carries its
 * place in that state in `learnt`, and `combineFactors` asks for the whole state.
 */
import type { Learnt, StrengthFactor } from "./factor.ts";

/** ln of the product of some factors by the tests, and its variance less that of the separate factors [-]. */
export interface TogetherValue {
  readonly log: number;
  readonly variance?: number;
}

/** A state that own tests know; `factors` are all factors of one such state. Undefined if they are not a whole state. */
export interface TestedTogether {
  readonly value: (factors: readonly StrengthFactor[]) => TogetherValue | undefined;
  /** The line of a table that brings the product of the factors to the strength of the state. */
  readonly line: (value: number, adds: number) => StrengthFactor;
}

const TOGETHER_OF_FACTOR = new WeakMap<Learnt, TestedTogether>();
/** Marks the factors that are such lines of a table: they are worked out anew wherever factors are combined. */
const TABLE_LINES = new WeakSet<Learnt>();

export function knowTogether(learnt: Learnt, tests: TestedTogether): Learnt {
  TOGETHER_OF_FACTOR.set(learnt, tests);
  return learnt;
}

const isLine = ({ learnt }: StrengthFactor) => learnt !== undefined && TABLE_LINES.has(learnt);

/** A difference from the product below which no line is shown [-]. */
const LEAST_SHOWN_DIFFERENCE = 0.001;

/** The factors, with one line more for each set of tests that knows several of them, if the line changes their product. */
export function withTogether(given: readonly StrengthFactor[]): {
  readonly factors: readonly StrengthFactor[];
  readonly shown: readonly StrengthFactor[];
} {
  const factors = given.filter((factor) => !isLine(factor));
  const tests = new Set(
    factors.flatMap(({ learnt }) => (learnt === undefined ? [] : (TOGETHER_OF_FACTOR.get(learnt) ?? []))),
  );
  const lines = [...tests].flatMap((one) => {
    const known = factors.filter(({ learnt }) => learnt !== undefined && TOGETHER_OF_FACTOR.get(learnt) === one);
    const whole = one.value(known);
    if (whole === undefined) return [];
    const log = whole.log - known.reduce((sum, { value }) => sum + Math.log(value), 0);
    const line = one.line(Math.exp(log), whole.variance ?? 0);
    TABLE_LINES.add(line.learnt!);
    return [line];
  });
  if (lines.length === 0) return { factors: given, shown: given };
  const worth = lines.filter((line) => Math.abs(line.value - 1) > LEAST_SHOWN_DIFFERENCE);
  return { factors: [...factors, ...lines], shown: worth.length > 0 ? [...factors, ...worth] : factors };
}
