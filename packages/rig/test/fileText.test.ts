import { describe, expect, it } from "vitest";
import { checkTexts, editDocument, MOST_ISSUES, readField, readJson, readRig, visibleText } from "../src/index.ts";
import { accepted, demoDocument, demoText, issuePaths } from "./demoRigs.ts";

const FORMAT = { noun: "a rig", longest: 10_000_000 };
const sound = demoDocument("sound-rig");
const text = demoText("sound-rig");
const issues = (source: unknown) => {
  const reading = readRig(source);
  return reading.ok ? [] : reading.issues;
};

describe("the text of a file", () => {
  it("is read with a byte order mark before it", () => {
    expect(accepted(readRig(`\uFEFF${text}`)).document).toEqual(sound);
  });

  it.each(["[", '{"a":', '[{"a":'])("of 4 MB of %s is refused before it is parsed", (piece) => {
    const reading = readJson(piece.repeat(4_000_000 / piece.length), FORMAT);
    expect(reading).toMatchObject({
      parsed: false,
      issues: [{ path: "", expected: { code: "expected.atMost", values: { most: 32 } } }],
    });
  });

  it("may hold any brackets in its texts", () => {
    expect(readJson(`{"a":"${"[".repeat(1000)}\\"[[["}`, FORMAT)).toMatchObject({ parsed: true, issues: [] });
    expect(readJson(`"${"[".repeat(4_000_000)}"`, FORMAT)).toMatchObject({ parsed: true, issues: [] });
  });

  it("is refused with the path of every name that is given twice, however it is spelt", () => {
    const reading = readJson('{"a":[{"b":1},{"b":1,"c":{},"\\u0062":2}],"a":3}', FORMAT);
    expect(reading.issues.map(({ path }) => path)).toEqual(["a[1].b", "a"]);
  });

  it("is refused with the path of every number that cannot be held as written", () => {
    const reading = readJson('{"a":[1e-320,0e-400,1e-400,-1e400,5],"b":1e308}', FORMAT);
    expect(reading.issues.map(({ path, got, message }) => [path, got, message.code])).toEqual([
      ["a[0]", "1e-320", "number.tooSmall"],
      ["a[2]", "1e-400", "number.tooSmall"],
      ["a[3]", "-1e400", "number.tooLargeToCompute"],
    ]);
  });

  it("with names that JavaScript keeps for itself is refused with their paths", () => {
    const odd = text.replace('"rings": [', '"__proto__": {"invented": true}, "constructor": 1, "rings": [');
    expect(issuePaths(odd)).toEqual(expect.arrayContaining(["__proto__", "constructor"]));
  });

  it("with very many faults lists the first and counts the others", () => {
    const unknown = Array.from({ length: 80_000 }, (_, i) => `"k${i}":0`).join(",");
    const reading = readRig(text.replace("{", `{${unknown},`));
    expect(reading).toMatchObject({ ok: false, more: 80_000 - MOST_ISSUES });
    expect(reading.ok ? 0 : reading.issues.length).toBe(MOST_ISSUES);
  });
});

describe("hidden characters", () => {
  const CASES: readonly [string, string, string][] = [
    ["\x1b[2K", "hidden.control", "U+001B"],
    ["\r", "hidden.break", "U+000D"],
    ["\n", "hidden.break", "U+000A"],
    ["\t", "hidden.tab", "U+0009"],
    ["\x7f", "hidden.control", "U+007F"],
    ["\x9b", "hidden.control", "U+009B"],
    ["\u061c", "hidden.direction", "U+061C"],
    ["\u200b", "hidden.width", "U+200B"],
    ["\ufeff", "hidden.width", "U+FEFF"],
    ["\u200f", "hidden.direction", "U+200F"],
    ["\u2028", "hidden.break", "U+2028"],
    ["\u202e", "hidden.direction", "U+202E"],
    ["\u2069", "hidden.direction", "U+2069"],
    ["\ud83d", "hidden.half", "U+D83D"],
  ];

  it.each(CASES)("%j are refused in every text of a rig: %s %s", (hidden, kind, code) => {
    for (const path of ["name", "rings[0].name", "anchorA.points[0].name", "harness.own.reason", "walker.mass"]) {
      const [issue, ...others] = issues(editDocument(sound, path, `Ring${hidden}1`));
      expect(issue).toMatchObject({
        path,
        message: { code: "text.hidden", values: { hidden: { code: kind, values: { code } } } },
      });
      expect(others).toEqual([]);
      expect(visibleText(String(issue!.got))).toBe(issue!.got);
    }
  });

  it("are refused in names that nobody knows, which messages repeat", () => {
    expect(issues({ ...sound, "a\x1bb": 1 })[0]).toMatchObject({ got: '"a\\u001bb"' });
  });

  it("are refused when they are typed into a field", () => {
    expect(readField("rings[0].name", "Ring\u202e1")).toMatchObject({ ok: false, issue: { path: "rings[0].name" } });
    expect(readField("rings[0].name", "Ring 1")).toMatchObject({ ok: true });
  });

  it("are none where writing needs them: letters of every script, joined emoji, accents", () => {
    for (const name of ["Überhang “Ø” – 60 m", "ハイライン", "خط عالٍ", "👩‍🚒 line", "ligne a\u0301 deux"])
      expect(issues({ ...sound, name })).toEqual([]);
  });

  it("lines and tabs are allowed in notes, nothing else is", () => {
    expect(issues({ ...sound, notes: "One\n\ttwo\r\nthree" })).toEqual([]);
    expect(issuePaths({ ...sound, notes: "One\rtwo" })).toEqual(["notes"]);
    expect(issuePaths({ ...sound, notes: "One\x1b[1mtwo" })).toEqual(["notes"]);
  });

  it("are written out by their code, which JSON reads as what they were", () => {
    const name = "a\x9b\u202eb\u2028";
    const shown = visibleText(JSON.stringify({ name }));
    expect(shown).toBe('{"name":"a\\u009b\\u202eb\\u2028"}');
    expect(JSON.parse(shown)).toEqual({ name });
    expect(visibleText("plain – 60 m")).toBe("plain – 60 m");
  });
});

describe("a document from elsewhere than a file", () => {
  it("that holds itself is refused", () => {
    const loop: Record<string, unknown> = { ...sound };
    loop.notes = loop;
    expect(issues(loop)).toMatchObject([{ path: "", expected: { code: "expected.atMost", values: { most: 32 } } }]);
    expect(checkTexts(loop, "a rig").bottomless).toBe(true);
  });
});
