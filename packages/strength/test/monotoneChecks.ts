/** Largest rises that a worse history or a lower test brings, over random rigs and logs. */
import type { Random } from "@secondline/statistics";
import {
  held,
  largestRise,
  oneLower,
  randomHistory,
  randomLog,
  someBounded,
  someSurvive,
  worse,
  worseBound,
} from "./randomHistories.ts";

/** Rounding of sums and products [-]. */
export const ROUNDING = 1e-9;

interface Rises {
  readonly central: number;
  readonly lower: number;
}

export function checkHistories(count: number, random: Random): Rises {
  return largest(count, () => {
    const log = random.uniform() < 0.2 ? [] : randomLog(random, true);
    const history = randomHistory(random);
    return largestRise(held(history, log), held(worse(history, random), log));
  });
}

/** Half of the logs have new pieces and pieces from the sun, half all wears; some pieces did not break. */
export function checkLowerTests(count: number, random: Random): Rises {
  return largest(count, () => {
    const log = someSurvive(randomLog(random, random.uniform() < 0.5), random);
    const history = randomHistory(random);
    return largestRise(held(history, log), held(history, oneLower(log, random)));
  });
}

/** Logs with survivors, intervals and pieces that broke below a load: one such load lower, or one end of an interval. */
export function checkWorseBounds(count: number, kind: "below" | "between", random: Random): Rises {
  return largest(count, () => {
    const log = someBounded(someSurvive(randomLog(random, random.uniform() < 0.7), random), random);
    const history = randomHistory(random);
    return largestRise(held(history, log), held(history, worseBound(log, kind, random)));
  });
}

function largest(count: number, rises: () => readonly [number, number]): Rises {
  let [central, lower] = [0, 0];
  for (let i = 0; i < count; i++) {
    const [a, b] = rises();
    central = Math.max(central, a);
    lower = Math.max(lower, b);
  }
  return { central, lower };
}
