/** What a first visit loads: the page without the scene in space, and the computing thread that it starts at once. */
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

const scriptsIn = (folder: string) => readdirSync(dist + folder).filter((name) => name.endsWith(".js"));

it("is less than 350 kB of compressed script, page and computing thread together", () => {
  const html = readFileSync(`${dist}index.html`, "utf8");
  const asked = [...html.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((match) => match[1]!);
  const threads = scriptsIn("assets").filter((name) => name.startsWith("sim.worker-"));
  expect(asked.length).toBeGreaterThan(0);
  expect(threads).toHaveLength(1);
  const page = withImports(...asked);
  const thread = withImports(`assets/${threads[0]}`);
  // The thread is a program of its own: what both hold is loaded twice.
  expect(compressed(page) + compressed(thread)).toBeLessThan(350_000);
  const texts = [...page, ...thread].map((name) => readFileSync(dist + name, "utf8"));
  expect(texts.some((text) => text.includes("WebGLRenderer"))).toBe(false);
});

it("keeps every script for use without a network, also those that come when asked for", () => {
  const kept = readFileSync(`${dist}sw.js`, "utf8");
  expect(scriptsIn("assets").filter((name) => !kept.includes(`"assets/${name}"`))).toEqual([]);
});

it("asks no other server for anything", () => {
  const files = readdirSync(`${dist}assets`).filter((name) => name.endsWith(".css") || name.endsWith(".html"));
  const foreign = [...files.map((name) => `assets/${name}`), "index.html"].filter((name) =>
    /(?:url\(|src=|href=)["']?https?:/.test(readFileSync(dist + name, "utf8")),
  );
  expect(foreign).toEqual([]);
});
