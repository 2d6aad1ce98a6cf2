// The reference of what engine and statistics export, from their types and comments: one page for each, made on demand.
// `node scripts/reference.mjs [FOLDER]` writes into docs/reference, where no folder is given.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync } from "vite";
import { PACKED } from "./pack.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));

/** Brings the declarations up to date from which the pages are made. */
export function compileTypes() {
  const tsc = join(root, "node_modules", "typescript", "bin", "tsc");
  const projects = PACKED.map((name) => join(root, "packages", name));
  execFileSync(process.execPath, [tsc, "-b", ...projects], { stdio: ["ignore", "inherit", "inherit"] });
}

/**
 * The page of a package, and what is wrong with it: exports without a comment, or without a declaration. Its declarations
 * must be compiled.
 */
export function referenceOf(name) {
  const folder = join(root, "packages", name);
  const { description, version } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const entries = exportsOf(join(folder, "dist-types", "index.d.ts"));
  const warnings = entries.flatMap(({ exported, pieces }) => {
    if (pieces.length === 0) return [`${name}: "${exported}" has no declaration`];
    return pieces.some(({ comment }) => comment !== "") ? [] : [`${name}: "${exported}" has no comment`];
  });
  const shown = [...entries].sort((a, b) => a.exported.localeCompare(b.exported, "en"));
  const text = [
    `# @secondline/${name} ${version}`,
    `${description} Made by \`npm run reference\` from the types and their comments. [How to use it](../../packages/${name}/README.md).`,
    ...GROUPS.flatMap(([title, kinds]) => {
      const group = shown.filter(({ pieces }) => kinds.includes(pieces[0]?.kind));
      return group.length === 0 ? [] : [`## ${title}`, ...group.map(sectionOf)];
    }),
  ].join("\n\n");
  return { text: `${text}\n`, warnings, names: shown.map(({ exported }) => exported) };
}

const GROUPS = [
  ["Functions and classes", ["function", "class"]],
  ["Values", ["const", "namespace"]],
  ["Types", ["interface", "type"]],
];

function sectionOf({ exported, pieces }) {
  const comments = pieces.map(({ comment }) => comment).filter((comment) => comment !== "");
  const code = pieces.map(({ code }) => code).join("\n");
  return [`### ${exported}`, ...comments, `\`\`\`ts\n${code}\n\`\`\``].join("\n\n");
}

const files = new Map();

/** A file of declarations, taken apart: its statements, and every comment with where it ends. */
function parsed(path) {
  const known = files.get(path);
  if (known) return known;
  const text = readFileSync(path, "utf8");
  const { program, comments, errors } = parseSync(path, text, { lang: "dts" });
  if (errors.length > 0) throw new Error(`${path}: ${errors[0].message}`);
  const file = { text, body: program.body, comments };
  files.set(path, file);
  return file;
}

/** Every name that a file exports, with the pieces of text that declare it. */
function exportsOf(path) {
  const { body } = parsed(path);
  return body
    .flatMap((statement) => {
      if (statement.type === "ExportAllDeclaration") {
        const from = fileOf(path, statement.source.value);
        if (statement.exported)
          return [{ exported: statement.exported.name, pieces: namespaceOf(statement.exported.name, from) }];
        return exportsOf(from);
      }
      if (statement.type !== "ExportNamedDeclaration") return [];
      if (statement.declaration) {
        const exported = nameOf(statement.declaration);
        return [{ exported, pieces: piecesOf(path, exported) }];
      }
      const from = statement.source ? fileOf(path, statement.source.value) : path;
      return statement.specifiers.map(({ local, exported }) => ({
        exported: exported.name,
        pieces: piecesOf(from, local.name),
      }));
    })
    .filter(({ exported }, i, all) => all.findIndex((one) => one.exported === exported) === i);
}

const fileOf = (path, module) => {
  const file = resolve(dirname(path), module.replace(/\.ts$/, ".d.ts"));
  if (!existsSync(file)) throw new Error(`${path} takes from ${module}, which is not there`);
  return file;
};

const nameOf = (declaration) => (declaration.id ?? declaration.declarations?.[0].id)?.name;

/** What declares a name in a file, or in the file that it takes it from; several pieces where a function has several forms. */
function piecesOf(path, name) {
  const { text, body, comments } = parsed(path);
  const own = body.flatMap((statement) => {
    const declaration = statement.declaration ?? statement;
    if (nameOf(declaration) !== name) return [];
    const code = text.slice(declaration.start, declaration.end).replace(/^declare /, "");
    return [{ kind: kindOf(declaration), code, comment: commentBefore(text, comments, statement.start) }];
  });
  return own.length > 0 ? own : exportsElsewhere(path, name);
}

function exportsElsewhere(path, name) {
  for (const statement of parsed(path).body) {
    if (statement.type !== "ExportNamedDeclaration" || !statement.source) continue;
    const specifier = statement.specifiers.find(({ exported }) => exported.name === name);
    if (specifier) return piecesOf(fileOf(path, statement.source.value), specifier.local.name);
  }
  return [];
}

/** A file that is exported as one name: what it holds, by name. */
function namespaceOf(name, path) {
  const { text, comments, body } = parsed(path);
  const members = exportsOf(path).map(({ exported }) => exported);
  const head = comments.find(({ end }) => end <= body[0].start);
  return [
    {
      kind: "namespace",
      code: `namespace ${name} {\n  ${members.join(", ")}\n}`,
      comment: head ? proseOf(head.value) : commentBefore(text, comments, body[0].start),
    },
  ];
}

const kindOf = ({ type }) =>
  ({
    FunctionDeclaration: "function",
    TSDeclareFunction: "function",
    ClassDeclaration: "class",
    VariableDeclaration: "const",
    TSInterfaceDeclaration: "interface",
    TSTypeAliasDeclaration: "type",
  })[type];

/** The comment that ends where a statement begins. */
function commentBefore(text, comments, start) {
  const comment = comments.findLast(({ end }) => end <= start && text.slice(end, start).trim() === "");
  return comment === undefined ? "" : proseOf(comment.value);
}

/** A comment without its stars. */
const proseOf = (comment) =>
  comment
    .split("\n")
    .map((line) => line.replace(/^\s*\*+ ?/, "").trimEnd())
    .join("\n")
    .trim();

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const out = resolve(process.argv[2] ?? join(root, "docs", "reference"));
  compileTypes();
  mkdirSync(out, { recursive: true });
  const warnings = PACKED.flatMap((name) => {
    const page = referenceOf(name);
    writeFileSync(join(out, `${name}.md`), page.text);
    console.log(`${join(out, `${name}.md`)}: ${page.names.length} names`);
    return page.warnings;
  });
  for (const warning of warnings) console.error(warning);
  process.exitCode = warnings.length > 0 ? 1 : 0;
}
