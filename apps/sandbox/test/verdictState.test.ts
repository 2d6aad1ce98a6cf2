/** The page never shows a verdict that is not of this very state, and never says "holds" before the end. */

import { readRig } from "@secondline/rig";
import { assess, speaksOf } from "@secondline/scenarios";
import { readBreakLog, readWearRecord } from "@secondline/strength";
import { englishWords as words } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { foundOf, type LoadedEvidence, outcomeOf } from "@secondline/workbench";
import { describe, expect, it } from "vitest";
import breakLog from "../../../demo-data/break-log.csv?raw";
import oldRig from "../../../demo-data/old-rig.json";
import oldRigWear from "../../../demo-data/old-rig-wear.json";
import soundRig from "../../../demo-data/sound-rig.json";
import { failed, fell, handSandbox, outcome, searched } from "../../../packages/workbench/test/handRunner.ts";
import { hasExampleWear } from "../src/demo/firstRig.ts";

type Made = ReturnType<typeof handSandbox>;

/** Answers the fall, the quick look and the whole search of what runs now. */
async function toTheEnd({ runner, settled }: Made, verdict: "holds" | "thin" | "fails" = "holds"): Promise<void> {
  runner.runs.at(-1)!.answer(fell("fall"));
  await settled();
  runner.studies.at(-1)!.answer(searched("open", 12));
  await settled();
  runner.studies.at(-1)!.answer(searched(verdict));
  await settled();
}

async function studied(verdict: "holds" | "thin" | "fails" = "holds"): Promise<Made> {
  const made = handSandbox(soundRig);
  made.sandbox.actions.runNow();
  await toTheEnd(made, verdict);
  return made;
}

describe("a longer look", () => {
  async function looking() {
    const made = await studied("thin");
    void made.sandbox.actions.lookLonger();
    await made.settled();
    return { ...made, study: made.runner.studies.at(-1)! };
  }

  it("asks for twice the runs that the verdict rests on, and leaves the verdict standing meanwhile", async () => {
    const { state, study } = await looking();
    expect(study.request).toMatchObject({ size: "full", accuracy: "standard", runs: 500 });
    expect(state().run.study.kind).toBe("busy");
    study.progress({ done: 0.5, made: 320, soFar: outcome("open") });
    study.progress({ done: 0.6, made: 330, soFar: outcome("thin") });
    expect(foundOf(state())?.outcome.verdict).toBe("thin");
  });

  it("says at once what is worse than the verdict, and that the rig holds at the end alone", async () => {
    const { state, study, settled } = await looking();
    study.progress({ done: 0.5, made: 320, soFar: outcome("holds") });
    expect(outcomeOf(state())?.verdict).toBe("thin");
    study.progress({ done: 0.6, made: 330, soFar: outcome("fails") });
    expect(outcomeOf(state())?.verdict).toBe("fails");
    expect(foundOf(state())).toBeUndefined();
    study.answer(searched("holds"));
    await settled();
    expect(foundOf(state())?.outcome.verdict).toBe("holds");
  });

  it("ends with the verdict that was there when it is stopped, and goes on as long when asked again", async () => {
    const { sandbox, runner, state, study, settled } = await looking();
    sandbox.actions.stop();
    expect(runner.cancelled).toContain(study.request.id);
    expect(state().run.study.kind).toBe("idle");
    expect(foundOf(state())?.outcome.verdict).toBe("thin");
    void sandbox.actions.lookLonger();
    await settled();
    expect(runner.studies.at(-1)!.request).toMatchObject({ runs: 500 });
  });

  it("may be stopped after it found worse: that stays, and the search can be taken up again", async () => {
    const { sandbox, runner, state, study, settled } = await looking();
    study.progress({ done: 0.6, made: 330, soFar: outcome("fails") });
    sandbox.actions.stop();
    expect(state().run.study.kind).toBe("stopped");
    expect(outcomeOf(state())?.verdict).toBe("fails");
    void sandbox.actions.lookOn();
    await settled();
    expect(runner.studies.at(-1)!.request).toMatchObject({ size: "full", runs: 500 });
  });

  it("is of one state: another one is searched as ever", async () => {
    const { sandbox, runner, settle, settled } = await looking();
    sandbox.actions.edit("walker.mass", "95 kg", "Mass");
    settle();
    await settled();
    runner.runs.at(-1)!.answer(fell("fall"));
    await settled();
    runner.studies.at(-1)!.answer(searched("open", 12));
    await settled();
    expect(runner.studies.at(-1)!.request.runs).toBeUndefined();
  });
});

