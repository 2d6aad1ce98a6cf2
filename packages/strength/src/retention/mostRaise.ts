/**
 * Limits how much tests may credit to a stock above its rating and its built-in factors. A piece that did not break is a lower
 * bound of that one piece; only breaks show the strength of others. A worn state is never credited more than a new piece on top
 * of that. See STATISTICS.md, "What raises a strength".
 */
import { grouped } from "../breakLog/grouped.ts";
import type { StateTests } from "./stateTests.ts";

export interface MostRaise {
  /** Most credit of new pieces over the rated strength, in the logarithm [-]. */
  readonly level: number;
  /** Most credit of any state over the built-in value, in the logarithm [-]. */
  readonly state: number;
}

/** Number of new pieces that must have broken before they raise the rating [-]. */
const LEAST_BREAKS = 3;
/** Tests raise a rating by no more than an own judgement may. A stock that holds still more was rated in another way [-]. */
const MOST_LEVEL = Math.log(1.5);

export function mostRaise(stateTests: readonly StateTests[]): MostRaise {
  // States with the same steps of every wear are grouped, of whatever batch.
  const states = [...grouped(stateTests, ({ of: [level, _batch, ...steps] }) => [level, ...steps].join()).values()];
  const shown = states.map((alike) => {
    const isNew = alike[0]!.state.doses.length === 0;
    return { isNew, by: meanOfBreaks(alike, isNew ? LEAST_BREAKS : 1) };
  });
  return {
    level: Math.min(MOST_LEVEL, Math.max(0, ...shown.map(({ isNew, by }) => (isNew ? by : 0)))),
    state: Math.max(0, ...shown.map(({ by }) => by)),
  };
}

/**
 * Mean logarithm of the breaking loads over the built-in value, an interval at its lower end; 0 if fewer than `least`
 * broke [-].
 */
function meanOfBreaks(alike: readonly StateTests[], least: number): number {
  const broke = alike.flatMap(({ exact, bounds, offset }) => [
    ...exact,
    ...bounds.flatMap(({ result }) => (result.kind === "between" ? [Math.log(result.from) - offset] : [])),
  ]);
  return broke.length < least ? 0 : broke.reduce((sum, by) => sum + by, 0) / broke.length;
}
