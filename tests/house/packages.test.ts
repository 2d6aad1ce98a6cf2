/** Packages of others: each is known by its hash, under a licence that may be passed on, and named in what is built. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
// @ts-expect-error a plain script of the build
import { noticesOf, OF_THE_SERVICE_WORKER, packagesOf } from "../../scripts/notices.mjs";

interface Locked {
  readonly version?: string;
  readonly link?: boolean;
  readonly integrity?: string;
  readonly license?: string;
}
const root = new URL("../../", import.meta.url);
const lock: { readonly packages: Readonly<Record<string, Locked>> } = JSON.parse(
  readFileSync(new URL("package-lock.json", root), "utf8"),
);
const installed = Object.entries(lock.packages).filter(([path, { link }]) => path.includes("node_modules/") && !link);

/** May be passed on with the program: permissive, and for fonts. */
const PASSED_ON = ["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "OFL-1.1", "BlueOak-1.0.0"];
/** May be used to build and test it besides. */
const USED = [...PASSED_ON, "MPL-2.0", "CC-BY-4.0", "MIT OR Apache-2.0", "(MIT OR CC0-1.0)"];
/** Says its licence in a file, not in its manifest. */
const UNSAID: readonly string[] = ["node_modules/jstat"];

describe("the lock file", () => {
  it("has the hash of every package", () => {
    expect(installed.length).toBeGreaterThan(400);
    expect(installed.filter(([, { integrity }]) => !/^sha512-/.test(integrity ?? "")).map(([path]) => path)).toEqual(
      [],
    );
  });

  it("has no package under a licence that nobody has looked at", () => {
    const other = installed.filter(([path, { license }]) => !USED.includes(license ?? "") && !UNSAID.includes(path));
    expect(other.map(([path, { license }]) => `${path}: ${license}`)).toEqual([]);
  });
});

describe.each([
  ["apps/sandbox", OF_THE_SERVICE_WORKER as readonly string[]],
  ["apps/cli", []],
])("what %s contains", (workspace, besides) => {
  const packages: readonly { name: string; version: string; licence: string }[] = packagesOf(workspace, besides);
  const text: string = noticesOf(workspace, besides);

  it("may all be passed on, and is named with its licence", () => {
    expect(packages.length).toBeGreaterThan(10);
    for (const { name, version, licence } of packages) {
      expect(PASSED_ON, name).toContain(licence);
      expect(text).toContain(`${name} ${version}: ${licence}`);
    }
  });

  it("has the notices that Apache-2.0 and the fonts' licence ask for", () => {
    expect(text).toContain(readFileSync(new URL("node_modules/mathjs/NOTICE", root), "utf8").trim());
    // Both put the house's faces into the pages that they write.
    expect(text).toMatch(/SIL OPEN FONT LICENSE/i);
    expect(text.includes("workbox-core")).toBe(workspace === "apps/sandbox");
  });
});