describe("the verdict", () => {
  it("is whole after the whole search", async () => {
    const { state } = await studied();
    expect(foundOf(state())?.outcome.verdict).toBe("holds");
    expect(state().run.study.kind).toBe("done");
  });

  it("is gone in the very step in which another rig is opened, with the fall of the rig before", async () => {
    const { sandbox, state } = await studied("fails");
    const seen: unknown[] = [];
    sandbox.store.subscribe((now) => {
      if (now.document.rig.name === oldRig.name) seen.push(outcomeOf(now));
    });
    sandbox.actions.replaceRig(oldRig, "opened");
    expect(seen.every((one) => one === undefined)).toBe(true);
    expect(state().run.shown).toBeUndefined();
    expect(sandbox.recordings.current).toBeUndefined();
  });

  it("is withdrawn on an edit, and what the search of the rig before still says is dropped", async () => {
    const made = handSandbox(soundRig);
    const { sandbox, runner, state, settled } = made;
    sandbox.actions.runNow();
    runner.runs[0]!.answer(fell("fall"));
    await settled();
    runner.studies[0]!.progress({ done: 0.3, soFar: outcome("fails", 8) });
    expect(outcomeOf(state())?.verdict).toBe("fails");
    sandbox.actions.edit("walker.mass", "95 kg", "Mass");
    expect(outcomeOf(state())).toBeUndefined();
    runner.studies[0]!.progress({ done: 0.9, soFar: outcome("fails", 40) });
    runner.studies[0]!.answer(searched("holds"));
    await settled();
    expect(outcomeOf(state())).toBeUndefined();
  });

  it("is not shown while an entry is wrong, and is back when it is put right", async () => {
    const { sandbox, state, runner } = await studied();
    sandbox.actions.edit("walker.mass", "many", "Mass");
    expect(outcomeOf(state())).toBeUndefined();
    sandbox.actions.undo();
    expect(foundOf(state())?.outcome.verdict).toBe("holds");
    expect(runner.studies).toHaveLength(2);
  });

  it("stays when only the spelling of a number changes", async () => {
    const { sandbox, state } = await studied();
    sandbox.actions.edit("walker.mass", "0.08 t", "Mass");
    expect(state().document.issues).toEqual([]);
    expect(foundOf(state())).toBeDefined();
  });

  it("of a state that comes back is there at once, without another search", async () => {
    const made = await studied("thin");
    const { sandbox, runner, state, settle, settled } = made;
    const first = foundOf(state());
    sandbox.actions.edit("walker.mass", "95 kg", "Mass");
    settle();
    await toTheEnd(made);
    expect(foundOf(state())?.outcome.verdict).toBe("holds");
    sandbox.actions.undo();
    expect(foundOf(state())).toBe(first);
    settle();
    runner.runs.at(-1)!.answer(fell("again"));
    await settled();
    expect(runner.studies).toHaveLength(4);
    expect(foundOf(state())).toBe(first);
  });
});

describe("what is found so far", () => {
  async function looking(): Promise<Made> {
    const made = handSandbox(soundRig);
    made.sandbox.actions.runNow();
    made.runner.runs[0]!.answer(fell("fall"));
    await made.settled();
    return made;
  }

  it("never says that the rig holds, whatever a search in progress claims", async () => {
    const { runner, state, settled } = await looking();
    runner.studies[0]!.progress({ done: 0.5, soFar: outcome("holds", 12) });
    expect(outcomeOf(state())).toBeUndefined();
    runner.studies[0]!.answer(searched("holds", 12));
    await settled();
    expect(outcomeOf(state())?.verdict).not.toBe("holds");
    expect(foundOf(state())).toBeUndefined();
  });

  it("keeps what the quick look has found while the whole search has seen nothing", async () => {
    const { runner, state, settled } = await looking();
    runner.studies[0]!.answer(searched("fails", 12));
    await settled();
    runner.studies[1]!.progress({ done: 0.2, soFar: outcome("open", 6) });
    expect(outcomeOf(state())?.verdict).toBe("fails");
    expect(foundOf(state())).toBeUndefined();
  });

  it("counts on from the quick look, never back", async () => {
    const { runner, state, settled } = await looking();
    runner.studies[0]!.answer(searched("open", 12));
    await settled();
    runner.studies[1]!.progress({ done: 0.1, soFar: outcome("open", 6) });
    expect(outcomeOf(state())?.search.events).toBe(12);
    runner.studies[1]!.progress({ done: 0.4, soFar: outcome("open", 24) });
    expect(outcomeOf(state())?.search.events).toBe(24);
  });

  it("stays after a stop, and the search goes on when asked to", async () => {
    const { sandbox, runner, state, settled } = await looking();
    runner.studies[0]!.progress({ done: 0.3, soFar: outcome("open", 12) });
    sandbox.actions.stop();
    expect(state().run.study.kind).toBe("stopped");
    expect(outcomeOf(state())?.search.events).toBe(12);
    const over = sandbox.actions.lookOn();
    expect(runner.studies[1]!.request).toMatchObject({ size: "full" });
    runner.studies[1]!.answer(searched("holds"));
    await over;
    await settled();
    expect(foundOf(state())?.outcome.verdict).toBe("holds");
  });

  it("is told to have failed when the search does, and can be tried again", async () => {
    const { sandbox, runner, state, settled } = await looking();
    runner.studies[0]!.answer(failed("no equilibrium"));
    await settled();
    expect(state().run.study).toEqual({ kind: "failed", message: "no equilibrium" });
    void sandbox.actions.lookOn();
    expect(state().run.study.kind).toBe("busy");
  });
});

