import { describe, expect, it } from "vitest";
import { editDocument, MAX_RIG_TEXT, type RigDocument, readRig, tensionAt } from "../src/index.ts";
import { accepted, DEMO_NAMES, demoDocument, demoText, issuePaths } from "./demoRigs.ts";
import { FAULTY_RIGS, faultAt } from "./faultyRigs.ts";

const sound = demoDocument("sound-rig");
const only = (source: unknown) => {
  const reading = readRig(source);
  if (reading.ok || reading.issues.length !== 1) throw new Error(`expected one issue, got ${JSON.stringify(reading)}`);
  return reading.issues[0]!;
};

describe("reading a rig", () => {
  it.each(DEMO_NAMES)("accepts the demonstration rig %s and knows that it is invented", (name) => {
    expect(accepted(readRig(demoText(name))).rig.invented).toBe(true);
  });

  it("gives SI units: 2.5 kN is 2500 N, 5 % is 0.05, 45 deg is π/4, 2 months are 2", () => {
    const { rig } = accepted(readRig(sound));
    expect(rig.main.pretension).toBe(2500);
    expect(rig.backup?.slack).toBeCloseTo(0.05, 12);
    expect(rig.anchorA.legAngle).toBeCloseTo(Math.PI / 4, 12);
    expect(rig.main.sections[0]?.condition).toEqual({
      monthsOutside: 2,
      sun: 0.6,
      latitude: "middle",
      ageYears: 1,
    });
    expect(rig.main.sections[0]?.stock.name).toBe("Polyester webbing 25 mm");
  });

  it("tells a file with a word of an earlier version the word that is used now, with its place", () => {
    const old = editDocument(demoDocument("old-rig"), "main.sections[0].wear[0].kind", "clampTrace");
    expect(only(old)).toMatchObject({ path: "main.sections[0].wear[0].kind", expected: '"clampMark"' });
    expect(only(old).message).toMatchObject({ code: "renamed", values: { now: "clampMark" } });
  });

  it("gives the same rig whether lengths are written in metres or in feet", () => {
    const feet = editDocument(sound, "span", `${60 / 0.3048} ft`);
    expect(accepted(readRig(feet)).rig.span).toBeCloseTo(60, 9);
  });

  it("fills in what may be left out with the stated defaults, and says that the factor has no source", () => {
    let short: RigDocument = sound;
    for (const path of ["requiredFactor", "requiredFactorBasis", "rise", "walker.tieIn", "rings[0].friction"]) {
      short = editDocument(short, path, undefined);
    }
    const { rig } = accepted(readRig(editDocument(short, "ground[10][1]", "0 m")));
    expect(rig.requiredFactor.value).toBe(2);
    expect(rig.requiredFactor.basis).toMatchObject({ kind: "common practice" });
    expect([rig.rise, rig.walker.tieIn, rig.rings[0]?.friction]).toEqual([0, 1, 0.15]);
  });

  it("counts a strength without a basis as assumed", () => {
    const { rig } = accepted(readRig(editDocument(sound, "harness.basis", undefined)));
    expect(rig.harness.rated.basis).toEqual({ kind: "assumed", note: "no basis given in the rig file" });
  });

  it("takes no end that is tied or sewn of the webbing for stronger than the webbing", () => {
    const end = (written: object) => accepted(readRig(editDocument(sound, "main.endB", written))).rig.main.endB.rated;
    const webbing = accepted(readRig(sound)).rig.main.sections[0]!.stock.rated;
    const knot = { kind: "knot", knot: "figureEight" };
    const basis = "published: the sheet of a clamp";
    expect(end({ ...knot, strength: "45 kN", basis })).toEqual(webbing);
    expect(end({ kind: "sewnLoop", strength: "45 kN", basis })).toEqual(webbing);
    expect(end({ ...knot, strength: "9 kN", basis })).toMatchObject({ strength: 9000 });
    expect(end({ kind: "weblock", strength: "45 kN", basis })).toMatchObject({ strength: 45_000 });
  });

  it("takes nothing for younger than anything in the file says that it was in use", () => {
    const young = { outside: "1 week", age: "1 month" };
    const section = (over: object, end: object = {}) => {
      const document = editDocument(sound, "main.sections[0]", {
        stock: "polyester-webbing-25",
        condition: young,
        ...over,
      });
      const ended = editDocument(document, "main.endA", { ...(sound.main as { endA: object }).endA, ...end });
      return accepted(readRig(ended)).rig.main.sections[0]!.condition.ageYears;
    };
    const clamped = { clamped: "0 months" };
    expect(section({}, clamped)).toBeCloseTo(1 / 12, 9);
    expect(section({ condition: { outside: "36 months", age: "1 month" } }, clamped)).toBeCloseTo(3, 9);
    expect(section({}, { clamped: "24 months" })).toBeCloseTo(2, 9);
    expect(
      section({ wear: [{ kind: "clampMark", at: "3 m", length: "10 cm", clamped: "14 months" }] }, clamped),
    ).toBeCloseTo(14 / 12, 9);
    expect(section({ condition: { outside: "36 months" } }, clamped)).toBeUndefined();
  });

  it("takes a backup's length as well as its slack", () => {
    const { rig } = accepted(readRig(demoDocument("old-rig")));
    expect(rig.backup?.slack).toBeCloseTo(69.6 / 66 - 1, 12);
  });

  it("keeps connections before tapes, each in the order of the file", () => {
    const kinds = accepted(readRig(sound)).rig.backup?.connections.map((c) => c.kind);
    expect(kinds).toEqual([...Array(3).fill("connection"), ...Array(8).fill("tape")]);
  });

  it("takes over a generic webbing and changes what is given", () => {
    const own = { id: "mine", like: "polyester-webbing-25", strength: "27 kN", basis: "tested: own pulls" };
    const document = editDocument(editDocument(sound, "stocks", [own]), "main.sections[0].stock", "mine");
    const { stock } = accepted(readRig(document)).rig.main.sections[0]!;
    expect(stock.rated).toEqual({ strength: 27000, basis: { kind: "tested", note: "own pulls" } });
    expect(stock.mass).toBe(0.06);
    expect(stock.basis.kind).toBe("assumed");
  });

  it("goes on beyond an own pull at least as steeply as between its last two points, also where it softens there", () => {
    const curveOf = (...more: string[][]) => {
      const curve = [["0 %", "0 kN"], ["2 %", "1.9 kN"], ...more];
      const stocks = [
        { id: "mine", like: "polyester-webbing-25", curve },
        { id: "longer", like: "mine", strength: "27 kN" },
      ];
      const document = editDocument(editDocument(sound, "stocks", stocks), "main.sections[0].stock", "longer");
      return accepted(readRig(document)).rig.main.sections[0]!.stock.curve;
    };
    // 0.7 kN in 2 %: 35 kN for a stretch of one. The end slope through three points is 5 kN.
    const softer = curveOf(["4 %", "2.6 kN"]);
    for (const stretch of [0.02, 0.04])
      expect(tensionAt(softer, stretch)).toBeCloseTo(95000 * 0.02 + 35000 * (stretch - 0.02));
    expect(tensionAt(softer, 0.1)).toBeCloseTo(2600 + 35000 * 0.06);
    // One that grows steeper goes on as it ends, with the points that it has.
    const steeper = curveOf(["4 %", "5 kN"]);
    expect(steeper).toHaveLength(3);
    expect(tensionAt(steeper, 0.1)).toBeGreaterThan(5000 + 155000 * 0.06);
  });
});

