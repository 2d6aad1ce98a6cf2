/** Edits of a rig's document from its sheet: new parts, other kinds, and values that nobody has confirmed. */
import { FIELDS, fieldAt, marksIn, valueAt } from "@secondline/rig";
import { describe, expect, it } from "vitest";
import {
  addPart,
  backupLikeMain,
  confirmValues,
  evenPlaces,
  groupOfField,
  isInGroup,
  jointList,
  lineItems,
  MOST_CHANGED,
  marksInGroups,
  putGround,
  roundStep,
  type Sandbox,
  SHEET_GROUPS,
  type SheetGroup,
  spreadJoints,
  typedQuantity,
  withSlackOrLength,
} from "../src/index.ts";
import { anchorPartOfKind, endOfKind, likeLast, NEW_CONNECTION, wearOfKind } from "../src/sheet/newParts.ts";
import { jointPlace, wearItemTitle } from "../src/sheet/titles.ts";
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

describe("an edit of several values", () => {
  it("of the ground is one step back; a guess is nobody's, and a point more confirms no guess", () => {
    const { sandbox } = handSandbox(demoDocument());
    const ground = valueAt(demoDocument(), "ground") as readonly unknown[];
    putGround(sandbox, ground.slice(1), "a point less");
    expect(marksIn(written(sandbox))).not.toContain("ground");
    putGround(sandbox, ground, "a guess", true);
    expect(marksIn(written(sandbox))).toContain("ground");
    putGround(sandbox, ground.slice(1), "a point less");
    expect(marksIn(written(sandbox))).toContain("ground");
    sandbox.actions.undo();
    expect(valueAt(written(sandbox), "ground")).toEqual(ground);
    sandbox.actions.undo();
    expect(marksIn(written(sandbox))).not.toContain("ground");
  });

  it("ties connections like the first of those that there are, and nobody vouches for the first ones", () => {
    const { sandbox } = handSandbox(demoDocument());
    const joints = () =>
      valueAt(written(sandbox), "backup.connections") as readonly Record<string, unknown>[] | undefined;
    const marked = marksIn(written(sandbox));
    const { strength } = joints()![0]!;
    spreadJoints(sandbox, "connections", [0.2, 0.8]);
    expect(joints()).toMatchObject([
      { strength, at: 0.2 },
      { strength, at: 0.8 },
    ]);
    expect(marksIn(written(sandbox))).toEqual(marked);
    spreadJoints(sandbox, "connections", []);
    expect(joints()).toBeUndefined();
    spreadJoints(sandbox, "connections", [0.5]);
    expect(joints()).toHaveLength(1);
    expect(marksIn(written(sandbox))).toContain("backup.connections[0].strength");
    sandbox.actions.undo();
    expect(joints()).toBeUndefined();
  });
});

it("a new connection has the middle of the widest gap, so that no two are at one place", () => {
  const { make } = jointList("connections", 60, undefined);
  expect(make([])).toMatchObject({ at: 0.5 });
  expect(make([{ at: 0.5 }])).toMatchObject({ at: 0.25 });
  expect(make([{ at: "10 %" }, { at: 0.4, strength: "15 kN" }])).toMatchObject({ at: 0.7, strength: "15 kN" });
  expect(make([{ at: "somewhere" }])).toMatchObject({ at: 0.5 });
  expect(jointList("tapes", 60, [{ at: 0.5 }]).make([{ at: 0.2 }])).toMatchObject({ at: 0.75 });
});

it("places spread evenly are as far from the anchors as from one another", () => {
  expect(evenPlaces(0)).toEqual([]);
  expect(evenPlaces(3)).toEqual([0.25, 0.5, 0.75]);
  expect(jointPlace({ at: 0.25 }, 60)).toContain("15");
  expect(jointPlace({ at: "somewhere" }, 60)).toContain("somewhere");
});

describe("the sheet of a rig", () => {
  type Items = SheetGroup["items"];
  /** Paths of all fields among these items, behind every title, in a part of every list, and of parts of every kind. */
  function pathsOf(items: Items): readonly string[] {
    return items.flatMap((item) => {
      switch (item.kind) {
        case "field":
          return [item.at];
        case "fold":
          return pathsOf(item.items);
        case "list":
          return pathsOf(item.itemsAt(`${item.at}[0]`));
        case "kind": {
          const kind = fieldAt(`${item.at}.kind`);
          const kinds = kind?.kind === "choice" ? kind.options : [];
          return [`${item.at}.kind`, ...kinds.flatMap(({ value }) => pathsOf(item.itemsOf({ kind: value })))];
        }
        case "backup":
          return ["backup.slack", "backup.length", ...pathsOf(lineItems("backup"))];
        case "joints":
          return pathsOf([jointList("connections", 60, []), jointList("tapes", 60, [])]);
        case "ground":
          return ["ground[0][0]", "ground[0][1]"];
        default:
          return [];
      }
    });
  }
  const paths = new Set(pathsOf([MOST_CHANGED, ...SHEET_GROUPS].flatMap(({ items }) => items)));

  it("has a place for every field of the document that a rigger fills in", () => {
    const shown = new Set([...paths].map((path) => path.replaceAll(/\[\d+\](?!$)/g, "[]")));
    // The flag of a demonstration, the marks themselves, where the walker stands, which the question says, and own materials, item by item.
    const isElsewhere = (path: string) =>
      ["invented", "unconfirmed[]", "walker.at"].includes(path) || path.startsWith("stocks[]");
    expect(Object.keys(FIELDS).filter((path) => !isElsewhere(path) && !shown.has(path))).toEqual([]);
  });

  it("has no field that the document does not know", () => {
    expect([...paths].filter((path) => fieldAt(path) === undefined)).toEqual([]);
  });

  it("counts faults and unconfirmed values of every field beside one of its titles", () => {
    const groups = SHEET_GROUPS.flatMap((group) => group.groups);
    const atTheTop = ["requiredFactor", "requiredAfterFailure", "requiredClearance"];
    const uncounted = [...paths].filter((path) => !groups.some((group) => isInGroup(path, group)));
    expect(uncounted).toEqual(atTheTop);
  });

  it("puts in parts with which the rig still reads", () => {
    const lists = SHEET_GROUPS.flatMap(({ items }) => items).filter((item) => item.kind === "list");
    expect(lists.length).toBeGreaterThan(4);
    const { backup } = demoDocument() as { backup: Record<"connections" | "tapes", unknown> };
    const joints = [jointList("connections", 60, backup.tapes), jointList("tapes", 60, backup.connections)];
    for (const { at, make } of [...lists, ...joints]) {
      const document = structuredClone(demoDocument()) as Record<string, unknown>;
      const [owner, name] = at.includes(".") ? at.split(".") : [undefined, at];
      const holder = (owner === undefined ? document : document[owner]) as Record<string, unknown>;
      const parts = (holder[name!] ?? []) as readonly unknown[];
      holder[name!] = [...parts, make(parts)];
      const reading = read(document);
      expect(reading.ok ? [] : reading.issues, at).toEqual([]);
    }
  });
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
