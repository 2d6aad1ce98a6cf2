import { expect, it } from "vitest";
import { englishWords } from "../src/index.ts";
import { filled } from "../src/language.ts";

it("a choice by number may hold values of its own", () => {
  expect(englishWords.say("verdict.also", { count: 1 })).toBe("One more part is thin.");
  expect(englishWords.say("verdict.also", { count: 3 })).toBe("3 more parts are thin.");
});

it("what is put in is taken as it is, braces and bars too", () => {
  expect(filled("{part} holds.", { part: "{count|a|b}" })).toBe("{count|a|b} holds.");
});

it("no sentence is left with a hole in it", () => {
  const values = new Proxy({} as Record<string, string | number>, { get: (_, name) => (name === "count" ? 2 : "x") });
  for (const sentence of Object.values(englishWords.language.sentences)) {
    expect(filled(sentence, values)).not.toMatch(/[{}|]/);
  }
});
