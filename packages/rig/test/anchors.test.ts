import { describe, expect, it } from "vitest";
import { editDocument, readRig, repeatedRigIds } from "../src/index.ts";
import { accepted, DEMO_NAMES, demoDocument, issuePaths } from "./demoRigs.ts";

const sound = demoDocument("sound-rig");
const edited = (path: string, value: unknown) => editDocument(sound, path, value);

describe("the id of a rig", () => {
  it("is a short name without spaces, and may be left out", () => {
    expect(accepted(readRig(edited("id", "long-gap.2026"))).rig.id).toBe("long-gap.2026");
    expect(accepted(readRig(edited("id", undefined))).rig).not.toHaveProperty("id");
    for (const bad of ["", " ", "long gap", "-gap", "gap-", "x".repeat(61)]) {
      expect(issuePaths(edited("id", bad)), bad).toEqual(["id"]);
    }
  });

  it("means one rig of those that are loaded: one given twice is a fault that names both", () => {
    const rigs = DEMO_NAMES.map((name) => accepted(readRig(demoDocument(name))).rig);
    expect(repeatedRigIds(rigs)).toEqual([]);
    const [issue, ...more] = repeatedRigIds([...rigs, { ...rigs[0]!, name: "copy" }]);
    expect(issue).toMatchObject({ path: "[3].id", got: { code: "got.idAgain" } });
    expect(issue!.message).toMatchObject({ code: "ids.same", values: { first: rigs[0]!.name, second: "copy" } });
    expect(more).toEqual([]);
    expect(repeatedRigIds([{ name: "a" }, { name: "a" }])).toEqual([]);
  });
});

describe("an anchor", () => {
  it("says at what angle its bolts are pulled, each for itself or all by the line's", () => {
    const { anchorA } = accepted(readRig(edited("anchorA.axisAngle", "60 deg"))).rig;
    expect(anchorA.axisAngle).toBeCloseTo(Math.PI / 3, 12);
    expect(anchorA.points[0]!.pullAngle).toBeCloseTo(Math.PI / 2, 12);
    expect(issuePaths(edited("anchorA.points[0].pullAngle", "91 deg"))).toEqual(["anchorA.points[0].pullAngle"]);
    expect(issuePaths(edited("anchorA.points[0].kind", "tree"))).toEqual(["anchorA.points[0].pullAngle"]);
  });

  it("says which line hangs on a part of its hardware, not on a rock point", () => {
    expect(accepted(readRig(edited("anchorA.hardware[0].carries", "backup"))).rig.anchorA.hardware[0]!.carries).toBe(
      "backup",
    );
    expect(accepted(readRig(sound)).rig.anchorA.hardware[0]!.carries).toBeUndefined();
    expect(issuePaths(edited("anchorA.hardware[0].carries", "leash"))).toEqual(["anchorA.hardware[0].carries"]);
    expect(issuePaths(edited("anchorA.points[0].carries", "main"))).toEqual(["anchorA.points[0].carries"]);
  });
});

describe("a stock", () => {
  it("is webbing or rope as it says, or as what it is like", () => {
    const stocks = [
      { id: "mine", like: "dynamic-rope-10" },
      { id: "flat", like: "dynamic-rope-10", form: "webbing" },
    ];
    const form = (stock: string) =>
      accepted(readRig(editDocument(edited("stocks", stocks), "leash.stock", stock))).rig.leash.stock.form;
    expect([form("mine"), form("flat"), form("dynamic-rope-9")]).toEqual(["rope", "webbing", "rope"]);
  });

  it("that is flat webbing has no sheath to slip", () => {
    const flat = edited("leash.stock", "polyester-webbing-25");
    expect(issuePaths(editDocument(flat, "leash.sheathSlip", "2 %"))).toEqual(["leash.sheathSlip"]);
    expect(issuePaths(flat)).toEqual([]);
  });
});

it("falls that nobody wrote down are unknown, not none", () => {
  expect(accepted(readRig(edited("leash.falls", undefined))).rig.leash).not.toHaveProperty("falls");
  expect(accepted(readRig(edited("leash.falls", 0))).rig.leash.falls).toBe(0);
});
