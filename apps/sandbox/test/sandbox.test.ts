import type { Recording } from "@secondline/engine";
import type { Answer, Progress, RunnerService, RunRequest, StudyRequest } from "@secondline/runner";
import type { Outcome, WhatIfRun } from "@secondline/scenarios";
import { beforeEach, expect, it } from "vitest";
import { createSandbox, type Sandbox } from "../src/state/sandbox.ts";
import { demoDocument, read } from "./demoDocument.ts";

interface Call<R, T> {
  readonly request: R;
  readonly progress: (progress: Progress) => void;
  readonly answer: (answer: Answer<T>) => void;
}

/** A runner whose answers the test gives by hand. */
class HandRunner implements RunnerService {
  readonly runs: Call<RunRequest, WhatIfRun>[] = [];
  readonly studies: Call<StudyRequest, Outcome>[] = [];
  readonly cancelled: string[] = [];
  run(request: RunRequest, progress: (progress: Progress) => void = () => undefined) {
    return new Promise<Answer<WhatIfRun>>((answer) => this.runs.push({ request, progress, answer }));
  }
  study(request: StudyRequest, progress: (progress: Progress) => void = () => undefined) {
    return new Promise<Answer<Outcome>>((answer) => this.studies.push({ request, progress, answer }));
  }
  async cancel(id: string) {
    this.cancelled.push(id);
  }
}

const recording = (name: string) => ({ problem: { name } }) as unknown as Recording;
const fell = (name: string): Answer<WhatIfRun> => ({
  ok: true,
  value: {
    outcome: { whatIf: { kind: "leashFall", at: 0.5 }, title: name, ok: true, broke: [], caught: true },
    recording: recording(name),
  },
});
const studied = (sentence: string) => ({ ok: true, value: { sentence } as Outcome }) as const;
const settled = () => new Promise((resolve) => setTimeout(resolve));

let runner: HandRunner;
let sandbox: Sandbox;
let settle: () => void;
const state = () => sandbox.store.getState();

beforeEach(() => {
  runner = new HandRunner();
  let count = 0;
  let waiting: (() => void) | undefined;
  settle = () => {
    const action = waiting;
    waiting = undefined;
    action?.();
  };
  const document = demoDocument();
  sandbox = createSandbox(
    {
      runner,
      read,
      newId: () => `${++count}`,
      later: (_pause, action) => {
        waiting = action;
        return () => {
          waiting = undefined;
        };
      },
    },
    { document, goodDocument: document },
  );
});

it("runs the chosen what-if, then studies the rig", async () => {
  sandbox.actions.runNow();
  expect(runner.runs[0]!.request.whatIf).toEqual(state().session.whatIf);
  expect(state().run.fall.kind).toBe("busy");
  runner.runs[0]!.answer(fell("first"));
  await settled();
  expect(sandbox.recordings.current!.problem.name).toBe("first");
  expect(state().run.fall.kind).toBe("idle");
  runner.studies[0]!.answer(studied("It holds."));
  await settled();
  expect(state().run.verdict).toMatchObject({ outcome: { sentence: "It holds." }, rigVersion: 1, size: "quick" });
});

it("waits for the end of typing, then runs once with the last rig", () => {
  for (const text of ["8 kg", "85 kg"]) sandbox.actions.edit("walker.mass", text, "Mass", "type mass");
  expect(runner.runs).toHaveLength(0);
  settle();
  expect(runner.runs.map(({ request }) => request.rig.walker.mass)).toEqual([85]);
});

it("keeps the last good rig and its results while an entry is wrong, and says what is wrong", async () => {
  sandbox.actions.runNow();
  runner.runs[0]!.answer(fell("good"));
  await settled();
  sandbox.actions.edit("span", "60 parsecs", "Span");
  settle();
  expect(state().document.issues.map(({ path }) => path)).toEqual(["span"]);
  expect(state().document.history.present.span).toBe("60 parsecs");
  expect(state().document.rig.span).toBe(60);
  expect(sandbox.recordings.current!.problem.name).toBe("good");
  expect(runner.runs).toHaveLength(1);
});

