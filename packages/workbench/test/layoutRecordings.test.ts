import type { Recording } from "@secondline/engine";
import type { WhatIfOutcome } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { createSandbox, type Sandbox } from "../src/inHand/sandbox.ts";
import type { Services } from "../src/inHand/state.ts";
import { createLayouts, writtenLayout } from "../src/layouts/layouts.ts";
import { demoDocument, read } from "./demoDocument.ts";

it("layouts hold one recording each; the open rig holds the one before too", async () => {
  // Only which recordings are held is looked at, nothing in them.
  const made: Recording[] = [];
  const runner: Services["runner"] = {
    async run() {
      made.push({} as Recording);
      return { ok: true, value: { outcome: {} as WhatIfOutcome, recording: made.at(-1)! } };
    },
    study: () => new Promise(() => undefined),
    cancel: async () => undefined,
  };
  let count = 0;
  const services = { runner, read, newId: () => `id ${++count}`, later: () => () => undefined };
  const document = demoDocument();
  const inHand = createSandbox(services, { document, goodDocument: document });
  const taken = ({ store }: Sandbox, runs: number) =>
    expect.poll(() => store.getState().run.recordingVersion).toBe(runs);

  inHand.actions.runNow();
  await taken(inHand, 1);
  inHand.actions.runNow();
  await taken(inHand, 2);
  expect(inHand.recordings.current).toBe(made[1]);
  expect(inHand.recordings.previous).toBe(made[0]);

  const { sandbox } = createLayouts(inHand, services).add(writtenLayout(inHand))!;
  await taken(sandbox, 1);
  sandbox.actions.runNow();
  await taken(sandbox, 2);
  expect(sandbox.recordings.current).toBe(made[3]);
  expect(sandbox.recordings.previous).toBeUndefined();
});
