/** Tells the known errors of this version before anything is computed. */

import { type Erratum, errataOf, KNOWN_ERRATA, VERSION } from "@secondline/scenarios";
import { dayText } from "@secondline/words/dates";
import { say } from "./say.ts";
import { message, width } from "./terminal.ts";
import { wrap } from "./wrap.ts";

export const errataLines = (version: string, errata: readonly Erratum[]): readonly string[] =>
  errataOf(version, errata).map(({ date, what, remedy }) =>
    wrap(say("errata.known", { date: dayText(date), what, remedy }), width),
  );

export function tellErrata(): void {
  for (const line of errataLines(VERSION, KNOWN_ERRATA)) message(line);
}
