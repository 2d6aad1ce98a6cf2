/**
 * The examples of docs/RECIPES.md, run. Each piece of code on that page stands here word for word; the last test says so.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { GENERIC_STOCKS, partIds, readRig } from "@secondline/rig";
import {
  addEventKind,
  assessRig,
  executeRun,
  parseWhatIf,
  rigStrengths,
  titleOf,
  type WhatIf,
  whatIfKey,
  whatIfSet,
} from "@secondline/scenarios";
import { CONSTANTS, partStrengths, readWearRecord } from "@secondline/strength";
import { createWords, english, englishWords } from "@secondline/words";
import { expect, it } from "vitest";
import { demoRig } from "../support/demoRigs.ts";

const rig = demoRig("sound-rig.json");
const demo = (name: string) => JSON.parse(readFileSync(new URL(`../../demo-data/${name}`, import.meta.url), "utf8"));

it("a what-if", () => {
  const remove = addEventKind({
    kind: "nightFall",
    class: () => "expected",
    key: ({ at }) => `night@${at}`,
    parse: (key) => (/^night@0\.\d+$/.test(key) ? { kind: "nightFall", at: Number(key.slice(6)) } : undefined),
    title: () => ({ key: "event.nightFall", english: "Leash fall in the dark", values: {} }),
    missing: () => undefined,
    before: () => undefined,
    fallBefore: () => undefined,
    problem: () => ({ standing: true, letGo: 0.6 }),
    scatters: () => ["letGo"],
    space: () => undefined,
    takesAway: () => [],
    shifted: (event, place) => ({ ...event, at: event.at + place }),
    seeds: () => [{ kind: "nightFall", at: 0.5 }],
  });
  const event = parseWhatIf("night@0.5")!;
  expect(whatIfSet({ rig, weakPlaces: [], size: "full" }).map(whatIfKey)).toContain("night@0.5");
  expect(titleOf(event, rig)).toMatchObject({ english: "Leash fall in the dark" });
  expect(run(event).ok).toBe(true);
  remove();
  expect(parseWhatIf("night@0.5")).toBeUndefined();
});

function run(event: WhatIf) {
  const work = executeRun(rig, rigStrengths(rig, assessRig(rig).tests), { event, draw: {}, accuracy: "quick" });
  let step = work.next();
  while (!step.done) step = work.next();
  return step.value;
}

it("a part", () => {
  const strengths = partStrengths(rig);
  expect(partIds(rig).every((id) => strengths.some((part) => part.id === id))).toBe(true);
  const { loads, webbing } = good(run({ kind: "leashFall", at: 0.5 }));
  for (const part of strengths) {
    expect(part.id in loads || part.id in webbing, part.id).toBe(true);
    expect(englishWords.partName(rig, part.id as never)).not.toBe("");
  }
});

function good(result: ReturnType<typeof run>) {
  if (!result.ok) throw new Error(result.trouble.reason);
  return result;
}

it("a kind of wear", () => {
  const record = demo("old-rig-wear.json");
  const entries = record.webbings[0].entries;
  entries.push({ date: "2026-11-01", event: "wet", wet: true });
  expect(readWearRecord(record).ok).toBe(true);
  entries.push({ date: "2026-11-01", event: "soaked", wet: true });
  expect(readWearRecord(record).ok).toBe(false);
});

it("a material", () => {
  const ours = { id: "ours", like: "polyester-webbing-25", strength: "27 kN", basis: "tested: own pulls" };
  const { main, ...rest } = demo("sound-rig.json");
  const section = { ...main.sections[0], stock: "ours" };
  const read = readRig({ ...rest, main: { ...main, sections: [section] }, stocks: [ours] });
  expect(read.ok && read.rig.main.sections[0]!.stock.rated.strength).toBe(27_000);
  expect(GENERIC_STOCKS.has("ours")).toBe(false);
});

it("a factor with its source", () => {
  const row = CONSTANTS.get("bolt.axial");
  expect(row).toMatchObject({ unit: "kN", unsafe: "higher", status: "published" });
  expect(row!.meaning).toContain("EN 959:2018");
});

it("a language", () => {
  const shouting = Object.fromEntries(Object.entries(english.sentences).map(([key, text]) => [key, upper(text)]));
  const words = createWords({ code: "en", sentences: shouting as typeof english.sentences });
  expect(words.say("head.follows")).toBe(englishWords.say("head.follows").toUpperCase());
});

/** Capitals for everything but the values in braces. */
const upper = (text: string) =>
  text.replace(/\{[^}]*\}|[^{]+/g, (piece) => (piece.startsWith("{") ? piece : piece.toUpperCase()));

it("stands on the page word for word", () => {
  const here = readFileSync(fileURLToPath(import.meta.url), "utf8").replaceAll(/^ +/gm, "");
  const page = readFileSync(new URL("../../docs/RECIPES.md", import.meta.url), "utf8");
  const pieces = [...page.matchAll(/```ts\n(.*?)```/gs)].map(([, piece]) => piece!.replaceAll(/^ +/gm, ""));
  expect(pieces.length).toBe(6);
  for (const piece of pieces) expect(here).toContain(piece);
});
