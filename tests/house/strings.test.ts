/**
 * Whatever page, terminal, figures and report say comes from the words: no string that somebody reads stands in their code, and no
 * number is written there. Rig and strengths tell facts; what they still bring along in English is listed here, file by file.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { BROUGHT, KEPT, NO_WORDS, TESTS_IN_ENGLISH } from "../support/keptStrings.ts";
import { readableIn } from "../support/readable.ts";

const root = new URL("../../", import.meta.url);
const FOLDERS = [
  "apps/sandbox/src",
  "apps/cli/src",
  "packages/figures/src",
  "packages/workbench/src",
  "packages/report/src",
  "packages/words/src",
];
/** Packages below the words. An error that they throw is a programmer's: what a user can cause they hand back as a fact. */
const BELOW = ["packages/rig/src", "packages/strength/src"];

const isKept = (file: string, text: string): boolean =>
  NO_WORDS.some((one) => one.test(text)) || KEPT.some(([where, what]) => where.test(file) && what.test(text));

const filesIn = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts") && !/english(?:Later)?\.ts$/i.test(name))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .sort();

const isBelow = (file: string): boolean => BELOW.some((folder) => file.startsWith(folder));

const strayIn = (file: string, source: string): readonly string[] =>
  readableIn(source, file.endsWith("x"))
    .filter(({ text, thrown }) => !isKept(file, text) && !(thrown && isBelow(file)))
    .map(({ line, text }) => `${file}:${line} ${text}`);

/** Where digits are made that nobody reads as they are: of drawings, of files, of addresses, of what is typed, and of the language itself. */
const OWN_DIGITS: readonly RegExp[] = [
  /\/lessons\/rigs\.ts$/,
  /\/link\/link\.ts$/,
  /\/time\/(?:csv|validLanguage|RangeFields)\.tsx?$/,
  /\/question\/PlaceFields\.tsx$/,
  /\/wear\/(?:entryEdits|strengthCurve)\.tsx?$/,
  /\/sketch\/rigSketch\.ts$/,
  /figures\/src\/ink\/svgPath\.ts$/,
  /report\/src\/(?:elevation|teardownSheet|forcePlot)\.ts$/,
  /words\/src\/(?:dates|lists|quantity)\.ts$/,
];

/** A number made into a text without the language. One that is rounded and handed on as a number, or to the language, is none. */
const UNSPOKEN =
  /(?<!(?:Number|local)\([\w.()[\]! */+-]*)\.(?:toFixed|toPrecision)\(|toLocale(?:Date|Time)?String|\bIntl\./;

describe("a number that somebody reads", () => {
  it.each(FOLDERS)("is written by the language in %s", (folder) => {
    const unspoken = filesIn(folder)
      .filter((file) => !OWN_DIGITS.some((one) => one.test(file)))
      .flatMap((file) =>
        readFileSync(new URL(file, root), "utf8")
          .split("\n")
          .flatMap((line, i) => (UNSPOKEN.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [])),
      );
    expect(unspoken).toEqual([]);
  });
});

/** Where a list is joined that nobody reads, or that is typed or written as it stands. */
const OWN_LISTS: readonly RegExp[] = [
  /\/(?:rigSketch|plainSide|tensionColour|forcePlot|looks|csv|terminal)\.ts$/,
  /\/(?:testGroups|logTable)\.ts$/,
  /\/newRig\/(?:places|readAnswers)\.ts$/,
  /words\/src\/teardownWords\.ts$/,
];

describe("a list that somebody reads", () => {
  it.each(FOLDERS)("is joined by the language in %s", (folder) => {
    const plain = filesIn(folder)
      .filter((file) => !OWN_LISTS.some((one) => one.test(file)))
      .flatMap((file) =>
        readFileSync(new URL(file, root), "utf8")
          .split("\n")
          .flatMap((line, i) =>
            /\.join\("(?:, |; | and | or )"\)/.test(line) ? [`${file}:${i + 1} ${line.trim()}`] : [],
          ),
      );
    expect(plain).toEqual([]);
  });
});

describe("a string that somebody reads", () => {
  it.each(FOLDERS)("stands nowhere in %s", (folder) => {
    const stray = filesIn(folder).flatMap((file) => strayIn(file, readFileSync(new URL(file, root), "utf8")));
    expect(stray).toEqual([]);
  });

  it.each(BELOW)("stands in no file of %s but those that bring texts along, and not once more in these", (folder) => {
    const files = filesIn(folder).filter((file) => !TESTS_IN_ENGLISH.test(file));
    const brought = files.flatMap((file) => {
      const { length } = strayIn(file, readFileSync(new URL(file, root), "utf8"));
      return length === 0 ? [] : [`${file}: ${length}`];
    });
    const listed = BROUGHT.filter(([file]) => file.startsWith(folder));
    expect(brought).toEqual(listed.map(([file, texts]) => `${file}: ${texts}`).sort());
  });

  it("is found wherever somebody writes it", () => {
    const source = `
      import { a } from "Not a word";
      const KINDS = [{ value: "two", label: "second" }];
      export const View = ({ n }: { n: number }) => (
        <p title="Above" className="one two" aria-label={\`Part \${n}\`}>
          <Button name="Play" icon="play" /> Read me {n === 1 ? "Once more" : "twice"} {a("not a sentence yet")} {say("one.two", { three: n ? "four" : "" })}
        </p>
      );`;
    expect(strayIn("View.tsx", source).map((one) => one.replace(/^\S+ /, ""))).toEqual([
      "second",
      "Above",
      "Part {}",
      "Play",
      "Read me",
      "Once more",
      "twice",
      "not a sentence yet",
      "four",
    ]);
  });

  it("is found in what the terminal writes", () => {
    const source = `
      command.option("--out <file>", "write it there").option(\`--wear \${file}\`, sayHelp("one.two"));
      throw new CommandFailure(2, [\`\${file}: not good\`]);
      const columns = [{ head: "quantity", align: "right" }, { head: "5 %" }];
      print(parts.join(" and "));
      const kindOf = (n: number): Kind => (n > 1 ? "many" : "one");
      const wordOf = (n: number) => (n > 1 ? "several" : "single");
      function nameOf(one: Part): string {
        if (one.wide) return "webbing";
        throw new Error("no such part");
      }`;
    expect(strayIn("command.ts", source).map((one) => one.replace(/^\S+ /, ""))).toEqual([
      "--out <file>",
      "write it there",
      "{}: not good",
      "quantity",
      " and ",
      "several",
      "single",
      "webbing",
      "no such part",
    ]);
  });

  it("is found in a package below the words, but in an error that a programmer makes", () => {
    const source = `
      export const reasonOf = (few: boolean) => (few ? "scanty" : "They failed in different ways");
      export const end: EndKind = { kind: "knot", title: "Knotted end", at: "backup.end" };
      export function lengthOf(line?: Line): number {
        if (!line) throw new Error("a line was to be there");
        return issue({ message: "The line is too long." });
      }`;
    for (const folder of BELOW)
      expect(strayIn(`${folder}/planted.ts`, source).map((one) => one.replace(/^\S+ /, ""))).toEqual([
        "scanty",
        "They failed in different ways",
        "Knotted end",
        "The line is too long.",
      ]);
  });
});
