/** The page's way to the heaviest walker: what is asked for is made, and a stop or a failure leaves the file's own. */
import { InProcessRunner, type StudyRequest } from "@secondline/runner";
import type { Assessed, RunResult, SearchResult } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";
import { cardNotice, cardState, type DatesOf, type HeavierWork, lookForHeavier } from "../src/index.ts";
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

describe("in place of a card", () => {
  const assessed = (wear: boolean) => ({ taken: wear ? { wear: {} } : {} }) as Assessed;
  const found = { outcome: { verdict: "holds" }, demands: [] } as unknown as SearchResult;
  const dates = { outlook: "an outlook" } as unknown as DatesOf["dates"];
  const done = (of: unknown) => ({ kind: "done", value: { of, dates } }) as const;
  const state = (...given: Parameters<typeof cardState>) => cardState(...given);

  it("stands that the whole search is needed, before anything is asked about days", () => {
    expect(state(assessed(true), undefined, done("now"), "now")).toEqual({ kind: "searching" });
    expect(cardNotice({ kind: "searching" }).way.view).toBe("rig");
  });

  it("stands that days are looked for, as long as those at hand are of another state", () => {
    expect(state(assessed(true), found, done("before"), "now")).toEqual({ kind: "dating" });
    expect(state(assessed(true), found, { kind: "idle" }, "now")).toEqual({ kind: "dating" });
    expect(cardNotice({ kind: "dating" }).role).toBe("status");
  });

  it("stands why there is none, with the way to the record", () => {
    const failed = state(assessed(true), found, { kind: "failed", message: "no such day" }, "now");
    expect(failed.kind === "failed" && cardNotice(failed)).toMatchObject({
      role: "alert",
      says: expect.stringContaining("no such day"),
      way: { view: "wear" },
    });
  });

  it("stands nothing once the verdict and its days are there; without a record there are no days to wait for", () => {
    const ready = state(assessed(true), found, done("now"), "now");
    expect(ready).toEqual({ kind: "ready", question: { assessed: assessed(true), outcome: found.outcome, ...dates } });
    expect(state(assessed(false), found, { kind: "idle" }, "now").kind).toBe("ready");
  });
});