describe("what is known besides the rig", () => {
  const recordRead = readWearRecord(oldRigWear);
  const logRead = readBreakLog(breakLog);
  if (!recordRead.ok || !logRead.ok) throw new Error("The demo data cannot be read.");
  const known: LoadedEvidence = {
    record: recordRead.record,
    on: "2026-07-01",
    tests: logRead.tests,
    invented: { record: true, tests: true },
    reader: { assess, speaksOf },
  };
  const told = ({ state }: Made) => words.taken(state().assessment.assessed.rig, state().assessment.assessed);

  it("is used by default where it speaks of the rig, and the verdict says so with the date", () => {
    const made = handSandbox(oldRig, { known });
    const { taken, rig } = made.state().assessment.assessed;
    expect(taken).toMatchObject({ on: "2026-07-01", wear: { name: oldRigWear.name } });
    expect(taken.tests!.count).toBeGreaterThan(0);
    expect(rig).not.toEqual(made.state().document.rig);
    expect(told(made)).toContain("1 Jul 2026");
  });

  it("goes into runs and searches alike", async () => {
    const made = handSandbox(oldRig, { known });
    const { runner, sandbox, state, settled } = made;
    sandbox.actions.runNow();
    runner.runs[0]!.answer(fell("fall"));
    await settled();
    const { assessed } = state().assessment;
    expect(runner.runs[0]!.request.assessed).toBe(assessed);
    expect(runner.studies[0]!.request.assessed).toBe(assessed);
    expect(state().run.shown!.assessed).toBe(assessed);
  });

  it("is left out in one step and taken in again in one step, with the verdict of each", async () => {
    const made = handSandbox(oldRig, { known });
    const { sandbox, state } = made;
    sandbox.actions.runNow();
    await toTheEnd(made, "fails");
    sandbox.actions.leaveOut(true);
    expect(outcomeOf(state())).toBeUndefined();
    expect(state().assessment.assessed.rig).toEqual(state().document.rig);
    expect(told(made)).toBe("The rig's own file alone: no wear record, no break tests.");
    expect(state().assessment.choice).toBe(true);
    sandbox.actions.leaveOut(false);
    expect(foundOf(state())?.outcome.verdict).toBe("fails");
  });

  it("withdraws the verdict when record, day or tests change", async () => {
    const made = handSandbox(oldRig, { known });
    const { sandbox, state } = made;
    sandbox.actions.runNow();
    await toTheEnd(made);
    sandbox.actions.know({ ...known, on: "2026-09-01" });
    expect(outcomeOf(state())).toBeUndefined();
    sandbox.actions.know(known);
    expect(foundOf(state())).toBeDefined();
    sandbox.actions.know({ ...known, tests: known.tests.slice(1) });
    expect(outcomeOf(state())).toBeUndefined();
  });

  it("is not used for another rig, and there is nothing to leave out then", () => {
    const { state } = handSandbox(
      { ...oldRig, id: "another-line", name: "Another line" },
      { known: { ...known, tests: [] } },
    );
    expect(state().assessment).toMatchObject({ choice: false, issues: [] });
    expect(state().assessment.assessed.taken).toEqual({ judged: [] });
  });

  it("counts as an example for the rig that it speaks of, and for no other", () => {
    const example = { ...known, example: true };
    const taken = (rig: object) => handSandbox({ ...rig }, { known: example }).state().assessment.assessed.taken;
    expect(taken(oldRig)).toMatchObject({ wear: { name: oldRigWear.name }, tests: { given: known.tests.length } });
    expect(taken(soundRig)).toEqual({ judged: [] });
    for (const rig of [oldRig, soundRig]) {
      const read = readRig(rig);
      expect(read.ok && hasExampleWear(read.rig)).toBe(rig === oldRig);
      expect(read.ok && speaksOf(recordRead.record, read.rig, known.on)).toBe(rig === oldRig);
    }
  });

  it("is never used for a rig that stands somewhere, when it is made up", () => {
    const { invented: _, ...real } = oldRig as typeof oldRig & { invented?: boolean };
    const read = readRig(real);
    expect(read.ok && read.rig.invented).toBe(false);
    const { state } = handSandbox(real, { known });
    expect(state().assessment.assessed.taken).toEqual({ judged: [] });
  });

  it("gives no verdict of a day before the record begins, and says where and what to do", async () => {
    const made = handSandbox(oldRig, { known: { ...known, on: "2001-01-01" } });
    const { sandbox, runner, state, settled } = made;
    expect(tellFault(state().assessment.issues[0]!.message)).toContain("before the wear record begins");
    sandbox.actions.runNow();
    runner.runs[0]!.answer(fell("fall"));
    await settled();
    expect(runner.studies).toHaveLength(0);
    expect(outcomeOf(state())).toBeUndefined();
    sandbox.actions.leaveOut(true);
    expect(state().assessment.issues).toEqual([]);
  });
});
