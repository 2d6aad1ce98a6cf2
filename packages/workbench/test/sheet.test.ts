/** Edits of a rig's document from its sheet: new parts, other kinds, and values that nobody has confirmed. */
import { marksIn, valueAt } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import {
  addPart,
  anchorPartOfKind,
  backupLikeMain,
  confirmValues,
  endOfKind,
  evenPlaces,
  groupOfField,
  isInGroup,
  jointPlace,
  likeLast,
  marksInGroups,
  NEW_CONNECTION,
  roundStep,
  type Sandbox,
  typedQuantity,
  wearItemTitle,
  wearOfKind,
  withSlackOrLength,
} from "../src/index.ts";
import { demoDocument, read } from "./demoDocument.ts";
import { handSandbox } from "./handRunner.ts";

const written = ({ store }: Sandbox) => store.getState().document.history.present.rig;

describe("a part that is put in", () => {
  const part = { ...NEW_CONNECTION, at: 0.6 };
  const added = () => {
    const { sandbox } = handSandbox(demoDocument());
    const before = (valueAt(written(sandbox), "backup.connections") ?? []) as readonly unknown[];
    const at = `backup.connections[${before.length}]`;
    const marked = marksIn(written(sandbox));
    addPart(sandbox, { at, part, whole: { path: "backup.connections", value: [...before, part] }, label: "added" });
    return { sandbox, at, marked };
  };

  it("has every value of it marked that a rigger must look at, and the rig still reads", () => {
    const { sandbox, at, marked } = added();
    expect(marksIn(written(sandbox)).filter((path) => !marked.includes(path))).toEqual([`${at}.strength`, `${at}.at`]);
    const reading = read(written(sandbox));
    expect(reading.ok ? [] : reading.issues).toEqual([]);
  });

  it("is one step back, marks and all", () => {
    const { sandbox, marked } = added();
    sandbox.actions.undo();
    expect(marksIn(written(sandbox))).toEqual(marked);
    expect(written(sandbox)).toEqual(demoDocument());
  });

  it("is confirmed value by value; what is left is counted", () => {
    const { sandbox, at, marked } = added();
    expect(confirmValues(sandbox, [`${at}.strength`], "confirmed")).toBe(marked.length + 1);
    expect(marksInGroups(written(sandbox), [at])).toEqual([`${at}.at`]);
    expect(confirmValues(sandbox, marksInGroups(written(sandbox)), "confirmed")).toBe(0);
    expect(valueAt(written(sandbox), "unconfirmed")).toBeUndefined();
  });
});

describe("another kind of a part", () => {
  it("of an end keeps what that kind has too, and nothing that it has not", () => {
    const weblock = { kind: "weblock", strength: "45 kN", bend: 6, clamped: "2 months", slipLoad: "12 kN" };
    expect(endOfKind(weblock, "sewnLoop")).toMatchObject({ kind: "sewnLoop", strength: "45 kN", bend: 6 });
    expect(endOfKind(weblock, "sewnLoop")).not.toHaveProperty("slipLoad");
    expect(endOfKind(weblock, "weblock")).toEqual(weblock);
  });

  it("of an end gives a knot the strength of its webbing, and no device the rating of another", () => {
    const rated = { kind: "weblock", strength: "45 kN", basis: "published: the maker's sheet" };
    expect(endOfKind(rated, "knot")).toEqual({ kind: "knot", knot: "unknown" });
    expect(endOfKind(rated, "sewnLoop")).toMatchObject({ strength: "45 kN", basis: expect.stringMatching(/^assumed/) });
  });

  it("of wear keeps the fields that both have", () => {
    const cut = { kind: "cut", at: "7 m", depth: "30 %" };
    expect(wearOfKind(cut, "heat")).toEqual({ kind: "heat", from: "2 m", to: "2.2 m", depth: "30 %" });
    expect(wearOfKind(cut, "clampMark")).toMatchObject({ at: "7 m", length: "10 cm", clamped: "1 month" });
    expect(wearItemTitle(cut)).toContain("7 m");
  });

  it("of an anchor's part says how it is rigged only as a sling", () => {
    const sling = { kind: "sling", rigged: "choked", strength: "22 kN" };
    expect(anchorPartOfKind(sling, "sling")).toEqual(sling);
    expect(anchorPartOfKind(sling, "shackle")).toEqual({ kind: "shackle", strength: "22 kN" });
    expect(likeLast([{ ...sling, own: { factor: 0.5 } }])).toEqual({ kind: "sling", strength: "22 kN" });
    expect(likeLast([])).toEqual({});
  });

  it("a backup has slack or length, never both", () => {
    expect(withSlackOrLength({ slack: "3 %", endA: 1 }, "length", 60)).toEqual({ endA: 1, length: "63 m" });
    expect(withSlackOrLength({ length: "63 m", endA: 1 }, "slack", 60)).toEqual({ endA: 1, slack: "5 %" });
  });

  it("a backup like the main line makes a rig that reads", () => {
    const { backup: _, ...without } = demoDocument() as Record<string, unknown>;
    const reading = read({ ...without, backup: backupLikeMain(without) });
    expect(reading.ok ? [] : reading.issues).toEqual([]);
  });
});

it("places spread evenly are as far from the anchors as from one another", () => {
  expect(evenPlaces(0)).toEqual([]);
  expect(evenPlaces(3)).toEqual([0.25, 0.5, 0.75]);
  expect(jointPlace({ at: 0.25 }, 60)).toContain("15");
  expect(jointPlace({ at: "somewhere" }, 60)).toContain("somewhere");
});

it("a path lies in a group by whole names, not by how they begin", () => {
  expect(isInGroup("main.endA.bend", "main.endA")).toBe(true);
  expect(isInGroup("rings[1].mass", "rings")).toBe(true);
  expect(isInGroup("mainline", "main")).toBe(false);
});

it("a fault is told with its group, and with the number of the item in a list", () => {
  expect(groupOfField("span")).toBeUndefined();
  expect(groupOfField("rings[1].mass")).toMatch(/ 2$/);
  expect(groupOfField("main.pretension")).toBe(groupOfField("main.sections"));
});

it("a share is a number in the file; what has a unit, or is no number, stays as it is typed", () => {
  expect(typedQuantity("0.5", { dimension: "position" })).toBe(0.5);
  expect(typedQuantity("60", { dimension: "length" })).toBe("60");
  expect(typedQuantity("half", { dimension: "position" })).toBe("half");
  expect(typedQuantity(" ", { dimension: "position" })).toBeUndefined();
});

it.each([
  [0, 1, 0.01],
  [0, 200, 2],
  [10, 60, 0.5],
  [0, 90, 1],
])("a slider from %f to %f goes in steps of %f", (low, high, step) => {
  expect(roundStep([low, high])).toBeCloseTo(step, 12);
});
