// The licences of others' work that a build contains, as one text: every package that a workspace depends on to run, and what those depend on.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = new URL("../", import.meta.url);
const LICENCE_FILE = /^(licen[cs]e|copying|notice)(\.(md|txt)|-[\w.]+)?$/i;
const RULE = "─".repeat(78);

const manifestIn = (path) => JSON.parse(readFileSync(new URL(`${path}/package.json`, root), "utf8"));

/** Where a package finds another, as Node looks for it; undefined when it is not installed (an optional one). */
function found(from, name, packages) {
  for (let at = from; ; at = at.replace(/\/?(node_modules\/(@[^/]+\/)?[^/]+|[^/]+)$/, "")) {
    const path = `${at === "" ? "" : `${at}/`}node_modules/${name}`;
    const entry = packages[path];
    if (entry) return entry.link ? entry.resolved : path;
    if (at === "") return undefined;
  }
}

/**
 * Packages that are part of a build, by name. `workspace`: its folder; `besides`: packages that a tool of the build puts in, which no
 * workspace names.
 */
export function packagesOf(workspace, besides = []) {
  const { packages } = JSON.parse(readFileSync(new URL("package-lock.json", root), "utf8"));
  const seen = new Set([workspace, ...besides.map((name) => `node_modules/${name}`)]);
  for (const path of seen) {
    const { dependencies = {} } = manifestIn(path);
    for (const name of Object.keys(dependencies)) {
      const at = found(path, name, packages);
      if (at === undefined) throw new Error(`${path} depends on ${name}, which is not installed`);
      seen.add(at);
    }
  }
  // A version may be there twice, in two places.
  const named = new Map(
    [...seen]
      .filter((path) => path.includes("node_modules/"))
      .map((path) => ({ path, ...manifestIn(path) }))
      .map((one) => [`${one.name} ${one.version}`, one]),
  );
  return [...named.values()]
    .sort((a, b) => a.name.localeCompare(b.name))
    .map(({ path, name, version, license, author }) => ({ path, name, version, licence: license, author }));
}

function textOf({ path, name, version, licence, author }) {
  const folder = new URL(`${path}/`, root);
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => LICENCE_FILE.test(file)) : [];
  const by = typeof author === "string" ? author : author?.name;
  const texts = files.sort().map((file) => readFileSync(new URL(file, folder), "utf8").trim());
  if (texts.length === 0) texts.push(`The package has no licence file.${by ? ` Its author: ${by}.` : ""}`);
  return [RULE, `${name} ${version}: ${licence}`, RULE, "", ...texts, ""].join("\n");
}

/** What the build adds to each package's own code, as a text. */
export function noticesOf(workspace, besides) {
  const packages = packagesOf(workspace, besides);
  const head = `Secondline is licensed under Apache-2.0. It contains the work of others, ${packages.length} packages, under the licences below.\n`;
  return [head, ...packages.map(textOf)].join("\n");
}

/** What the service worker is made of; the build's own tool brings it. */
export const OF_THE_SERVICE_WORKER = [
  "workbox-core",
  "workbox-precaching",
  "workbox-routing",
  "workbox-strategies",
  "workbox-window",
];

/** A plugin of Rollup's kind that puts the text into a build. */
export const noticesPlugin = (workspace, besides) => ({
  name: "notices",
  apply: "build",
  generateBundle() {
    this.emitFile({ type: "asset", fileName: "notices.txt", source: noticesOf(workspace, besides) });
  },
});

if (process.argv[1] === fileURLToPath(import.meta.url))
  process.stdout.write(noticesOf(process.argv[2] ?? "apps/sandbox", []));
