import type { Found, HeaviestWalker } from "@secondline/scenarios";
import { useEffect, useRef, useState } from "react";
import { useContextOrThrow, useSandbox } from "../state/useSandbox.ts";
import { foundOf } from "../state/verdictOf.ts";
import { pageRunner } from "../worker/runner.ts";
import { lookForHeavier } from "./heavier.ts";

export interface Heavier {
  /** What came of it for the verdict in hand; absent: not looked for. */
  readonly walker: HeaviestWalker | undefined;
  readonly busy: { readonly done: number; readonly step: number } | undefined;
  readonly failed: boolean;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Heavier walkers are looked for when somebody asks; what was found belongs to the verdict that it was asked of. */
export function useHeavier(): Heavier {
  const { store } = useContextOrThrow();
  const found = useSandbox(foundOf);
  const [made, setMade] = useState<{ readonly of: Found; readonly walker: HeaviestWalker }>();
  const [busy, setBusy] = useState<Heavier["busy"]>();
  const [failed, setFailed] = useState(false);
  const current = useRef<string>(undefined);
  const stop = () => {
    if (current.current !== undefined) void pageRunner().cancel(current.current);
    current.current = undefined;
    setBusy(undefined);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: another verdict, or none, ends what was asked of this one
  useEffect(() => {
    setFailed(false);
    return stop;
  }, [found]);
  async function start(): Promise<void> {
    const { document, assessment } = store.getState();
    const { known, assessed } = assessment;
    if (!found || !known.record) return;
    const id = `card ${crypto.randomUUID()}`;
    current.current = id;
    setFailed(false);
    setBusy({ done: 0, step: 1 });
    const walker = await lookForHeavier(
      {
        document: document.goodDocument,
        assessment: { rig: document.rig, wear: known.record, on: known.on, tests: assessed.tests },
        options: { accuracy: "standard", size: "full" },
      },
      { id, runner: pageRunner(), onProgress: (done, step) => current.current === id && setBusy({ done, step }) },
    );
    if (current.current !== id) return;
    current.current = undefined;
    setBusy(undefined);
    if (walker) setMade({ of: found, walker });
    else setFailed(true);
  }
  return {
    walker: made && made.of === found ? made.walker : undefined,
    busy,
    failed,
    start: () => void start(),
    stop,
  };
}
