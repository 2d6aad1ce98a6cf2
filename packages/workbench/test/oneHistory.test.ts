/** Undo walks back over rig, wear record and break log in the order in which they were changed. */
import { readTest, testFields } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { addEntry, type WrittenRig } from "../src/index.ts";
import { demoDocument } from "./demoDocument.ts";
import { exampleRecord, withWear } from "./exampleWear.ts";
import { handSandbox } from "./handRunner.ts";

const oldRig = demoDocument("old-rig.json");

/** Of the rig that the example record speaks of, or of another one. */
function page(document: WrittenRig = oldRig) {
  const { sandbox, state } = handSandbox(document);
  const wear = withWear(sandbox);
  const log = () => wear.store.getState().work.log.tests;
  const storm = () =>
    wear.actions.edit(
      addEntry(
        wear.store.getState().work.record,
        { list: "webbings", index: 0 },
        { date: "2026-11-20", event: "storm" },
      ).record,
      "a storm added",
    );
  const test = () => {
    const read = readTest(testFields(log()[0]!), 0);
    if (!read.ok) throw new Error(JSON.stringify(read.faults[0]));
    wear.actions.addTest(read.value);
  };
  const mass = (text: string) => sandbox.actions.edit("walker.mass", text, "Mass");
  return { sandbox, state, wear, log, storm, test, mass };
}

describe("one history", () => {
  it("takes edits of rig, record and log back in their order, whatever is in view", () => {
    const { sandbox, state, wear, log, storm, test, mass } = page();
    const count = log().length;
    const { undo, redo } = sandbox.actions;
    mass("95 kg");
    storm();
    test();
    mass("85 kg");
    expect(state().document.history.past.map(({ label }) => label)).toEqual([
      "Mass",
      "a storm added",
      "test added",
      "Mass",
    ]);
    undo();
    expect(state().document.rig.walker.mass).toBe(95);
    expect(log()).toHaveLength(count + 1);
    undo();
    expect(log()).toHaveLength(count);
    expect(wear.store.getState().work.record).not.toBe(exampleRecord);
    undo();
    expect(wear.store.getState().work.record).toBe(exampleRecord);
    expect(state().document.rig.walker.mass).toBe(95);
    undo();
    expect(state().document.history.present.rig).toBe(oldRig);
    for (let i = 0; i < 4; i++) redo();
    expect(state().document.rig.walker.mass).toBe(85);
    expect(log()).toHaveLength(count + 1);
  });

  it("works the rig out anew when a step of its record is taken back, and keeps that for a reload", () => {
    const { sandbox, state, wear, storm } = page();
    const { key } = state().assessment;
    storm();
    expect(state().assessment.key).not.toBe(key);
    expect(state().session.wear?.work.record).toBe(wear.store.getState().work.record);
    sandbox.actions.undo();
    expect(state().assessment.key).toBe(key);
    expect(state().session.wear?.work.record).toBe(exampleRecord);
  });

  it("stays with the rig when its verdict tells of the step, and goes to the record when nothing does", () => {
    const one = page();
    one.storm();
    one.sandbox.actions.undo();
    expect(one.state().session.view).toBe("rig");
    const other = page(demoDocument());
    // From here on it is no example any more, whose tests count for no other rig.
    other.test();
    other.wear.actions.look({ page: "log" });
    other.storm();
    other.sandbox.actions.undo();
    expect(other.state().session.view).toBe("wear");
    expect(other.wear.store.getState().page).toBe("record");
  });

  it("turns from the record to the log, and back to the rig, where the step is seen", () => {
    const { sandbox, state, wear, storm, test, mass } = page();
    sandbox.actions.edit("notes", "seen from below", "Notes");
    storm();
    test();
    mass("85 kg");
    sandbox.actions.look({ view: "wear" });
    wear.actions.look({ page: "record" });
    sandbox.actions.undo();
    // Dates beside the record are those of the other walker.
    expect(state().session.view).toBe("wear");
    sandbox.actions.undo();
    expect(wear.store.getState().page).toBe("log");
    sandbox.actions.undo();
    expect(wear.store.getState().page).toBe("record");
    wear.actions.look({ page: "log" });
    sandbox.actions.undo();
    expect(state().session.view).toBe("rig");
  });

  it("leaves the view alone when there is nothing to take back", () => {
    const { sandbox, state } = page(demoDocument());
    sandbox.actions.look({ view: "lessons" });
    sandbox.actions.undo();
    sandbox.actions.redo();
    expect(state().session.view).toBe("lessons");
  });

  it("brings a record back that another one took the place of, beside a rig that was opened since", () => {
    const { sandbox, state, wear } = page();
    wear.actions.replace({ record: { secondline: "wear/1", name: "Mine", webbings: [] } }, "a new record");
    sandbox.actions.replaceRig({ ...demoDocument(), name: "Another" }, "opened Another");
    sandbox.actions.undo();
    expect(state().document.history.present.rig).toBe(oldRig);
    expect(wear.store.getState().work.record.name).toBe("Mine");
    sandbox.actions.undo();
    expect(wear.store.getState().work.record).toBe(exampleRecord);
    // What was replaced is kept all the same.
    expect(wear.store.getState().earlier.map(({ name }) => name)).toEqual([exampleRecord.name]);
  });

  it("counts the examples as such again once every change of them is taken back", () => {
    const { sandbox, state, storm } = page();
    expect(state().assessment.known.example).toBe(true);
    storm();
    expect(state().assessment.known.example).toBe(false);
    sandbox.actions.undo();
    expect(state().assessment.known.example).toBe(true);
  });

  it("takes a drag of one document back whole, though another was changed in between", () => {
    const { sandbox, state, wear, test } = page();
    for (const text of ["8 kg", "85 kg"]) sandbox.actions.edit("walker.mass", text, "Mass", "type mass");
    test();
    sandbox.actions.edit("walker.mass", "86 kg", "Mass", "type mass");
    expect(state().document.history.past).toHaveLength(3);
    sandbox.actions.undo();
    expect(state().document.rig.walker.mass).toBe(85);
    sandbox.actions.undo();
    sandbox.actions.undo();
    expect(state().document.history.present.rig).toBe(oldRig);
    expect(wear.store.getState().work.record).toBe(exampleRecord);
  });
});
