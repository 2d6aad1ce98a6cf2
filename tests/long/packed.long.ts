/** Engine and statistics as others get them: packed, installed without a network, run, compiled against, bundled. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
// @ts-expect-error a plain script of the build
import { PACKED, pack } from "../../scripts/pack.mjs";
import { readmeExample } from "../support/readmeExample.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "secondline-packed-"));
const consumer = join(folder, "consumer");
const names = PACKED as readonly ("engine" | "statistics")[];
const tarballs = new Map<string, string>();
const run = (command: string, args: readonly string[]) =>
  execFileSync(command, args, { cwd: consumer, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });

beforeAll(() => {
  mkdirSync(consumer);
  for (const name of names) tarballs.set(name, pack(name, folder));
  const dependencies = {
    ...Object.fromEntries(names.map((name) => [`@secondline/${name}`, `file:${tarballs.get(name)}`])),
    "pure-rand": `file:${join(root, "node_modules/pure-rand")}`,
  };
  writeFileSync(join(consumer, "package.json"), JSON.stringify({ type: "module", private: true, dependencies }));
  run("npm", ["install", "--offline", "--no-audit", "--no-fund", "--ignore-scripts"]);
  for (const name of names) writeFileSync(join(consumer, `${name}.mjs`), readmeExample(name).text);
});
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));

describe.each(names)("%s", (name) => {
  it("packs JavaScript, types, README and licence, and neither tests nor source", () => {
    const files = execFileSync("tar", ["-tzf", tarballs.get(name)!], { encoding: "utf8" })
      .trim()
      .split("\n");
    const besides = files.filter((file) => !/^package\/dist\/.*\.(js|d\.ts)$/.test(file)).sort();
    expect(besides).toEqual(["package/LICENSE", "package/README.md", "package/package.json"]);
    expect(files.filter((file) => /test/i.test(file))).toEqual([]);
    expect(files).toContain("package/dist/index.d.ts");
  });

  it("runs the example of its README, alone and in a bundle", async () => {
    const said = run(process.execPath, [`${name}.mjs`]);
    expect(said).toMatch(/\d/);
    const outDir = join(consumer, `bundle-${name}`);
    await build({
      configFile: false,
      root: consumer,
      logLevel: "error",
      build: { outDir, ssr: join(consumer, `${name}.mjs`), rolldownOptions: { output: { entryFileNames: "all.mjs" } } },
      ssr: { noExternal: true },
    });
    expect(run(process.execPath, [join(outDir, "all.mjs")])).toBe(said);
  });
});

it("has types that a strict program compiles against, their own included", () => {
  const program = [
    'import { type Recording, readProblem, simulate } from "@secondline/engine";',
    'import { fitFamily, type Observation } from "@secondline/statistics";',
    "const read = readProblem({});",
    "const recording: Recording | undefined = read.ok ? after(simulate(read.problem)) : undefined;",
    "function after(result: ReturnType<typeof simulate>) { return result.ok ? result.recording : undefined; }",
    'const sample: readonly Observation[] = [{ kind: "exact", value: 1 }];',
    "// @ts-expect-error no such family",
    'fitFamily(sample, "cauchy");',
    "export { recording };",
  ];
  writeFileSync(join(consumer, "program.ts"), program.join("\n"));
  const options = ["--strict", "--noEmit", "--module", "nodenext", "--target", "es2023"];
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  expect(run(process.execPath, [tsc, ...options, "program.ts"])).toBe("");
});
