/** Folders of a package import one another one way only: whoever reads one knows what it can rest on. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const IMPORT = /(?:from |import\(|import |new URL\()"(\.[^"?]+)/g;

const PACKAGES = ["packages", "apps"].flatMap((group) =>
  readdirSync(join(ROOT, group)).map((name) => join(group, name)),
);

/** Folders that each folder of a package imports from; a file that lies in `src` itself stands for itself. */
function importsOf(name: string): ReadonlyMap<string, ReadonlySet<string>> {
  const src = join(ROOT, name, "src");
  const folderOf = (path: string): string => relative(src, path).split(sep)[0]!;
  const found = new Map<string, Set<string>>();
  const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((file) => /\.tsx?$/.test(file));
  for (const file of files.map((one) => join(src, one))) {
    const own = folderOf(file);
    const known = found.get(own) ?? new Set<string>();
    found.set(own, known);
    for (const [, path] of readFileSync(file, "utf8").matchAll(IMPORT)) {
      const other = folderOf(normalize(join(dirname(file), path!)));
      if (other !== own && other !== "..") known.add(other);
    }
  }
  return found;
}

/** A way from a folder back to itself; undefined where there is none. */
function circle(imports: ReadonlyMap<string, ReadonlySet<string>>): readonly string[] | undefined {
  const done = new Set<string>();
  const walk = (folder: string, way: readonly string[]): readonly string[] | undefined => {
    if (way.includes(folder)) return [...way.slice(way.indexOf(folder)), folder];
    if (done.has(folder)) return undefined;
    for (const next of imports.get(folder) ?? []) {
      const found = walk(next, [...way, folder]);
      if (found) return found;
    }
    done.add(folder);
    return undefined;
  };
  for (const folder of imports.keys()) {
    const found = walk(folder, []);
    if (found) return found;
  }
  return undefined;
}

describe("no folder is imported by one that it imports, over however many others", () => {
  it.each(PACKAGES)("in %s", (name) => {
    expect(circle(importsOf(name))).toBeUndefined();
  });

  it("what is looked at are folders and what they import", () => {
    expect(importsOf("apps/sandbox").get("page")?.has("design")).toBe(true);
    expect(importsOf("packages/engine").get("run")?.has("kernel")).toBe(true);
  });

  it("a circle of three would be found", () => {
    const imports = new Map([
      ["a", new Set(["b"])],
      ["b", new Set(["c"])],
      ["c", new Set(["a"])],
    ]);
    expect(circle(imports)).toEqual(["a", "b", "c", "a"]);
  });
});
