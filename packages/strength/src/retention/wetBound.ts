/** The strength of a state by dry tests and built-in factors, limited by the wet tests. */
import type { StrengthFactor } from "../derating/factor.ts";
import type { TestedTogether, TogetherValue } from "../derating/together.ts";
import { type StateTerm, termOfFactor } from "./stateStrength.ts";
import type { WearId } from "./wearFactors.ts";
import type { WetLimit } from "./wetTests.ts";

export class WetBound implements TestedTogether {
  /** Undefined if no test was pulled dry. */
  private readonly dry: TestedTogether | undefined;
  private readonly limits: readonly WetLimit[];
  /** Whether dry tests know a wear. */
  private readonly isKnown: (id: WearId) => boolean;
  readonly line: TestedTogether["line"];

  constructor(
    dry: TestedTogether | undefined,
    limits: readonly WetLimit[],
    isKnown: (id: WearId) => boolean,
    line: TestedTogether["line"],
  ) {
    this.dry = dry;
    this.limits = limits;
    this.isKnown = isKnown;
    this.line = line;
  }

  value(factors: readonly StrengthFactor[]): TogetherValue | undefined {
    const terms = factors.map(termOfFactor);
    if (terms.filter((term) => term === "level").length !== 1) return undefined;
    const wears = terms.filter((term): term is StateTerm => term !== undefined && term !== "level");
    const known = factors.filter((_, i) => {
      const term = terms[i];
      return term === "level" || (term !== undefined && this.isKnown(term.id));
    });
    const whole = this.dry === undefined ? { log: logOf(known) } : this.dry.value(known);
    if (whole === undefined) return undefined;
    const rest = logOf(factors.filter((factor) => !known.includes(factor)));
    const most = this.limits
      .filter(({ doses }) => doses.every(({ id }) => wears.some((wear) => wear.id === id)))
      .reduce((least, limit) => Math.min(least, limit.most), Number.POSITIVE_INFINITY);
    return { ...whole, log: Math.min(whole.log + rest, builtIn(wears) + most) };
  }
}

const logOf = (factors: readonly StrengthFactor[]) => factors.reduce((sum, { value }) => sum + Math.log(value), 0);

/** The built-in factors of a state; of several curves the lowest. */
const builtIn = (wears: readonly StateTerm[]) =>
  wears.reduce((sum, { curves, dose }) => sum + Math.min(...curves.map(({ log }) => log(dose))), 0);
