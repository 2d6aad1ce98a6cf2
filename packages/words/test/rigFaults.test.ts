/** Faults of rigs, fields and files as a rigger reads them. */
import { readFileSync } from "node:fs";
import {
  type Dimension,
  editDocument,
  exampleText,
  MAX_RIG_TEXT,
  parseQuantity,
  type RigDocument,
  readField,
  readJson,
  readRig,
  repeatedRigIds,
} from "@secondline/rig";
import { type Assessment, assess } from "@secondline/scenarios";
import { readWearRecord } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { FAULTY_RIGS, faultAt } from "../../rig/test/faultyRigs.ts";
import { tellFault } from "../src/faultWords.ts";

const documentOf = (name: string): RigDocument =>
  JSON.parse(readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8"));
const sound = documentOf("sound-rig");

/** The one fault of a document, told. */
function only(source: unknown): string {
  const reading = readRig(source);
  if (reading.ok || reading.issues.length !== 1) throw new Error(`expected one issue, got ${JSON.stringify(reading)}`);
  return tellFault(reading.issues[0]!.message);
}

describe("a quantity that cannot be read", () => {
  it.each([
    [60, "length", 'has no unit; a length is written with one, for example "60 m"'],
    ["60", "length", "has no unit"],
    ["80 kg", "force", "is a mass, but a force"],
    ["2.5 kn", "force", 'Did you mean "kN"?'],
    ["2,5 kN", "force", "write a point for decimals"],
    ["3 furlong", "length", "is not a unit that is known here"],
    ["20 degC", "angle", "is not a unit that is known here"],
    ["3 constructor", "length", "is not a unit that is known here"],
    ["2 m + 3 m", "length", "is not a unit that is known here"],
    ["NaN m", "length", "does not begin with a number"],
    ["Infinity m", "length", "does not begin with a number"],
    ["1e999 m", "length", "too large a number"],
    [Number.NaN, "ratio", "not a finite number"],
    [Number.POSITIVE_INFINITY, "position", "not a finite number"],
    [1.5, "count", "not a whole number"],
    ["4 %", "force", "is in per cent"],
    ["4", "share", 'for example "4 %"'],
    ["12 m", "count", "a unit that does not belong here"],
    ["", "force", "empty"],
    [null, "force", "is needed"],
    [["60 m"], "length", "is needed"],
    ["9".repeat(1000), "length", "too long"],
  ] as const)("%j as %s is refused in words", (text, dimension, words) => {
    const read = parseQuantity(text, dimension);
    expect(read.ok ? "accepted" : tellFault(read.message)).toContain(words);
  });

  it("is told what one looks like, as the field shows it", () => {
    const dimensions: Dimension[] = ["length", "force", "mass", "massPerLength", "angle", "time", "stiffness", "share"];
    for (const dimension of [...dimensions, "position", "ratio", "count"] as const) {
      const read = parseQuantity("", dimension);
      expect(read.ok ? "" : tellFault(read.expected)).toContain(exampleText(dimension));
    }
  });
});

describe("a file that is not a rig", () => {
  it("is told from a rig when it is not JSON, with the line of the trouble", () => {
    expect(only('{\n "secondline": "rig/1",\n oops }')).toContain("not JSON");
    expect(only('{\n "secondline": "rig/1",\n oops }')).toContain("line 3");
  });
  it("is told from a rig when it is another program's JSON, or a newer version's", () => {
    expect(only("[1, 2]")).toContain("not a rig");
    expect(only({ ...sound, secondline: "rig/2" })).toContain("newer version");
    expect(only({ ...sound, secondline: "wear/1" })).not.toContain("newer");
  });
  it("is told that it is too large", () => {
    expect(only(" ".repeat(MAX_RIG_TEXT + 1))).toContain("too large");
  });
  it("has its numbers told that cannot be held as written", () => {
    const reading = readJson('{"a":[1e-320,0e-400,1e-400,-1e400,5],"b":1e308}', { noun: "a rig", longest: 1e6 });
    expect(reading.issues.map(({ path, message }) => [path, tellFault(message)])).toEqual([
      ["a[0]", "1e-320 is too small a number to be computed with."],
      ["a[2]", "1e-400 is too small a number to be computed with."],
      ["a[3]", "-1e400 is too large a number to be computed with."],
    ]);
  });
});

describe("faults between fields", () => {
  const WORDS: Readonly<Record<string, string>> = {
    "a tension above the webbing's strength": "rated strength of the webbing",
    "an end weaker than the tension": "holds less",
    "a weblock that slips before the line is tight": "slip before",
    "sections longer than the line": "longer than the line",
    "two sections without a length": "Only one section",
    "no section to take up the rest": "takes up the rest",
    "a walker outside the span": "too large",
    "a backup shorter than the span by its slack": "shorter than the distance",
    "a backup shorter than the span by its length": "shorter than the 60 m",
    "a backup of neither slack nor length": "missing",
    "a backup of both slack and length": "both",
    "a connection beyond the line": "too large",
    "two connections at one place": "same place",
    "a tape at a connection": "same place",
    "ground that ends before anchor B": "ends before anchor B",
    "ground that ends two centimetres before it": "ends before anchor B",
    "ground that ends at anchor B but for less than a centimetre, and above it": "above the anchor",
    "ground that begins beyond anchor A": "begins beyond anchor A",
    "ground as high as the line": "as high as the line",
    "ground above an anchor": "above the anchor",
    "ground that goes back": "from point to point",
    "wear beyond its section": "only 59 m long",
    "wear before its section": "beyond the end",
    "wear that ends before it begins": "ends before",
    "legs that are straight": "too large",
    "two bolts without the angle of their legs": "missing",
    "an angle with one bolt": "One rock point",
    "two rings of one name": "same name",
    "a leash too short to stand up": "nobody could stand",
    "an unknown webbing": 'Did you mean "polyester-webbing-25"?',
    "an unknown key": 'Did you mean "slack"?',
    "a key of another kind of wear": "does not belong",
    "an end of no known kind": 'Did you mean "weblock"?',
    "a knot that is not named": "missing",
    "a webbing of one's own that lacks its curve": "missing",
    "a curve that falls": "tension must grow",
    "a curve whose end is flat, so that higher loads would be hidden": "the end is flat",
    "a curve with a step that no fibre makes": "points of the curve that are too close",
    "a rope as light as a thread and as stiff as a cable": "so stiff for its mass",
    "a curve that does not begin at rest": "begins at no stretch",
    "a webbing that is like itself": "like itself",
    "a webbing of one's own under a built-in id": "built in",
    "a basis of no known kind": "A basis is written as",
    "hardware for a backup that is not there": "no backup that could hang on it",
  };

  it.each(FAULTY_RIGS)("%s is told", (what, edits, path) => {
    const fault = faultAt(edits, path);
    expect(typeof fault === "string" ? fault : tellFault(fault.message)).toContain(WORDS[what]);
  });

  it("tells a file with a word of an earlier version the word that is used now", () => {
    const old = editDocument(documentOf("old-rig"), "main.sections[0].wear[0].kind", "clampTrace");
    expect(only(old)).toContain("clampMark");
  });

  it("tells marks and ids that are given twice", () => {
    expect(only({ ...sound, unconfirmed: ["span", "span"] })).toBe('"span" is marked twice.');
    const [issue] = repeatedRigIds([
      { id: "gap", name: "one" },
      { id: "gap", name: "copy" },
    ]);
    expect(tellFault(issue!.message)).toContain('"one" and "copy" have the same id');
  });
});

describe("hidden characters", () => {
  const CASES: readonly [string, string][] = [
    ["\x1b[2K", "a control character (U+001B)"],
    ["\r", "a line break (U+000D)"],
    ["\n", "a line break (U+000A)"],
    ["\t", "a tab (U+0009)"],
    ["\x7f", "a control character (U+007F)"],
    ["\x9b", "a control character (U+009B)"],
    ["\ufeff", "a space without width (U+FEFF)"],
    ["\u061c", "a mark that turns the direction of writing (U+061C)"],
    ["\u200f", "a mark that turns the direction of writing (U+200F)"],
    ["\u2028", "a line break (U+2028)"],
    ["\u202e", "a mark that turns the direction of writing (U+202E)"],
    ["\u2069", "a mark that turns the direction of writing (U+2069)"],
    ["\ud83d", "half a character (U+D83D)"],
  ];

  it.each(CASES)("%j are told, in words: %s", (hidden, words) => {
    const message = `There is ${words} in this text. Delete it, or type the text anew.`;
    expect(only(editDocument(sound, "name", `Ring${hidden}1`))).toBe(message);
    const typed = readField("rings[0].name", `Ring${hidden}1`);
    expect(typed.ok ? "" : tellFault(typed.issue.message)).toBe(message);
  });
});

describe("a wear record, and an assessment with it", () => {
  const rig = () => {
    const reading = readRig(sound);
    if (!reading.ok) throw new Error("the sound rig is not readable");
    return reading.rig;
  };
  const record = (entries: readonly object[], parts: readonly object[] = []) => {
    const webbing = { id: "w", name: "webbing", mark: "red", length: "80 m", entries };
    const reading = readWearRecord({ secondline: "wear/1", name: "record", webbings: [webbing], parts });
    return reading.ok ? reading.record : reading.issues.map(({ message }) => tellFault(message)).join(" ");
  };

  it("tells which events there are where one is not known", () => {
    expect(record([{ date: "2025-03-01", event: "fell" }])).toContain("one of rigged, moved, takenDown");
    const part = { rig: "gap", part: "leash", entries: [{ date: "2025-03-01", event: "fell" }] };
    expect(record([], [part])).toContain("one of putUp, takenDown");
  });

  it("tells a day that is none, a record without one, and a part that the rig does not have", () => {
    const wear = record([{ date: "2025-03-01", event: "wet", wet: true }]);
    if (typeof wear === "string") throw new Error(wear);
    const told = (assessment: Omit<Assessment, "rig">) => {
      const reading = assess({ rig: rig(), ...assessment });
      return reading.ok ? "" : tellFault(reading.issues[0]!.message);
    };
    expect(told({ wear })).toContain("say which day");
    expect(told({ on: "2026-02-30" })).toContain("2026-02-30");
    expect(told({ wear, on: "2020-01-01" })).toContain("before the wear record begins");
    expect(told({ wear, on: "2026-01-01" })).toContain("Give this rig's record");
    expect(told({ judgements: [{ part: "ring.3", reason: "old" }] })).toMatch(/no part "ring.3".*leash/);
  });
});
