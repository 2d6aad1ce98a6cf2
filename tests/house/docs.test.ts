/** What the pages say: their links lead somewhere, their commands exist, their examples are read by the program. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { readJson } from "@secondline/rig";
import { CHANNELS, parseWhatIf, readErrata, readPlan, readRecording } from "@secondline/scenarios";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));
const text = (name: string) => readFileSync(join(root, name), "utf8");

const folders = [
  "",
  "docs",
  "docs/cluster",
  "docs/decisions",
  "packages/engine",
  "packages/statistics",
  "packages/rig",
  "packages/strength",
  "demo-data",
];
const pages = folders.flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith(".md"))
    .map((name) => join(folder, name)),
);
/** Fenced pieces of a page in a language. */
const examples = (page: string, language: string) =>
  [...text(page).matchAll(new RegExp(`\`\`\`${language}\\r?\\n(.*?)\`\`\``, "gs"))].map(([, piece]) => piece!);

describe("every page", () => {
  it.each(pages)("%s has links that lead to files, and to headings that are there", (page) => {
    const prose = text(page)
      .replace(/```.*?```/gs, "")
      .replace(/`[^`\n]*`/g, "");
    for (const [, link] of prose.matchAll(/\]\(([^)\s]+)\)/g)) {
      if (/^(https?|mailto):/.test(link!)) continue;
      const [file = "", heading] = link!.split("#");
      const target = file === "" ? join(root, page) : join(root, dirname(page), file);
      expect(existsSync(target), `${page}: ${link}`).toBe(true);
      if (heading === undefined) continue;
      const headings = [...readFileSync(target, "utf8").matchAll(/^#+ (.*)$/gm)].map(([, one]) => anchorOf(one!));
      expect(headings, `${page}: ${link}`).toContain(heading);
    }
  });
});

const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, "")
    .replaceAll(" ", "-");

describe("commands in the pages", () => {
  const cli = text("apps/cli/src/cli.ts");
  const commands = new Set([...cli.matchAll(/\.command\("(\w+)"\)/g)].map(([, name]) => name));
  const options = new Set([...cli.matchAll(/--[a-z-]+/g)].map(([option]) => option));
  const lines = pages
    .flatMap((page) => examples(page, "sh"))
    .flatMap((piece) => piece.split("\n"))
    .map((line) => line.replace(/#.*$/, "").trim())
    .filter((line) => /\bsecondline (-- )?[a-z]/.test(line));

  it("exist, with their options and the files of the demo", () => {
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) {
      const words = line.slice(line.indexOf("secondline")).replace("secondline -- ", "secondline ").split(/\s+/);
      expect(commands, line).toContain(words[1]);
      for (const word of words.slice(2)) {
        if (word.startsWith("--")) expect(options, line).toContain(word.split("=")[0]);
        if (/^(demo-data|tests)\//.test(word)) expect(existsSync(join(root, word)), line).toBe(true);
      }
    }
  });

  it("scripts that the developers' page lists are those of the package, and each has its line", () => {
    const scripts = Object.keys(JSON.parse(text("package.json")).scripts);
    const told = [...text("DEVELOPERS.md").matchAll(/^\| `npm (?:run )?([\w:]+)`/gm)].map(([, name]) => name!);
    expect([...told].sort()).toEqual([...scripts].sort());
  });
});

describe("the hosted checks", () => {
  const steps = [...text(".github/workflows/ci.yml").matchAll(/^\s+- run: (.*)$/gm)].map(([, command]) => command!);
  const script = text(".ci/run")
    .split(/\r?\n/)
    .filter((line) => line.startsWith("exec "))
    .map((line) => line.replace("exec ", ""));

  it("do what .ci/run does, and nothing besides", () => {
    expect(script).toEqual(["node go.mjs ci"]);
    expect(steps).toEqual(script);
  });

  it("run on three systems, and from the least version of Node that the packages allow", () => {
    const workflow = text(".github/workflows/ci.yml");
    const of = (key: string) =>
      [...workflow.matchAll(new RegExp(`\\b${key}: ([\\w-]+)`, "g"))].map(([, value]) => value!);
    expect(new Set(of("os"))).toEqual(new Set(["ubuntu-latest", "macos-latest", "windows-latest"]));
    const least = /(\d+)/.exec(JSON.parse(text("package.json")).engines.node)![1];
    expect(Math.min(...of("node").map(Number))).toBe(Number(least));
  });
});

describe("examples in the pages", () => {
  it("of a study is a plan", () => {
    const [plan] = examples("docs/cluster/FORMAT.md", "json");
    const reading = readJson(plan!, { noun: "a plan", longest: 1e6 });
    expect(reading.parsed && readPlan(reading.document).ok).toBe(true);
  });

  it("of a recording begins one, and its table has every place of a load cell", () => {
    const [head] = examples("docs/MEASURED.md", "csv");
    const more = Array.from(
      { length: 200 },
      (_, k) => `${((k + 2) / 2000).toFixed(4)},${(2 * Math.sin(k / 64)).toFixed(3)}`,
    );
    const reading = readRecording(`${head}${more.join("\n")}`);
    expect(reading.ok ? [] : reading.faults).toEqual([]);
    if (reading.ok) expect([parseWhatIf(reading.fall.event)?.kind, reading.fall.mass]).toEqual(["leashFall", 82]);
    for (const channel of CHANNELS) expect(text("docs/MEASURED.md")).toContain(`\`${channel}\``);
  });

  it("of a known error is one", () => {
    expect(readErrata(JSON.parse(examples("SECURITY.md", "json")[0]!))).toHaveLength(1);
  });
});
