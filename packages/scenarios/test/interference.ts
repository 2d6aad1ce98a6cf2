/**
 * A problem of interference of which the answer is known, through the whole path of chances: question, draws, loads that follow a law
 * in place of runs, and what is worked out of them. With ln of load and strength normal, a part fails as often as a normal variable
 * lies below −(ln R − ln E) ÷ √(their variances).
 */
import { seededRandom } from "@secondline/statistics";
import { assessRig, type Chances, type ChancesOptions, INPUT_IDS, rigStrengths } from "../src/index.ts";
import { chancesFrom, ordersOf, planChances } from "../src/reliability/chances.ts";
import { loadedParts } from "../src/reliability/loadedParts.ts";
import { finish } from "./finish.ts";
import { madeUpRun } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

const assessed = assessRig(testRig);
const strengths = rigStrengths(testRig);
/** Of ln of the load: how it goes with the walker's mass and the leash's length, and what chance adds [-]. */
export const LAW = { mass: 0.07, leashLength: -0.04, chance: 0.09 } as const;
const { part: leash } = loadedParts(testRig, strengths).find(({ part }) => part.id === "leash")!;
export const OF_STRENGTH = Math.hypot(leash.own, ...Object.values(leash.causes));
export const DRAWS = 256;
export const OF_LOAD = Math.hypot(LAW.mass, LAW.leashLength, LAW.chance);

/** The load of the leash that fails with `beta` deviations to spare; every other part carries next to nothing. */
export function interfered(beta: number, options: Partial<ChancesOptions> & { readonly seed: number }): Chances {
  const plan = planChances(assessed, { whatIf: { kind: "leashFall", at: 0.5 }, runs: DRAWS, ...options });
  const middle = Math.log(leash.median) - beta * Math.hypot(OF_STRENGTH, OF_LOAD);
  const chance = seededRandom(options.seed + 1000);
  const of = (id: (typeof INPUT_IDS)[number], deviates: readonly number[]) => deviates[INPUT_IDS.indexOf(id)]!;
  const results = ordersOf(plan, 0, []).map((order, i) => {
    const { deviates } = plan.samples[i]!;
    const by = LAW.mass * of("mass", deviates) + LAW.leashLength * of("leashLength", deviates);
    const load = Math.exp(middle + by + LAW.chance * chance.normal());
    return madeUpRun(testRig, order!, {
      share: (id) => (id === "leash" ? load / strengths.parts.find((part) => part.id === id)!.strength5 : 0.001),
    });
  });
  return finish(chancesFrom(assessed, plan, results));
}

/** How often a normal variable lies further below its mean than so many deviations, from the complementary error function. */
export const EXACT: readonly (readonly [beta: number, chance: number])[] = [
  [1, 0.158655],
  [3, 1.349898e-3],
  [4.75, 1.017083e-6],
];

export const leashFails = (found: Chances) => found.parts.find(({ id }) => id === "leash")!.fails;
