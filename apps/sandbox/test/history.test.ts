import { expect, it } from "vitest";
import { closeGroup, record, redo, startHistory, undo } from "../src/state/history.ts";

it("goes back to every earlier value and forward again", () => {
  const start = { a: 1 };
  let history = record(startHistory(start), "first", { a: 2 });
  history = record(history, "second", { a: 3 });
  const back = undo(undo(history));
  expect(back.present).toBe(start);
  expect(undo(back)).toBe(back);
  expect(redo(redo(back)).present).toEqual({ a: 3 });
});

it("joins the letters typed into one field into one step", () => {
  let history = startHistory("60 m");
  for (const text of ["6 m", "65 m", "65. m", "65.5 m"]) history = record(history, "Span", text, "type span");
  expect(history.past).toHaveLength(1);
  expect(undo(history).present).toBe("60 m");
});

it("begins a step of its own once the field was left", () => {
  let history = record(startHistory("60 m"), "Span", "61 m", "type span");
  history = record(closeGroup(history), "Span", "62 m", "type span");
  expect(undo(history).present).toBe("61 m");
});

it("forgets what could be redone once something new is done", () => {
  const history = record(undo(record(startHistory(1), "two", 2)), "three", 3);
  expect(redo(history)).toBe(history);
  expect(history.present).toBe(3);
});

it("does not count a change to the same value", () => {
  const history = startHistory("x");
  expect(record(history, "same", "x")).toBe(history);
});
