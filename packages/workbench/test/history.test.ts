import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adopt, closeGroup, documentsOf, groupStart, record, redo, startHistory, undo } from "../src/index.ts";

interface Papers {
  readonly rig: unknown;
  readonly log?: unknown;
}
const start = (rig: unknown, log?: unknown) => startHistory<Papers>({ rig, ...(log === undefined ? {} : { log }) });

describe("a history of one document", () => {
  it("goes back to every earlier value and forward again", () => {
    const first = { a: 1 };
    let history = record(start(first), "first", { rig: { a: 2 } });
    history = record(history, "second", { rig: { a: 3 } });
    const back = undo(undo(history));
    expect(back.present.rig).toBe(first);
    expect(undo(back)).toBe(back);
    expect(redo(redo(back)).present.rig).toEqual({ a: 3 });
  });

  it("joins the letters typed into one field into one step", () => {
    let history = start("60 m");
    for (const rig of ["6 m", "65 m", "65. m", "65.5 m"]) history = record(history, "Span", { rig }, "type span");
    expect(history.past).toHaveLength(1);
    expect(groupStart(history, "type span").rig).toBe("60 m");
    expect(groupStart(history, "type rise").rig).toBe("65.5 m");
    expect(undo(history).present.rig).toBe("60 m");
  });

  it("begins a step of its own once the field was left", () => {
    let history = record(start("60 m"), "Span", { rig: "61 m" }, "type span");
    history = record(closeGroup(history), "Span", { rig: "62 m" }, "type span");
    expect(undo(history).present.rig).toBe("61 m");
  });

  it("forgets what could be redone once something new is done", () => {
    const history = record(undo(record(start(1), "two", { rig: 2 })), "three", { rig: 3 });
    expect(redo(history)).toBe(history);
    expect(history.present.rig).toBe(3);
  });

  it("does not count a change to the same value", () => {
    const history = start("x");
    expect(record(history, "same", { rig: "x" })).toBe(history);
  });
});

describe("a history of several documents", () => {
  it("is walked back in the order in which they were changed, and names the one that each step belongs to", () => {
    let history = record(start("rig 1", "log 1"), "Mass", { rig: "rig 2" });
    history = record(history, "a test added", { log: "log 2" });
    history = record(history, "Span", { rig: "rig 3" });
    expect(history.past.map((step) => documentsOf(step))).toEqual([["rig"], ["log"], ["rig"]]);
    history = undo(history);
    expect(history.present).toEqual({ rig: "rig 2", log: "log 2" });
    history = undo(history);
    expect(history.present).toEqual({ rig: "rig 2", log: "log 1" });
    expect(history.future.map(({ label }) => label)).toEqual(["a test added", "Span"]);
    expect(redo(redo(history)).present).toEqual({ rig: "rig 3", log: "log 2" });
  });

  it("takes a step that changed both back as one", () => {
    const history = record(start("rig 1", "log 1"), "both", { rig: "rig 2", log: "log 2" });
    expect(history.past).toHaveLength(1);
    expect(undo(history).present).toEqual({ rig: "rig 1", log: "log 1" });
  });

  it("does not join changes of two documents, even if their groups are called alike", () => {
    let history = record(start("rig 1", "log 1"), "Mass", { rig: "rig 2" }, "type");
    history = record(history, "a test changed", { log: "log 2" }, "type");
    history = record(history, "a test changed", { log: "log 3" }, "type");
    expect(history.past).toHaveLength(2);
    expect(undo(history).present).toEqual({ rig: "rig 2", log: "log 1" });
  });

  it("keeps a document that came later through every step before it came", () => {
    let history = record(start("rig 1"), "Mass", { rig: "rig 2" });
    history = adopt(history, { log: "log of the device" });
    expect(undo(history).present).toEqual({ rig: "rig 1", log: "log of the device" });
    expect(undo(undo(history)).present).toEqual({ rig: "rig 1", log: "log of the device" });
  });

  it("comes back to every state on the way, whatever was done", () => {
    const change = fc.oneof(
      fc.record({ rig: fc.integer() }),
      fc.record({ log: fc.integer() }),
      fc.record({ rig: fc.integer(), log: fc.integer() }),
    );
    fc.assert(
      fc.property(fc.array(change, { maxLength: 20 }), (changes) => {
        const all = [start(-1, -2)];
        for (const one of changes) all.push(record(all.at(-1)!, "a change", one));
        const states = all.filter((one, i) => one !== all[i - 1]);
        let history = states.at(-1)!;
        for (const before of states.slice(0, -1).reverse()) {
          history = undo(history);
          expect(history.present).toEqual(before.present);
        }
        for (const after of states.slice(1)) {
          history = redo(history);
          expect(history.present).toEqual(after.present);
        }
        expect(history.past.map(({ values }) => values)).toEqual(states.at(-1)!.past.map(({ values }) => values));
      }),
      { seed: 20261129 },
    );
  });
});
