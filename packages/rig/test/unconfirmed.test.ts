/** Marks of values that nobody has confirmed: where they lie, and where they go when the document is edited. */
import { describe, expect, it } from "vitest";
import { confirm, editRig, readRig, valueAt, writeRig } from "../src/index.ts";
import { demoDocument } from "./demoRigs.ts";

const rig = (unconfirmed: readonly string[]) => ({ ...demoDocument("sound-rig"), unconfirmed });
const marks = (document: unknown) => valueAt(document, "unconfirmed");

describe("a rig with marks", () => {
  it("is read with the marks of the values that it has", () => {
    const read = readRig(rig(["span", "anchorA.points[0].strength", "anchorA.points[9].strength", "ground"]));
    expect(read.ok && read.rig.unconfirmed).toEqual(["span", "anchorA.points[0].strength", "ground"]);
  });

  it("has none when the list is empty or not there", () => {
    const read = readRig(rig([]));
    expect(read.ok && "unconfirmed" in read.rig).toBe(false);
  });

  it("is refused when a mark names no field, or one twice", () => {
    for (const path of ["main.tension", "main", "a..b", "unconfirmed[0]", "[", "__proto__"]) {
      const read = readRig(rig([path]));
      expect(read.ok).toBe(false);
      expect(!read.ok && read.issues[0]).toMatchObject({ path: "unconfirmed[0]" });
    }
    const twice = readRig(rig(["span", "span"]));
    expect(!twice.ok && twice.issues[0]?.message).toEqual({ code: "unconfirmed.twice", values: { path: "span" } });
  });

  it("keeps them in the text of its file", () => {
    const document = rig(["span"]);
    const read = readRig(writeRig(document as Parameters<typeof writeRig>[0]));
    expect(read.ok && read.rig.unconfirmed).toEqual(["span"]);
  });
});

describe("an edit", () => {
  it("confirms the value that is changed, and no other", () => {
    const edited = editRig(rig(["span", "main.pretension"]), "main.pretension", "3 kN");
    expect(marks(edited)).toEqual(["span"]);
    expect(marks(editRig(edited, "span", "61 m"))).toBeUndefined();
  });

  it("takes marks along when a part before it is removed", () => {
    const document = rig(["backup.connections[0].strength", "backup.connections[2].strength"]);
    const connections = valueAt(document, "backup.connections") as unknown[];
    expect(marks(editRig(document, "backup.connections", connections.toSpliced(0, 1)))).toEqual([
      "backup.connections[1].strength",
    ]);
    expect(marks(editRig(document, "backup.connections[0]", undefined))).toEqual(["backup.connections[1].strength"]);
    expect(marks(editRig(document, "backup", undefined))).toBeUndefined();
  });

  it("marks copies of a value that nobody confirmed", () => {
    const document = rig(["backup.connections[0].strength", "backup.connections[0].at"]);
    const [first] = valueAt(document, "backup.connections") as [object];
    const spread = [0.2, 0.4].map((at) => ({ ...first, at }));
    expect(marks(editRig(document, "backup.connections", spread))).toEqual([
      "backup.connections[0].strength",
      "backup.connections[1].strength",
    ]);
  });

  it("keeps the mark of a value in a group that is written anew as it was", () => {
    const document = rig(["main.endA.strength", "main.endA.bend"]);
    const end = valueAt(document, "main.endA") as object;
    expect(marks(editRig(document, "main.endA", { ...end, bend: 4 }))).toEqual(["main.endA.strength"]);
  });

  it("of one point of the ground confirms no other; another profile is confirmed as one", () => {
    const document = rig(["ground"]);
    expect(marks(editRig(document, "ground[1][1]", "-20 m"))).toEqual(["ground"]);
    expect(
      marks(
        editRig(document, "ground", [
          ["0 m", "-1 m"],
          ["60 m", "-1 m"],
        ]),
      ),
    ).toBeUndefined();
  });

  it("of a document without marks makes none", () => {
    const { unconfirmed: _, ...document } = rig([]);
    expect("unconfirmed" in editRig(document, "span", "61 m")).toBe(false);
  });
});

it("values are confirmed as they stand, one or several", () => {
  const document = rig(["span", "rise", "ground"]);
  expect(marks(confirm(document, ["rise"]))).toEqual(["span", "ground"]);
  expect(marks(confirm(document, ["span", "rise", "ground"]))).toBeUndefined();
  expect(confirm(document, ["walker.mass"])).toBe(document);
});
