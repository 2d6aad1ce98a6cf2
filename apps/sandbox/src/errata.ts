/** Tells the known errors of the running version. The list is served beside the page and may be newer than the version. */

import { type Erratum, errataOf, KNOWN_ERRATA, readErrata, VERSION } from "@secondline/scenarios";
import { dayText } from "@secondline/words/dates";
import type { Actions } from "@secondline/workbench";
import { sayLater } from "./wordsLater.ts";

/** Tells every known error as a fault. Without a served list, the list that came with the version counts. */
export async function tellErrata({ tell }: Pick<Actions, "tell">, version: string = VERSION): Promise<void> {
  for (const { date, what, remedy } of errataOf(version, await served()))
    tell({ tone: "fault", text: sayLater("errata.known", { date: dayText(date), what, remedy }) });
}

const LIST = "./errata.json";

/** The list as it is served now; without a network, as it was served last. */
async function served(): Promise<readonly Erratum[]> {
  // Pages that came over an open network have no shelf.
  const shelf = await globalThis.caches?.open("errata").catch(() => undefined);
  const answer = navigator.onLine
    ? await fetch(LIST, { cache: "no-cache" }).catch(() => shelf?.match(LIST))
    : await shelf?.match(LIST);
  const copy = answer?.clone();
  const errata = readErrata(await answer?.json().catch(() => undefined));
  if (errata === undefined || copy === undefined) return KNOWN_ERRATA;
  await shelf?.put(LIST, copy).catch(() => undefined);
  return errata;
}
