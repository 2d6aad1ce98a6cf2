/** The pseudo-language: longer than English, with all that a sentence holds besides its words. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
// @ts-expect-error a plain script, shared with the page's build
import { languagePlugin } from "../../../scripts/language.mjs";
import { ENGLISH } from "../src/english.ts";
import { ENGLISH_LATER } from "../src/englishLater.ts";
import { pseudo, pseudoCatalogue } from "../src/inPseudo.ts";
import { filled } from "../src/language.ts";

const SENTENCES = { ...ENGLISH, ...ENGLISH_LATER };

it("keeps every value and every choice by number, and marks where a sentence begins and ends", () => {
  const places = (text: string) => text.match(/\{\w+\|?|[|}]/g);
  for (const [key, english] of Object.entries(SENTENCES)) {
    const said = pseudoCatalogue(SENTENCES)[key as keyof typeof SENTENCES];
    expect(places(said), key).toEqual(places(english));
    expect(said).toMatch(/^⟦.*⟧$/s);
  }
  expect(filled(pseudo("{count|one part|{count} parts} of {rig}"), { count: 3, rig: "mine" })).toBe(
    "⟦3 pááŕŕtš óóf mine⟧",
  );
});

it("is about 40 % longer", () => {
  const words = Object.values(SENTENCES).filter((text) => text.length > 20 && !text.includes("{"));
  const length = (texts: readonly string[]) => texts.join("").length;
  expect(words.length).toBeGreaterThan(50);
  const ratio = length(words.map(pseudo)) / length(words);
  expect(ratio).toBeGreaterThan(1.35);
  expect(ratio).toBeLessThan(1.45);
});

interface Plugin {
  readonly resolveId: (source: string, importer: string) => string | null;
  readonly load: (id: string) => string | null;
}

it("is one language among those that a build takes; one with files of its own takes those, and English where it has none", () => {
  const folder = join(mkdtempSync(join(tmpdir(), "secondline-language-")), "/");
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const [name, text] of [
    ["english.ts", 'export const ENGLISH = { a: "one" };'],
    ["german.ts", 'export const GERMAN = { a: "eins" };'],
    ["wearEnglish.ts", 'export const WEAR_ENGLISH = { b: "two" };'],
  ] as const)
    writeFileSync(join(folder, name), text);
  const taken = (language: string, source: string) => {
    const [plugin] = languagePlugin(language, folder) as readonly Plugin[];
    const id = plugin!.resolveId(source, join(folder, "language.ts"));
    return id === null ? "English" : plugin!.load(id);
  };
  expect(languagePlugin("English", folder)).toEqual([]);
  expect(taken("German", "./english.ts")).toContain("export { GERMAN as ENGLISH } from");
  expect(taken("German", "./wearEnglish.ts")).toBe("English");
  expect(taken("Pseudo", "./wearEnglish.ts")).toContain("export const WEAR_ENGLISH = pseudoCatalogue(");
});
