import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CSV_FORMATS, FORMATS, type Format, mutatedFile, readOrRefused } from "./support/mutatedFiles.ts";

const ALL = Object.keys(FORMATS) as Format[];
const JSON_FORMATS = ALL.filter((format) => !CSV_FORMATS.includes(format));

describe("a file that was changed", () => {
  it("is read, or refused in words: nothing else, whatever was changed in it", () => {
    const seen = { read: 0, refused: 0 };
    fc.assert(
      fc.property(mutatedFile, (file) => {
        seen[readOrRefused(file)]++;
      }),
      { seed: 20_261_129, numRuns: 500 },
    );
    // Both happen often enough for this to say something.
    expect(seen.read).toBeGreaterThan(10);
    expect(seen.refused).toBeGreaterThan(200);
  });

  it.each(ALL)("is read when nothing was changed: %s", (format) => {
    expect(readOrRefused({ format, text: FORMATS[format].text })).toBe("read");
  });

  const BAD: readonly [string, (text: string) => string][] = [
    ["a number too small for a computer", (text) => text.replace(/: \d+(\.\d+)?,/, ": 1e-320,")],
    ["4 MB of nesting", () => "[".repeat(4_000_000)],
    ["4 MB of nesting in groups", () => '{"a":'.repeat(800_000)],
    [
      "80,000 names that nobody knows",
      (text) => text.replace("{", `{${Array.from({ length: 80_000 }, (_, i) => `"k${i}":1`).join()},`),
    ],
    ["a name given twice", (text) => text.replace("{", '{"a":1,"a":2,')],
    ["only names given twice", () => '{"a":1,"a":2}'],
    ["nothing", () => ""],
    ["a number", () => "7"],
  ];
  it.each(BAD.flatMap(([what, make]) => JSON_FORMATS.map((format) => ({ what, format, make }))))(
    "is refused in words for $what: $format",
    ({ format, make }) => {
      const { text } = FORMATS[format];
      const changed = make(text);
      // A file without bare numbers stays as it was.
      expect(readOrRefused({ format, text: changed })).toBe(changed === text ? "read" : "refused");
    },
  );
});
