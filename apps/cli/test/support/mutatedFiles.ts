/** Sound files of every format, changed as a slip of the hand, a bad disk or an ill will may change them. */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { breakLogOf } from "../../src/breakLogFile.ts";
import { CommandFailure, EXIT } from "../../src/failure.ts";
import { jsonOf, LARGEST_BYTES } from "../../src/input.ts";
import { problemOf } from "../../src/problemFile.ts";
import { recordingOf } from "../../src/recordingFile.ts";
import { rigOf } from "../../src/rigFile.ts";
import { wearOf } from "../../src/wearFile.ts";
import { demo, fixture } from "./command.ts";

/** A load cell's recording that nobody made. */
const RECORDING = [
  "# format: secondline/measured/1",
  "# channel: leash",
  "# what-if: fall@0.5",
  "# source: synthetic: for a test",
  "time [s],force [kN]",
  ...Array.from({ length: 100 }, (_, k) => `${k / 1000},${(2 + Math.sin(k / 20)).toFixed(3)}`),
].join("\n");

/** How each format is read, and a sound file of it. */
export const FORMATS = {
  rig: { text: readFileSync(demo("old-rig.json"), "utf8"), read: (text: string) => rigOf("rig.json", text) },
  wear: { text: readFileSync(demo("old-rig-wear.json"), "utf8"), read: (text: string) => wearOf("wear.json", text) },
  problem: {
    text: readFileSync(fixture("short-fall.json"), "utf8"),
    read: (text: string) => problemOf(jsonOf("problem.json", text, LARGEST_BYTES.problem)),
  },
  breakLog: { text: readFileSync(fixture("breaks.csv"), "utf8"), read: (text: string) => breakLogOf("log.csv", text) },
  recording: { text: RECORDING, read: (text: string) => recordingOf("fall.csv", text) },
} as const;
export type Format = keyof typeof FORMATS;

const VALUES: readonly unknown[] = [
  ...[null, true, [], {}, [[]], 0, -0, -1, 0.5, 1e-320, 1e-300, 1e308, -1e308, 2 ** 53, 1e15],
  ...["", " ", "60 m", "2.5 kN", "-1 m", "1e-320 m", "1e999 kN", "5e-324 %", "NaN m", "Infinity kN", "0x10 m", "1 m m"],
  ...[
    "\u0007",
    "\u202e60 m",
    "\ud800",
    "x\ny",
    "2026-02-30",
    "0001-01-01",
    "9999-12-31",
    "published: ",
    "x".repeat(5000),
  ],
  Array.from({ length: 300 }, () => 1),
];
const NAMES = [
  "__proto__",
  "constructor",
  "toString",
  "length",
  "kind",
  "secondline",
  "",
  "a.b",
  "a[0]",
  "\u001b",
  "k",
];
const PIECES = ["{", "}", "[", "]", ",", ":", '"', "\\", "-", "e", "9", ".", ";", "\n", "\u0000", "\u2028", "\uFEFF"];
const NUMBERS = ["1e-320", "1e-400", "1e400", "-0", "00", "1e", "0", "99999999999999999999", "-5"];

/** One change: what to do, where, and with what; numbers are taken modulo what there is. */
type Change = readonly [kind: number, at: number, what: number];

type Place = readonly [holder: Record<string, unknown>, key: string];

/** Every place of a document, as the group or list that holds it and its name there. */
function places(value: unknown): Place[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key): Place[] => [[holder, key], ...places(holder[key])]);
}

const pick = <T>(list: readonly T[], at: number): T => list[at % list.length]!;

/** Changes what the document says. */
function changeDocument(text: string, [kind, at, what]: Change): string {
  const document: unknown = JSON.parse(text);
  const all = places(document);
  if (all.length === 0) return text;
  const [holder, key] = pick(all, at);
  const [other, otherKey] = pick(all, what);
  switch (kind % 6) {
    case 0:
      holder[key] = pick(VALUES, what);
      break;
    case 1:
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
      break;
    case 2:
      if (!Array.isArray(holder)) {
        Object.defineProperty(holder, pick(NAMES, what), { value: 1, enumerable: true, configurable: true });
      }
      break;
    case 3:
      // A copy, so that nothing comes to hold itself.
      holder[key] = structuredClone(other[otherKey]);
      break;
    case 4:
      if (Array.isArray(holder)) holder.push(structuredClone(holder[Number(key)]));
      break;
    default:
      holder[key] = Array.from({ length: 40 }).reduce((inner) => [inner], holder[key]);
  }
  return JSON.stringify(document);
}

/** Changes the text, whatever it says. */
function changeText(text: string, [kind, at, what]: Change): string {
  const place = at % (text.length + 1);
  switch (kind % 6) {
    case 0:
      return text.slice(0, place) + text.slice(place + 1 + (what % 5));
    case 1:
      return text.slice(0, place) + pick(PIECES, what) + text.slice(place);
    case 2:
      return text.slice(0, place);
    case 3:
      return text.slice(0, place) + text.slice(place, place + (what % 200)) + text.slice(place);
    case 4: {
      const numbers = [...text.matchAll(/-?\d[\d.]*/g)];
      const number = numbers.length === 0 ? undefined : pick(numbers, at);
      if (!number) return text;
      return text.slice(0, number.index) + pick(NUMBERS, what) + text.slice(number.index + number[0].length);
    }
    default: {
      const lines = text.split("\n");
      const line = at % lines.length;
      return [...lines.slice(0, line), pick(lines, what), ...lines.slice(line + 1)].join("\n");
    }
  }
}

const change = fc.tuple(fc.nat(11), fc.nat(), fc.nat());

export const CSV_FORMATS: readonly Format[] = ["breakLog", "recording"];

/** A format and a file of it with one to four changes: in JSON first in what it says, then in its text. */
export const mutatedFile = fc
  .tuple(
    fc.constantFrom<Format>("rig", "wear", "problem", "breakLog", "recording"),
    fc.array(change, { minLength: 1, maxLength: 4 }),
  )
  .map(([format, changes]) => {
    const { text } = FORMATS[format];
    const inside = CSV_FORMATS.includes(format) ? [] : changes.filter(([kind]) => kind < 6);
    const outside = changes.filter((one) => !inside.includes(one));
    return { format, text: outside.reduce(changeText, inside.reduce(changeDocument, text)) };
  });

/** True when the file is read, or refused in words; throws what else is thrown. */
export function readOrRefused({
  format,
  text,
}: {
  readonly format: Format;
  readonly text: string;
}): "read" | "refused" {
  try {
    FORMATS[format].read(text);
    return "read";
  } catch (error) {
    if (!(error instanceof CommandFailure)) throw error;
    const [head, first] = error.lines;
    const inWords =
      error.exit === EXIT.input && /: (one|\d+) faults?/.test(head ?? "") && /^ {2}\S.* .*[.?]$/.test(first ?? "");
    if (!inWords) throw new Error(`refused without words: ${error.lines.join("\n")}`);
    return "refused";
  }
}
