import { tellFault } from "@secondline/words/faults";
import { expect, it } from "vitest";
import { issueLines } from "../src/files/issueLines.ts";
import { makeReport } from "../src/files/makeReport.ts";
import { readRigFile } from "../src/files/readRigFile.ts";
import { demoDocument, read } from "./demoDocument.ts";
import { fell, handSandbox, searched } from "./handRunner.ts";

const file = (text: string, size = text.length) => ({ name: "rig.json", size, text: async () => text });

it("does not even read a file of 200 MB", async () => {
  const huge = { name: "film.mp4", size: 200e6, text: () => Promise.reject(new Error("must not be read")) };
  const opened = await readRigFile(huge, read);
  expect(!opened.ok && opened.text).toBe(
    "film.mp4 is 200 MB. A rig file is a few kilobytes of text, so this is something else.",
  );
});

it.each([
  ["no JSON", "span = 60 m", /not JSON/],
  ["another program's JSON", '{"version": 3, "nodes": []}', /another program/],
  ["a rig of a newer version", '{"secondline": "rig/2"}', /newer version/],
])("says what is wrong with %s", async (_case, text, words) => {
  const opened = await readRigFile(file(text), read);
  expect(opened.ok).toBe(false);
  expect(!opened.ok && opened.issues.map(({ message }) => tellFault(message)).join(" ")).toMatch(words);
});

it("lists every fault of a rig with its path", async () => {
  const document = { ...demoDocument(), span: "-60 m", walker: { mass: "80 parsecs" } };
  const opened = await readRigFile(file(JSON.stringify(document)), read);
  expect(!opened.ok && opened.issues.map(({ path }) => path)).toEqual(["span", "walker.mass"]);
});

it("a file with very many faults says how many there are and lists the first", async () => {
  const keys = Array.from({ length: 10_000 }, (_, i) => `"k${i}":0`).join(",");
  const text = JSON.stringify(demoDocument()).replace("{", `{${keys},`);
  const opened = await readRigFile({ name: "rig.json", size: text.length, text: async () => text }, read);
  if (opened.ok) throw new Error("it was opened");
  expect(opened.text).toContain("10000 things are wrong in it");
  expect(issueLines(opened)).toHaveLength(101);
  expect(issueLines(opened).at(-1)).toBe("… and 9,900 more");
});

it("a report waits for the whole search, and is not made of a rig that has changed meanwhile", async () => {
  const { runner, sandbox, state, settled } = handSandbox(demoDocument());
  const saved: string[] = [];
  const ask = () => makeReport(sandbox, async ({ verdict }) => void saved.push(verdict));
  const texts = () => state().session.notices.map(({ tone, text }) => `${tone}: ${text}`);
  void sandbox.actions.runNow();
  runner.runs[0]!.answer(fell("a run"));
  await settled();
  const asked = ask();
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  sandbox.actions.finishEdit();
  runner.studies.at(-1)!.answer(searched("open", 12));
  await asked;
  expect(saved).toEqual([]);
  expect(texts().at(-1)).toMatch(/^fault: /);
  const again = ask();
  await settled();
  runner.studies.at(-1)!.answer(searched("open", 12));
  await settled();
  runner.studies.at(-1)!.answer(searched("holds"));
  await again;
  expect(saved).toEqual(["holds"]);
});
