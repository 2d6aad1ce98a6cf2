import { setTimeout as pause } from "node:timers/promises";

/** Patience with a page on a slow machine [ms]. */
const PATIENCE = 60_000;

/** Asks again and again until there is an answer that is not false or undefined. Throws, with `what`, after `patience` [ms]. */
export async function until<T>(
  what: string,
  ask: () => T | Promise<T>,
  patience = PATIENCE,
): Promise<Exclude<T, false | undefined>> {
  const end = Date.now() + patience;
  for (;;) {
    const answer = await ask();
    if (answer !== false && answer !== undefined) return answer as Exclude<T, false | undefined>;
    if (Date.now() > end) throw new Error(`Waited in vain for this: ${what}`);
    await pause(200);
  }
}
