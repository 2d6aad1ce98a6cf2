// Makes a package that others can install: JavaScript, types, README, licence, and a manifest that points at them; then its tarball.
// `node scripts/pack.mjs engine OUT` prints the tarball's path. In the repository packages are used as source; nothing there changes.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

/** Packages that stand alone: they know no other package of this repository. */
export const PACKED = ["engine", "statistics"];

const root = fileURLToPath(new URL("..", import.meta.url));
const read = (file) => JSON.parse(readFileSync(file, "utf8"));

/** Writes `out/NAME` and `out/secondline-NAME-VERSION.tgz`; returns the tarball's path. */
export function pack(name, out) {
  if (!PACKED.includes(name)) throw new Error(`${name} is not packed; expected one of ${PACKED.join(", ")}`);
  const source = join(root, "packages", name);
  const staged = resolve(out, name);
  rmSync(staged, { recursive: true, force: true });
  mkdirSync(staged, { recursive: true });
  compile(source, join(staged, "dist"));
  cpSync(join(source, "README.md"), join(staged, "README.md"));
  cpSync(join(root, "LICENSE"), join(staged, "LICENSE"));
  writeFileSync(join(staged, "package.json"), `${JSON.stringify(manifestOf(source), null, 2)}\n`);
  const args = ["pack", "--json", "--ignore-scripts", "--pack-destination", resolve(out)];
  const [{ filename }] = JSON.parse(execFileSync("npm", args, { cwd: staged, encoding: "utf8" }));
  return resolve(out, filename);
}

function compile(source, dist) {
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  const options = {
    outDir: dist,
    composite: false,
    emitDeclarationOnly: false,
    declaration: true,
    rewriteRelativeImportExtensions: true,
  };
  const args = Object.entries(options).flatMap(([key, value]) => [`--${key}`, String(value)]);
  execFileSync(process.execPath, [tsc, "-p", source, ...args], { stdio: ["ignore", "inherit", "inherit"] });
  // The compiler leaves the extensions in types as they are.
  for (const file of readdirSync(dist, { recursive: true, encoding: "utf8" })) {
    if (!file.endsWith(".d.ts")) continue;
    const types = readFileSync(join(dist, file), "utf8");
    writeFileSync(join(dist, file), types.replace(/((?:from|import\()\s*"\.{1,2}\/[^"]*)\.ts"/g, '$1.js"'));
  }
}

function manifestOf(source) {
  const {
    name,
    version,
    description,
    private: isPrivate,
    license,
    type,
    sideEffects,
    dependencies,
  } = read(join(source, "package.json"));
  const { engines } = read(join(root, "package.json"));
  const exports = { ".": { types: "./dist/index.d.ts", default: "./dist/index.js" } };
  return {
    name,
    version,
    description,
    private: isPrivate,
    license,
    type,
    engines,
    sideEffects,
    main: "./dist/index.js",
    types: "./dist/index.d.ts",
    exports,
    files: ["dist"],
    dependencies,
  };
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const [name, out] = process.argv.slice(2);
  if (name === undefined || out === undefined) {
    console.error(`node scripts/pack.mjs ${PACKED.join("|")} FOLDER`);
    process.exit(2);
  }
  console.log(pack(name, out));
}
