import type { Outcome, WhatIf } from "@secondline/scenarios";
import { expect, it } from "vitest";
import { openOnWorst } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { fell, handSandbox } from "./handRunner.ts";

const FALL: WhatIf = { kind: "leashFall", at: 0.5 };
const CUT: WhatIf = { kind: "mainFails", at: 0.25, cutAt: 0, walker: "hanging" };

/** A thin verdict that turns on a what-if. */
const thinIn = (whatIf: WhatIf, key: string, complete: boolean) => ({
  ok: true as const,
  value: {
    demands: [],
    outcome: {
      verdict: "thin",
      search: { events: 44, of: 44, runs: 250, complete },
      reasons: [{ kind: "partThin", part: "leash" }],
      whatIfs: [{ whatIf, key }],
      parts: [{ id: "leash", governing: "expected", byClass: { expected: { whatIf: 0 } } }],
    } as unknown as Outcome,
  },
});

/** A page whose first fall is there, and that looks for its verdict. */
async function opened() {
  const made = handSandbox(demoDocument());
  let touched = false;
  openOnWorst(made.sandbox, () => touched);
  made.sandbox.actions.runNow();
  made.runner.runs[0]!.answer(fell("first"));
  await made.settled();
  const look = async (index: number, whatIf: WhatIf, key: string) => {
    made.runner.studies[index]!.answer(thinIn(whatIf, key, index > 0));
    await made.settled();
  };
  return {
    ...made,
    look,
    touch: () => {
      touched = true;
    },
  };
}

it("shows the what-if that the verdict turns on once the first look has told one, and another when all has been looked at", async () => {
  const { state, look, settle, runner } = await opened();
  await look(0, FALL, "fall@0.5");
  expect(state().session.whatIf).toEqual(FALL);
  settle();
  expect(runner.runs.map(({ request }) => request.whatIf).at(-1)).toEqual(FALL);
  await look(1, CUT, "cut@0.25");
  expect(state().session.whatIf).toEqual(CUT);
});

it("runs nothing again where the worst is in sight already", async () => {
  const { state, look, settle, runner } = await opened();
  await look(0, FALL, "fall@0.5");
  settle();
  const runs = runner.runs.length;
  const before = state().session.whatIf;
  await look(1, { ...FALL }, "fall@0.5");
  settle();
  expect(runner.runs).toHaveLength(runs);
  expect(state().session.whatIf).toBe(before);
});

it("leaves a what-if alone that somebody chose", async () => {
  const { sandbox, state, look } = await opened();
  sandbox.actions.chooseWhatIf(CUT);
  await look(0, FALL, "fall@0.5");
  await look(1, FALL, "fall@0.5");
  expect(state().session.whatIf).toEqual(CUT);
});

it("changes nothing under a hand: whoever has touched the page keeps what is in sight", async () => {
  const { state, look, touch } = await opened();
  const first = state().session.whatIf;
  touch();
  await look(0, FALL, "fall@0.5");
  expect(state().session.whatIf).toBe(first);
});

it("follows no verdict of a rig that was changed since", async () => {
  const { sandbox, state, look, settle, runner, settled } = await opened();
  const first = state().session.whatIf;
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  settle();
  runner.runs[1]!.answer(fell("changed"));
  await settled();
  await look(1, FALL, "fall@0.5");
  expect(state().session.whatIf).toBe(first);
});