it("undoes an edit and runs the rig as it was", () => {
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  settle();
  sandbox.actions.undo();
  settle();
  expect(runner.runs.map(({ request }) => request.rig.walker.mass)).toEqual([95, state().document.rig.walker.mass]);
  expect(state().document.history.present).toEqual(demoDocument());
  sandbox.actions.redo();
  expect(state().document.rig.walker.mass).toBe(95);
});

it("stops on request, keeps what was there, and drops the answer that comes late", async () => {
  sandbox.actions.runNow();
  sandbox.actions.stop();
  expect(runner.cancelled).toEqual(["1"]);
  runner.runs[0]!.answer(fell("late"));
  await settled();
  expect(sandbox.recordings.current).toBeUndefined();
  expect(state().run.fall.kind).toBe("stopped");
});

it("shows the progress of the run in hand only", () => {
  sandbox.actions.runNow();
  sandbox.actions.runNow();
  runner.runs[0]!.progress({ done: 0.9, doing: "the first" });
  runner.runs[1]!.progress({ done: 0.2, doing: "the second" });
  expect(state().run.fall).toMatchObject({ progress: { done: 0.2, doing: "the second" } });
});

it("tells of a run that failed and lets the next one begin", async () => {
  sandbox.actions.runNow();
  runner.runs[0]!.answer({ ok: false, reason: "failed", message: "The computation stopped unexpectedly." });
  await settled();
  expect(state().run.fall).toEqual({ kind: "failed", message: "The computation stopped unexpectedly." });
  sandbox.actions.runNow();
  expect(state().run.fall.kind).toBe("busy");
});

it("keeps the run before for comparison", async () => {
  for (const [index, name] of ["one", "two"].entries()) {
    sandbox.actions.runNow();
    runner.runs[index]!.answer(fell(name));
    await settled();
  }
  expect(sandbox.recordings.previous!.problem.name).toBe("one");
  expect(state().run.previous!.outcome.title).toBe("one");
});

it("does not study again when only the what-if changed", async () => {
  sandbox.actions.runNow();
  runner.runs[0]!.answer(fell("one"));
  await settled();
  runner.studies[0]!.answer(studied("It holds."));
  await settled();
  sandbox.actions.chooseWhatIf({ kind: "leashFall", at: 0.25 });
  settle();
  runner.runs[1]!.answer(fell("two"));
  await settled();
  expect(runner.studies).toHaveLength(1);
});

it("brings the old rig back when opening another is undone", () => {
  sandbox.actions.replaceRig({ ...demoDocument(), name: "Another" }, "opened Another");
  expect(state().document.rig.name).toBe("Another");
  sandbox.actions.undo();
  expect(state().document.rig.name).toBe(demoDocument().name);
});

it("stretches the ground with the span, without rounding piling up while it is slid", () => {
  const before = demoDocument().ground as [string, string][];
  for (const text of ["7 m", "77 m", "120 m"]) sandbox.actions.moveAnchorB("span", text, "Span", "slide span");
  const ground = state().document.history.present.ground as [string, string][];
  expect(state().document.issues).toEqual([]);
  expect(ground.map(([x]) => Number.parseFloat(x))).toEqual(before.map(([x]) => 2 * Number.parseFloat(x)));
  expect(ground.map(([, z]) => z)).toEqual(before.map(([, z]) => z));
  sandbox.actions.undo();
  expect(state().document.history.present).toEqual(demoDocument());
});

it("tilts the ground with the rise", () => {
  sandbox.actions.moveAnchorB("rise", "-2 m", "Rise", "type rise");
  expect(state().document.issues).toEqual([]);
  expect(state().document.rig.rise).toBe(-2);
});
