/**
 * What a check, a note or a reason has to say, as data: a code and the values of its sentence. The sentence itself is made by the words,
 * in the user's language; no package below them has one.
 */

/** A calendar day, YYYY-MM-DD; the words write it as their language does. */
export interface FactDay {
  readonly day: string;
}

/** Days, and quantities in SI units, shown rounded in the unit that suits their size. */
export type FactAmount =
  | FactDay
  | { readonly force: number }
  | { readonly length: number }
  | { readonly mass: number }
  | { readonly share: number }
  | { readonly months: number }
  | { readonly ratio: number; readonly side?: "down" | "up" }
  | { readonly rounded: number; readonly decimals: number };

/** A value of a sentence: a text as it was written, a count, a quantity, a list, a text that the words look up, or a fact within a fact. */
export type FactValue =
  | string
  | number
  | FactAmount
  | { readonly list: readonly FactValue[]; readonly joined?: "and" | "or" | "semicolon" }
  | { readonly brought: string }
  /** The name of a webbing or rope: one of the library is looked up, another is its owner's. */
  | { readonly stock: string }
  | Fact;

export interface Fact {
  readonly code: string;
  readonly values: FactValues;
  /** What is said after it, as a sentence of its own. */
  readonly next?: Fact | undefined;
}

/** What is noted of something: a text in words, which is looked up or somebody's own, or a fact. */
export type Note = string | Fact;

export type FactValues = Readonly<Record<string, FactValue>>;

/** The values of a fact that has none. */
export type NoValues = Readonly<Record<never, never>>;

/** The union of the facts in a table of codes and their values. */
export type FactsOf<Table> = {
  [Code in keyof Table & string]: {
    readonly code: Code;
    readonly values: Table[Code];
    readonly next?: FactsOf<Table> | undefined;
  };
}[keyof Table & string];

/** What makes the facts of a table: a code with the values of its sentence, and what is said after it. */
export const factMaker =
  <Table>() =>
  <Code extends keyof Table & string>(
    code: Code,
    values: Table[Code],
    next?: FactsOf<Table>,
  ): FactsOf<Pick<Table, Code>> =>
    ({ code, values, ...(next === undefined ? {} : { next }) }) as FactsOf<Pick<Table, Code>>;

/** Whether two values of facts say the same. */
export const sameFact = (a: FactValue, b: FactValue): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** The values of a list, every one once. */
export function distinctFacts<T extends FactValue>(values: readonly T[]): T[] {
  return [...new Map(values.map((value) => [JSON.stringify(value), value])).values()];
}

/** What is wrong at a path: the fault, what was got, what was expected. */
export interface Issue<F extends Fact = Fact> {
  readonly path: string;
  readonly got: FactValue;
  readonly expected: FactValue;
  readonly message: F;
}
