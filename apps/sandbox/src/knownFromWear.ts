/** Tells a sandbox what its wear view has loaded: the record on the day that is shown there, and the break log. */
import { assess, speaksOf } from "@secondline/scenarios";
import type { Known } from "./state/known.ts";
import type { Sandbox } from "./state/sandbox.ts";
import { type WearStateSlice, type WearStore, wearStoreOf } from "./wear/wearStore.ts";

const told = new WeakSet<WearStore>();

/** At once, and after every change of record, day or log. Telling a second time does nothing. */
export function tellKnown(sandbox: Sandbox): WearStore {
  const wear = wearStoreOf(sandbox);
  if (told.has(wear)) return wear;
  told.add(wear);
  const { store } = wear;
  sandbox.actions.know(knownIn(store.getState()));
  store.subscribe((now, before) => {
    const isSame = now.good.record === before.good.record && now.on === before.on && now.work.log === before.work.log;
    if (!isSame) sandbox.actions.know(knownIn(now));
  });
  return wear;
}

function knownIn({ good, on, work, example }: WearStateSlice): Known {
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
