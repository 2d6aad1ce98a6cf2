/** What must be loaded before the first words are on the page. */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";

const dist = fileURLToPath(new URL("../../apps/sandbox/dist/", import.meta.url));

/** A script and the ones it imports statically. */
function withImports(...first: string[]): Set<string> {
  const queue = [...first];
  const seen = new Set<string>();
  for (let name = queue.pop(); name !== undefined; name = queue.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const text = readFileSync(dist + name, "utf8");
    for (const [, next] of text.matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g))
      queue.push(`assets/${next}`);
  }
  return seen;
}
const compressed = (scripts: Iterable<string>) =>
  [...scripts].reduce((sum, name) => sum + gzipSync(readFileSync(dist + name)).length, 0);

it("is less than 350 kB of compressed script, without the scene in space", () => {
  const html = readFileSync(`${dist}index.html`, "utf8");
  const asked = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((match) => match[1]!);
  const scripts = withImports(...asked);
  expect(asked.length).toBeGreaterThan(0);
  expect(compressed(scripts)).toBeLessThan(350_000);
  expect([...scripts].some((name) => readFileSync(dist + name, "utf8").includes("WebGLRenderer"))).toBe(false);
});

it("adds less than 90 kB for the computing thread, which is asked for when the page stands", () => {
  const threads = readdirSync(`${dist}assets`).filter((name) => /^sim\.worker-.*\.js$/.test(name));
  expect(threads).toHaveLength(1);
  expect(compressed(withImports(`assets/${threads[0]}`))).toBeLessThan(90_000);
});

it("asks no other server for anything", () => {
  const files = readdirSync(`${dist}assets`).filter((name) => name.endsWith(".css") || name.endsWith(".html"));
  const foreign = [...files.map((name) => `assets/${name}`), "index.html"].filter((name) =>
    /(?:url\(|src=|href=)["']?https?:/.test(readFileSync(dist + name, "utf8")),
  );
  expect(foreign).toEqual([]);
});
