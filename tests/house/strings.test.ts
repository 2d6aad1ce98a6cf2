/** Whatever page, terminal, figures and report say comes from the words: no string that somebody reads stands in their code, and no number is written there. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
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

/** What is no word in any language. */
const NO_WORDS: readonly RegExp[] = [
  // A number with its unit as a file has it, and units by themselves.
  /^[-−]?(?:[\d.,]+|(?:\{\})+)? ?(?:m|cm|mm|kN|N|s|kg|g\/m|deg|months?|years?|km\/h|k?J|kB|MB|GB|%|\/|×|·|\s)*$/,
  // Keys of sentences, and of values that they want.
  /^[a-z]\w*(?:\.\w+)+$|^\{\}(?:End|Main)$|^\{pages?\}$/,
  // Options of the terminal.
  /^(?:-h, )?--[a-z-]+(?::? \{\})?$/,
  // Paths and colours of drawings, styles, markup, queries of the page, shaders.
  /^[MmLlHhVvCcSsQqTtAaZz\d\s.,{}-]+$/,
  /^\s*<|xmlns|="|^\w+-opacity|sans-serif|\bserif\b|^(?:rgb|translate|translateX|color-mix|linear-gradient|url)\(|^position:absolute|^uniform |\bvoid main\b|^\s*@page|@font-face|^ ?\.labels \{|vec3 /,
  /^\d{3} (?:\d+|\{\})px|^\{\}px |^\(min-|^\(prefers-|^\[data-|\[role=|^defs, |^h3, h4$/,
  // Keys of a keyboard, kinds of errors, names of typefaces and this program's own.
  /^(?:Escape|Home|End|Home End|Page|PageUp|PageDown|Delete|Backspace|Enter|Space|Arrow\w*|Shift \+ ← →|Alt \+ ← →)$/,
  /^(?:QuotaExceededError|AbortError|IBM Plex Sans|Source Serif 4|Secondline|A|B)$/,
];

/** Strings of one place that nobody reads on the page, or that a file keeps as they are. */
const KEPT: readonly (readonly [file: RegExp, text: RegExp, why: string])[] = [
  [/./, /^assumed: entered without a source$/, "a basis in the rig's file"],
  [/StockForm/, /^(?:common practice|from memory)$/, "a basis in the rig's file"],
  [/./, /^every 15 m$/, "an example of what the rig's format reads"],
  [/report\/src/, /^(?:cautions all|wide small|verdict \{\}|status \{\} \{\}|sentence \{\})$/, "classes"],
  [/report\/src/, /^ &nbsp;$/, "a blank"],
  [/lessons\/rigs/, /./, "a rig's file"],
  [/ownerFields/, /^how the marked end can be told$/, "a text that the user writes over"],
  [/readWear/, /^# Invented/, "a remark in a file"],
  [/time\/csv/, /./, "heads of a table in a file"],
  [/figures\/src\/breakLog/, /fit$|^bound with|^18 of 20|^built in/, "names in a table in a file"],
  [/./, /^Example crag/, "the name of the demo record"],
  [
    /./,
    /^There is no|^There are no|^index\.html has|^playback clock|^this run has no|has(?:ve)? faults/,
    "a programmer's error",
  ],
  [/entryKinds/, /^Unknown entry/, "a programmer's error"],
  [/sheet\.ts/, /^this picture is made of pixels/, "a programmer's error"],
  [/svgPath/, /^a drawing cannot use/, "a programmer's error"],
  [
    /./,
    /^(?:type|slide|drag|move|add|side|card|weblock|entry|date) \{\}/,
    "the name of a group of steps or of an element",
  ],
  [/documentHost|GroundShort/, /^ground (?:by hand|of one number)$/, "the name of a group of steps"],
  [/matchWords/, /^ (?:none|same)$/, "values that no column is called"],
  [/time\/traces/, /^connection \{\}$/, "the id of a trace"],
  [/cli\/src\/cli\.ts/, /^secondline: \{\}$/, "the name of the program"],
  [
    /cli\/src\/help/,
    /^secondline [a-z]+(?: \w+\.(?:json|csv|html)| --[a-z]+(?: results| [\d-]+| [\w.%]+=[\w.%]+)?)+$/,
    "a command",
  ],
  [/commands\/new/, /^profile$/, "the name of an answer, as a file of answers has it"],
  [/studies\/makeRuns/, /^study \{\}$/, "the id of a lane"],
  [/cli\/src\/terminal/, /^ .\[K(?:\{\})?$/, "a terminal's own sequence"],
  [/commands\/wear/, /^A \{\} B$/, "the anchors"],
  [/studies\/lineFile/, /^not all was written$/, "an error that is told by its code"],
  [/jsonText/, /^"\{\}" is \{\}: no number\.$/, "a programmer's error"],
  [/words\/src\/language/, /^The sentence "\{\}" wants "\{\}"\.$/, "a programmer's error"],
  [/words\/src\/telling/, /^The fact "\{\}" has no sentence here\.$/, "a programmer's error"],
  [/words\/src\/teardownWords/, /^no stock$/, "a reason of the plan's, which a sentence is chosen by"],
  [/quietThree/, /^Clock: This module/, "a warning that is kept quiet"],
  [/howFar\/question/, /^(?:0|\{\}) to (?:5|\{\})$/, "an example of what is typed"],
  [/newRig\/places/, /^every \{\}/, "what the rig's format reads"],
  [/newRig\/(?:answers|template)/, /./, "names and bases in the file of a new rig"],
  [/newRig\/readAnswers/, /./, "messages of a file's check, in English as those of a rig's"],
  [/stock\/ownStock/, /^assumed: stretch/, "a basis in the rig's file"],
];

const isKept = (file: string, text: string): boolean =>
  NO_WORDS.some((one) => one.test(text)) || KEPT.some(([where, what]) => where.test(file) && what.test(text));

const filesIn = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts") && !/english(?:Later)?\.ts$/i.test(name))
    .map((name) => `${folder}/${name.replaceAll("\\", "/")}`)
    .sort();

const strayIn = (file: string, source: string): readonly string[] =>
  readableIn(source, file.endsWith("x"))
    .filter(({ text }) => !isKept(file, text))
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

describe("a string that somebody reads", () => {
  it.each(FOLDERS)("stands nowhere in %s", (folder) => {
    const stray = filesIn(folder).flatMap((file) => strayIn(file, readFileSync(new URL(file, root), "utf8")));
    expect(stray).toEqual([]);
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
      print(parts.join(" and "));`;
    expect(strayIn("command.ts", source).map((one) => one.replace(/^\S+ /, ""))).toEqual([
      "--out <file>",
      "write it there",
      "{}: not good",
      "quantity",
      " and ",
    ]);
  });
});
