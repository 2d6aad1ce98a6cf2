/** Tells a sandbox what its wear view has loaded: the record on the day that is shown there, and the break log. */
import type { Known } from "./state/known.ts";
import type { Sandbox } from "./state/sandbox.ts";
import type { WearStateSlice, WearStore } from "./wear/wearStore.ts";

/** At once, and after every change of record, day or log. */
export function tellKnown({ actions }: Sandbox, { store }: WearStore): void {
  actions.know(knownIn(store.getState()));
  store.subscribe((now, before) => {
    const isSame =
      now.good === before.good && now.on === before.on && now.history.present.log === before.history.present.log;
    if (!isSame) actions.know(knownIn(now));
  });
}

function knownIn({ good, on, history }: WearStateSlice): Known {
  const { tests, invented } = history.present.log;
  return {
    record: good.record,
    on,
    tests,
    invented: { record: good.written.invented === true, tests: invented || tests.some((test) => test.invented) },
  };
}
