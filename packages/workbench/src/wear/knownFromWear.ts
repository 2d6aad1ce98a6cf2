/** Tells a sandbox what its wear view has loaded: the record on the day that is shown there, and the break log. */
import { assess, speaksOf } from "@secondline/scenarios";
import type { LoadedEvidence } from "../inHand/known.ts";
import type { Sandbox } from "../inHand/sandbox.ts";
import type { WearStateSlice, WearStore } from "./wearStore.ts";

const told = new WeakSet<WearStore>();

/** At once, and after every change of record, day or log. Telling a second time does nothing. */
export function tellKnownOf(wear: WearStore, { actions }: Sandbox): void {
  if (told.has(wear)) return;
  told.add(wear);
  actions.know(knownIn(wear.store.getState()));
  wear.store.subscribe((now, before) => {
    const isSame = now.good.record === before.good.record && now.on === before.on && now.work.log === before.work.log;
    if (!isSame) actions.know(knownIn(now));
  });
}

function knownIn({ good, on, work, example }: WearStateSlice): LoadedEvidence {
  const { log } = work;
  return {
    record: good.record,
    on,
    tests: log.tests,
    invented: {
      record: good.written.invented === true,
      tests: log.invented || log.tests.some((test) => test.invented),
    },
    example: work === example,
    reader: { assess, speaksOf },
  };
}