describe("a file that is not a rig", () => {
  it("is told from a rig when it is not JSON, with the line of the trouble", () => {
    const { message } = only('{\n "secondline": "rig/1",\n oops }');
    expect(message).toMatchObject({ code: "file.notJson", next: { code: "file.troubleInLine", values: { line: 3 } } });
    expect(only("").got).toMatchObject({ code: "got.emptyFile" });
  });
  it("is told from a rig when it is another program's JSON", () => {
    expect(only({ type: "FeatureCollection", features: [] })).toMatchObject({
      path: "secondline",
      got: { code: "got.nothing" },
      message: { code: "file.untagged" },
    });
    expect(only("[1, 2]").message.code).toBe("file.notGroup");
    expect(only(null).path).toBe("");
  });
  it("is refused plainly when a newer version wrote it", () => {
    expect(only({ ...sound, secondline: "rig/2" }).message.code).toBe("file.newer");
    expect(only({ ...sound, secondline: "wear/1" }).message.code).toBe("file.unknownFormat");
  });
  it("is refused when it is too large, without reading it", () => {
    expect(only(" ".repeat(MAX_RIG_TEXT + 1)).message.code).toBe("file.tooLarge");
  });
});

describe("faults between fields", () => {
  it.each(FAULTY_RIGS)("refuses %s", (_, edits, path, code) => {
    const fault = faultAt(edits, path);
    expect(typeof fault === "string" ? fault : fault.message.code).toBe(code);
  });

  it("tells wear beyond its section also where another fault keeps the line from fitting", () => {
    const full = editDocument(sound, "main.sections[0].length", "30 m");
    expect(issuePaths(full)).toEqual(["main.sections[0].length", "main.sections[0].wear[0].to"]);
  });

  it("counts sections stretched: 59.5 m of webbing at 2.5 kN is longer than 60 m", () => {
    const stretched = editDocument(sound, "main.sections[1]", { stock: "polyester-webbing-25", length: "59.5 m" });
    expect(issuePaths(stretched)).toContain("main.sections[1].length");
    const shorter = editDocument(sound, "main.sections[1]", { stock: "polyester-webbing-25", length: "20 m" });
    expect(accepted(readRig(shorter)).rig.main.sections).toHaveLength(2);
  });

  it("accepts a value on its limit, in any unit", () => {
    expect(issuePaths(editDocument(sound, "anchorB.legAngle", "179 deg"))).toEqual([]);
    expect(issuePaths(editDocument(sound, "walker.mass", `${250 / 0.45359237} lb`))).toEqual([]);
    expect(issuePaths(editDocument(sound, "walker.mass", "251 kg"))).toEqual(["walker.mass"]);
  });

  it("refuses a name that a file gives twice", () => {
    const twice = demoText("sound-rig").replace('"span": "60 m",', '"span": "60 m", "span": "50 m",');
    expect(issuePaths(twice)).toEqual(["span"]);
  });

  it("lists every fault at once, and a bad field hides no other fault", () => {
    const edits = {
      span: "-60 m",
      "main.pretension": "31 kN",
      "leash.length": "1 m",
      "rings[1]": sound.rings[0],
      "walker.mas": "80 kg",
      harness: undefined,
    };
    const document = Object.entries(edits).reduce<RigDocument>((d, [at, value]) => editDocument(d, at, value), sound);
    expect(issuePaths(document).sort()).toEqual([
      "harness",
      "leash.length",
      "main.pretension",
      "rings[1].name",
      "span",
      "walker.mas",
    ]);
  });

  it("does not take keys from an object's prototype", () => {
    const text = demoText("sound-rig").replace('"span": "60 m"', '"__proto__": { "span": "60 m" }');
    expect(issuePaths(text)).toContain("span");
  });
});
