import type { Recording } from "@secondline/engine";
import { expect, it } from "vitest";
import { moveAnchorB, placeAnchorB } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { failed, fell, handSandbox, searched } from "./handRunner.ts";

const made = () => handSandbox(demoDocument());
const named = (recording: Recording | undefined) => (recording as unknown as { name: string } | undefined)?.name;

it("runs the chosen what-if, then looks for the verdict: quickly first, then over everything", async () => {
  const { sandbox, runner, state, settled } = made();
  sandbox.actions.runNow();
  expect(runner.runs[0]!.request.whatIf).toEqual(state().session.whatIf);
  expect(state().run.fall.kind).toBe("busy");
  runner.runs[0]!.answer(fell("first"));
  await settled();
  expect(named(sandbox.recordings.current)).toBe("first");
  expect(state().run.fall.kind).toBe("done");
  expect(runner.studies[0]!.request).toMatchObject({ size: "quick", accuracy: "quick" });
  runner.studies[0]!.answer(searched("open", 12));
  await settled();
  expect(runner.studies[1]!.request).toMatchObject({ size: "full", accuracy: "standard" });
  expect(state().run.study.kind).toBe("busy");
});

it("waits for the end of typing, then runs once with the last rig", () => {
  const { sandbox, runner, settle } = made();
  for (const text of ["8 kg", "85 kg"]) sandbox.actions.edit("walker.mass", text, "Mass", "type mass");
  expect(runner.runs).toHaveLength(0);
  settle();
  expect(runner.runs.map(({ request }) => request.assessed.rig.walker.mass)).toEqual([85]);
});

it("keeps the last good rig and its results while an entry is wrong, and says what is wrong", async () => {
  const { sandbox, runner, state, settle, settled } = made();
  sandbox.actions.runNow();
  runner.runs[0]!.answer(fell("good"));
  await settled();
  sandbox.actions.edit("span", "60 parsecs", "Span");
  settle();
  expect(state().document.issues.map(({ path }) => path)).toEqual(["span"]);
  expect(state().document.history.present.rig.span).toBe("60 parsecs");
  expect(state().document.rig.span).toBe(60);
  expect(named(sandbox.recordings.current)).toBe("good");
  expect(runner.runs).toHaveLength(1);
});

it("undoes an edit and runs the rig as it was", () => {
  const { sandbox, runner, state, settle } = made();
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  settle();
  sandbox.actions.undo();
  settle();
  expect(runner.runs.map(({ request }) => request.assessed.rig.walker.mass)).toEqual([
    95,
    state().document.rig.walker.mass,
  ]);
  expect(state().document.history.present.rig).toEqual(demoDocument());
  sandbox.actions.redo();
  expect(state().document.rig.walker.mass).toBe(95);
});

it("stops on request, keeps what was there, and drops the answer that comes late", async () => {
  const { sandbox, runner, state, settled } = made();
  sandbox.actions.runNow();
  sandbox.actions.stop();
  expect(runner.cancelled).toEqual(["1"]);
  runner.runs[0]!.answer(fell("late"));
  await settled();
  expect(sandbox.recordings.current).toBeUndefined();
  expect(state().run.fall.kind).toBe("stopped");
});

it("shows the progress of the current run only", () => {
  const { sandbox, runner, state } = made();
  sandbox.actions.runNow();
  sandbox.actions.runNow();
  runner.runs[0]!.progress({ done: 0.9 });
  runner.runs[1]!.progress({ done: 0.2 });
  expect(state().run.fall).toMatchObject({ progress: { done: 0.2 } });
});

it("tells of a run that failed and lets the next one begin", async () => {
  const { sandbox, runner, state, settled } = made();
  sandbox.actions.runNow();
  runner.runs[0]!.answer(failed("The computation stopped unexpectedly."));
  await settled();
  expect(state().run.fall).toEqual({ kind: "failed", message: "The computation stopped unexpectedly." });
  sandbox.actions.runNow();
  expect(state().run.fall.kind).toBe("busy");
});

it("keeps the run before for comparison", async () => {
  const { sandbox, runner, state, settled } = made();
  for (const [index, name] of ["one", "two"].entries()) {
    sandbox.actions.runNow();
    runner.runs[index]!.answer(fell(name));
    await settled();
  }
  expect(named(sandbox.recordings.previous)).toBe("one");
  expect(state().run.previous).toBeDefined();
});

it("does not search again, nor stop searching, when only the what-if changed", async () => {
  const { sandbox, runner, state, settle, settled } = made();
  sandbox.actions.runNow();
  runner.runs[0]!.answer(fell("one"));
  await settled();
  sandbox.actions.chooseWhatIf({ kind: "leashFall", at: 0.25 });
  settle();
  runner.runs[1]!.answer(fell("two"));
  await settled();
  expect(runner.cancelled).toEqual([]);
  expect(state().run.study.kind).toBe("busy");
  expect(runner.studies).toHaveLength(1);
});

it("brings the old rig back when opening another is undone", () => {
  const { sandbox, state } = made();
  sandbox.actions.replaceRig({ ...demoDocument(), name: "Another" }, "opened Another");
  expect(state().document.rig.name).toBe("Another");
  sandbox.actions.undo();
  expect(state().document.rig.name).toBe(demoDocument().name);
});

it("stretches the ground with the span, without rounding piling up while it is slid", () => {
  const { sandbox, state } = made();
  const before = demoDocument().ground as [string, string][];
  for (const text of ["7 m", "77 m", "120 m"])
    sandbox.actions.change((before) => moveAnchorB(before, "span", text), "Span", "slide span");
  const ground = state().document.history.present.rig.ground as [string, string][];
  expect(state().document.issues).toEqual([]);
  expect(ground.map(([x]) => Number.parseFloat(x))).toEqual(before.map(([x]) => 2 * Number.parseFloat(x)));
  expect(ground.map(([, z]) => z)).toEqual(before.map(([, z]) => z));
  sandbox.actions.undo();
  expect(state().document.history.present.rig).toEqual(demoDocument());
});

it("takes span and rise over in one step, with the ground moved along", () => {
  const { sandbox, state } = made();
  sandbox.actions.change((before) => placeAnchorB(before, { span: "120 m", rise: "-2 m" }), "Measured");
  expect(state().document.issues).toEqual([]);
  expect(state().document.rig).toMatchObject({ span: 120, rise: -2 });
  sandbox.actions.undo();
  expect(state().document.history.present.rig).toEqual(demoDocument());
});

it("tilts the ground with the rise", () => {
  const { sandbox, state } = made();
  sandbox.actions.change((before) => moveAnchorB(before, "rise", "-2 m"), "Rise", "type rise");
  expect(state().document.issues).toEqual([]);
  expect(state().document.rig.rise).toBe(-2);
});
