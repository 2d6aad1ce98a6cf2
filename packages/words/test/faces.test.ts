/** Sentences of the page's views and of the terminal: each is said somewhere, and whoever says one gives it the values that it wants. */
import { readdirSync, readFileSync } from "node:fs";
import { parseAst } from "vite";
import { describe, expect, it } from "vitest";
import { filled } from "../src/language.ts";

const here = new URL("../src/", import.meta.url);
const root = new URL("../../../", import.meta.url);
/** Who says them, by the folder that they are in. */
const FACES = {
  page: ["apps/sandbox/src", "packages/workbench/src", "packages/figures/src"],
  terminal: ["apps/cli/src"],
};

/** "page/wear" and its like. */
const names = Object.keys(FACES).flatMap((face) =>
  readdirSync(new URL(`${face}/`, here))
    .filter((name) => name.endsWith("English.ts"))
    .map((name) => `${face}/${name.replace("English.ts", "")}`)
    .sort(),
);

async function catalogueOf(name: string): Promise<Readonly<Record<string, string>>> {
  const [sentences] = Object.values((await import(new URL(`${name}English.ts`, here).href)) as object);
  return sentences as Readonly<Record<string, string>>;
}

interface Saying {
  readonly file: string;
  readonly catalogue: string;
  /** A key, or the beginning and the end of one with something between. */
  readonly key: RegExp;
  /** Names of the values that are given; undefined where they are put together elsewhere. */
  readonly given: readonly string[] | undefined;
}

type Node = { readonly type: string } & Readonly<Record<string, unknown>>;
const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

function* nodesIn(node: Node): Generator<Node> {
  yield node;
  for (const value of Object.values(node).flat()) if (isNode(value)) yield* nodesIn(value);
}

const escaped = (text: string) => text.replaceAll(".", "\\.");

/** What a literal or a template stands for, as a pattern. */
function patternOf(node: Node): string {
  if (node.type === "Literal") return escaped(String(node.value));
  if (node.type === "ConditionalExpression")
    return `(?:${patternOf(node.consequent as Node)}|${patternOf(node.alternate as Node)})`;
  if (node.type !== "TemplateLiteral") return "[\\w.]+";
  return (node.quasis as { value: { raw: string } }[]).map(({ value }) => escaped(value.raw)).join("\\w+");
}

function givenIn(node: Node | undefined): readonly string[] | undefined {
  if (!node) return [];
  const properties = (node.properties ?? []) as Node[];
  if (node.type !== "ObjectExpression" || properties.some(({ type }) => type !== "Property")) return undefined;
  return properties.map(({ key }) => String((key as Node).name));
}

function sayingsIn(file: string): readonly Saying[] {
  const source = readFileSync(new URL(file, root), "utf8");
  const tools = new Map(
    [...source.matchAll(/import \{([^}]*)\} from "@secondline\/words\/((?:page|terminal)\/\w+)"/g)].flatMap(
      ([, what, from]) => what!.split(",").map((one) => [one.trim().replace(/^.* as /, ""), from!] as const),
    ),
  );
  if (tools.size === 0) return [];
  const { body } = parseAst(source, { lang: file.endsWith("x") ? "tsx" : "ts" });
  return body
    .flatMap((node) => [...nodesIn(node as unknown as Node)])
    .flatMap((node): Saying[] => {
      const catalogue = tools.get(String((node.callee as Node | undefined)?.name));
      const [key, values] = (node.arguments ?? []) as Node[];
      if (node.type !== "CallExpression" || catalogue === undefined || !key) return [];
      return [{ file, catalogue, key: new RegExp(`^${patternOf(key)}$`), given: givenIn(values) }];
    });
}

const sayings = Object.values(FACES)
  .flat()
  .flatMap((folder) =>
    readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => `${folder}/${name}`),
  )
  .flatMap(sayingsIn);

/** The lessons hand their keys on: `lessons.test.ts` of the workbench holds each of them. */
const HANDED_ON = ["page/lessons"];

const wanted = (sentence: string): readonly string[] => [...sentence.matchAll(/\{(\w+)/g)].map(([, name]) => name!);

describe.each(names)("sentences of %s", (name) => {
  it("have braces that are closed, with nothing in them but names and choices", async () => {
    for (const sentence of Object.values(await catalogueOf(name))) {
      for (const value of [1, 2]) {
        const values = Object.fromEntries(wanted(sentence).map((one) => [one, value]));
        expect(filled(sentence, values), sentence).not.toMatch(/[{}|]/);
      }
    }
  });

  it.skipIf(HANDED_ON.includes(name))("are all said, and with all that they want", async () => {
    const sentences = await catalogueOf(name);
    const said = sayings.filter(({ catalogue }) => catalogue === name);
    expect(Object.keys(sentences).filter((key) => !said.some((one) => one.key.test(key)))).toEqual([]);
    const holes = said.flatMap(({ file, key, given }) =>
      Object.entries(sentences)
        .filter(([one]) => given && key.test(one))
        .flatMap(([one, sentence]) =>
          wanted(sentence)
            .filter((value) => !given!.includes(value))
            .map((value) => `${file}: ${one} wants ${value}`),
        ),
    );
    expect(holes).toEqual([]);
  });
});
