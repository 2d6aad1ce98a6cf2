/** A language holds every sentence, those of the first load and the later ones; a second one needs nothing else. */

import { readdirSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { createTableWords } from "../src/createTableWords.ts";
import { ENGLISH as FIRST } from "../src/english.ts";
import { ENGLISH_LATER } from "../src/englishLater.ts";
import { facts } from "../src/factWords.ts";
import { createWords, english, englishWords, type Language } from "../src/index.ts";
import { filled } from "../src/language.ts";
import { rigLine, rigRows, staticsText } from "../src/rigWords.ts";
import { demoRig, quickOutcome } from "./outcomes.ts";

const ENGLISH = { ...FIRST, ...ENGLISH_LATER };
const root = new URL("../../../", import.meta.url);
const sources = (folder: string): string[] =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.includes("node_modules"))
    .map((name) => readFileSync(new URL(`${folder}/${name}`, root), "utf8"));

/** Every text that may be a key: written out, or with a part that is filled in. */
function mentioned(texts: readonly string[]): (key: string) => boolean {
  const whole = new Set<string>();
  const patterns = new Set<string>();
  for (const text of texts) {
    for (const [, key] of text.matchAll(/"([\w.]+)"/g)) whole.add(key!);
    for (const [, key] of text.matchAll(/`([\w.]*\.\$\{[^}]+\}[\w.]*(?:\$\{[^}]+\})?)`/g)) patterns.add(key!);
  }
  const tests = [...patterns].map(
    (one) => new RegExp(`^${one.replace(/\$\{[^}]+\}/g, "[\\w]+").replaceAll(".", "\\.")}$`),
  );
  return (key) => whole.has(key) || tests.some((test) => test.test(key));
}

describe("the catalogue", () => {
  const keys = Object.keys(ENGLISH) as (keyof typeof ENGLISH)[];

  it("has no key that nobody says", () => {
    const texts = [
      "packages/words/src",
      "packages/figures/src",
      "packages/report/src",
      "apps/cli/src",
      "packages/workbench/src",
      "apps/sandbox/src",
    ]
      .flatMap(sources)
      .filter((text) => !text.includes("export const ENGLISH"));
    const said = mentioned(texts);
    expect(keys.filter((key) => !said(key))).toEqual([]);
  });

  it("has sentences whose braces are all closed, with nothing in them but names and choices", () => {
    for (const key of keys) {
      const names = [...ENGLISH[key].matchAll(/\{(\w+)/g)].map(([, name]) => name!);
      for (const value of [1, 2]) {
        const text = filled(ENGLISH[key], Object.fromEntries(names.map((name) => [name, value])));
        expect(`${key}: ${text}`).not.toMatch(/[{}|]/);
      }
    }
  });

  it("chooses by number, and may say the number in what it chose", () => {
    expect(englishWords.say("verdict.also", { count: 1 })).toBe("One more part is thin.");
    expect(englishWords.say("verdict.also", { count: 3 })).toBe("3 more parts are thin.");
  });

  it("refuses to leave a hole in a sentence", () => {
    expect(() => englishWords.say("single.list")).toThrow('wants "parts"');
  });
});

/** A language that marks every sentence, so that what is not in the catalogue stands out. */
const MARKED: Language = {
  code: "x",
  sentences: Object.fromEntries(
    Object.entries(english.sentences).map(([key, text]) => [key, `«${text}»`]),
  ) as Language["sentences"],
  later: Object.fromEntries(Object.entries(ENGLISH_LATER).map(([key, text]) => [key, `«${text}»`])),
};

describe("a second language", () => {
  const rig = demoRig("old-rig.json");
  let outcome: ReturnType<typeof quickOutcome>["outcome"];
  beforeAll(() => {
    outcome = quickOutcome(rig).outcome;
  });

  it("is what every face then speaks", () => {
    const words = createWords(MARKED);
    const said = [
      words.verdict(rig, outcome),
      words.taken(rig, outcome),
      words.singles(rig, outcome),
      rigLine(MARKED, rig, outcome),
      staticsText(MARKED, outcome),
      ...words.cautions(rig, outcome.cautions),
      ...facts(MARKED, rig, outcome).map(({ name }) => name),
      ...createTableWords(words.language).partsCaption(),
      ...rigRows(MARKED, rig).map(({ name }) => name),
      ...outcome.whatIfs.map((one) => words.fate(rig, one)),
      ...outcome.parts.map((part) => words.partRow(rig, part).verdict),
    ];
    for (const text of said) expect(text).toMatch(/^«.*»$/s);
  });

  it("finds every value that its sentences want", () => {
    for (const part of outcome.parts) {
      for (const text of Object.values(englishWords.partRow(rig, part)))
        expect(String(text)).not.toMatch(/[{}]|undefined|NaN/);
    }
    for (const one of outcome.whatIfs) {
      for (const text of Object.values(englishWords.whatIfRow(rig, one)))
        expect(text).not.toMatch(/[{}]|undefined|NaN/);
    }
    for (const { value } of rigRows(english, rig)) expect(value).not.toMatch(/[{}]|undefined|NaN/);
  });
});
