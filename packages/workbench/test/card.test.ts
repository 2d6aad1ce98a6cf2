/** The page's way to the heaviest walker: what is asked for is made, and a stop or a failure leaves the file's own. */
import { InProcessRunner, type StudyRequest } from "@secondline/runner";
import type { RunResult } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { type HeavierWork, lookForHeavier } from "../src/index.ts";
import { demoDocument, read } from "./demoDocument.ts";

const document = demoDocument();
const reading = read(document);
if (!reading.ok) throw new Error("the demo rig has faults");
const question = {
  document,
  assessment: { rig: reading.rig },
  options: { accuracy: "quick", size: "quick" },
} as const;

const failed: RunResult = { ok: false, trouble: { reason: "audit", detail: "12 J" } };
/** Of a sweep of which no run gives a number. */
const nothing = new InProcessRunner({ get: async (keys) => keys.map(() => failed), put: async () => undefined });
const runner = {
  sweep: nothing.sweep.bind(nothing),
  study: async (_: StudyRequest) => {
    throw new Error("no search is asked for where nothing was swept");
  },
} as unknown as HeavierWork["runner"];

it("stays with the walker of the file where no run of the sweep gives a number", async () => {
  const steps: number[] = [];
  const walker = await lookForHeavier(question, { id: "a", runner, onProgress: (_, step) => steps.push(step) });
  expect(walker).toEqual({
    ok: true,
    value: { walker: { mass: reading.rig.walker.mass, from: "asked", looked: true } },
  });
});

it("says nothing of heavier ones when it was stopped", async () => {
  const stopped = {
    ...runner,
    sweep: async () => ({ ok: false, reason: "cancelled", code: "cancelled", message: "stopped" }) as never,
  };
  const answer = await lookForHeavier(question, { id: "b", runner: stopped, onProgress: () => undefined });
  expect(answer).toMatchObject({ ok: false, reason: "cancelled" });
});
