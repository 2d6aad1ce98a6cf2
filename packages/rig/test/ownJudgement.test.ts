import { describe, expect, it } from "vitest";
import { editDocument, judgePart, readRig } from "../src/index.ts";
import { accepted, demoDocument, issuePaths } from "./demoRigs.ts";

const sound = demoDocument("sound-rig");
const rig = accepted(readRig(sound)).rig;
const own = { factor: 0.8, reason: "scuffed" };

describe("an own judgement of a part", () => {
  it.each([
    ["harness", (r: typeof rig) => r.harness.own],
    ["leash", (r: typeof rig) => r.leash.own],
    ["rings[0]", (r: typeof rig) => r.rings[0]!.own],
    ["main.sections[0]", (r: typeof rig) => r.main.sections[0]!.own],
    ["main.endA", (r: typeof rig) => r.main.endA.own],
    ["backup.endB", (r: typeof rig) => r.backup!.endB.own],
    ["backup.connections[1]", (r: typeof rig) => r.backup!.connections[1]!.own],
    ["backup.tapes[0]", (r: typeof rig) => r.backup!.connections[3]!.own],
    ["anchorA.points[1]", (r: typeof rig) => r.anchorA.points[1]!.own],
    ["anchorB.hardware[0]", (r: typeof rig) => r.anchorB.hardware[0]!.own],
  ])("is read where it is written: at %s", (path, of) => {
    expect(of(accepted(readRig(editDocument(sound, `${path}.own`, own))).rig)).toEqual(own);
  });

  it("may leave its factor out, never its reason, and is no word without letters", () => {
    const read = (value: unknown) => editDocument(sound, "leash.own", value);
    expect(accepted(readRig(read({ reason: "looks furry" }))).rig.leash.own).toEqual({ reason: "looks furry" });
    expect(accepted(readRig(read({}))).rig.leash.own).toBeUndefined();
    expect(issuePaths(read({ factor: 0.8 }))).toEqual(["leash.own.reason"]);
    expect(issuePaths(read({ factor: 0.8, reason: "  " }))).toEqual(["leash.own.reason"]);
    expect(issuePaths(read({ factor: 0, reason: "no" }))).toEqual(["leash.own.factor"]);
    expect(issuePaths(read({ factor: 2, reason: "no" }))).toEqual(["leash.own.factor"]);
  });

  it("finds its part by the id that results know it by, and no other", () => {
    const ids = ["harness", "leash", "ring", "main", "endB", "backup", "backup.endA", "connection.2"];
    for (const id of [...ids, "anchorA.points.0", "anchorB.hardware.1"]) {
      expect(JSON.stringify(judgePart(rig, id, own))).toContain("scuffed");
    }
    for (const id of [
      "",
      "ring.0",
      "main.0",
      "connection",
      "connection.99",
      "anchorA",
      "anchorA.points.2",
      "leash.1",
    ]) {
      expect(judgePart(rig, id, own)).toBeUndefined();
    }
    const two = judgePart({ ...rig, rings: [rig.rings[0]!, rig.rings[0]!] }, "ring.1", own);
    expect(two?.rings.map((ring) => ring.own)).toEqual([undefined, own]);
  });
});

describe("how a sling is rigged", () => {
  it("is read for slings and refused for anything else", () => {
    const choked = (path: string) => editDocument(sound, `${path}.rigged`, "choked");
    expect(accepted(readRig(choked("anchorA.hardware[0]"))).rig.anchorA.hardware[0]!.rigged).toBe("choked");
    expect(issuePaths(choked("anchorA.hardware[1]"))).toEqual(["anchorA.hardware[1].rigged"]);
  });
});

describe("heat and a slipped sheath", () => {
  it("are read where they are known", () => {
    const glazed = { kind: "heat", from: "10 m", to: "10.2 m", depth: "10 %" };
    const document = editDocument(editDocument(sound, "leash.sheathSlip", "1 %"), "leash.glazed", "5 %");
    const read = accepted(readRig(editDocument(document, "main.sections[0].wear", [glazed]))).rig;
    expect([read.leash.sheathSlip, read.leash.glazed]).toEqual([0.01, 0.05]);
    expect(read.main.sections[0]!.wear).toEqual([{ kind: "heat", from: 10, to: 10.2, depth: 0.1 }]);
  });
});
