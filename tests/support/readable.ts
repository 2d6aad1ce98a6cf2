/** Texts in code that somebody may come to read: in JSX, in attributes, and literals that look like words. */
import { parseAst } from "vite";

export interface Found {
  readonly line: number;
  readonly text: string;
  /** Said by an error that is thrown as such: a programmer's, where what a user can cause is handed back. */
  readonly thrown: boolean;
}

/** A node of the syntax tree, as loosely as a walk over all kinds needs it. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

const isNode = (value: unknown): value is Node =>
  typeof value === "object" && value !== null && typeof (value as Node).type === "string";

const childrenOf = (node: Node): readonly Node[] =>
  Object.values(node).flatMap((value) => (Array.isArray(value) ? value.filter(isNode) : isNode(value) ? [value] : []));

/** Attributes whose words are read or read out; of all others only what stands in a call or an element is. */
const READ_ATTRIBUTE =
  /^(label|title|aria-label|aria-description|aria-roledescription|aria-valuetext|placeholder|alt|hint|what|noun|doing|waiting|note|text|of|caption|summary)$/;
const READ_PROPERTY =
  /^(label|head|title|detail|hint|short|long|says|text|doing|noun|what|caption|inWords|shortName|placeholder)$/;

/** Calls whose arguments are names of things, not words. */
const NAMES_THINGS =
  /^(say\w*|prose|matchMedia|closest|querySelector|querySelectorAll|getElementById|getContext|addEventListener|removeEventListener|startsWith|endsWith|includes|split|replace|replaceAll|setItem|getItem|Symbol)$/;

/** Types and imports hold no words. */
const SKIPPED = /^(ImportDeclaration|ImportExpression|TS(?!As|Satisfies|NonNull|Instantiation).*)$/;

export function readableIn(source: string, tsx: boolean): readonly Found[] {
  const found: Found[] = [];
  const lineAt = (index: number) => source.slice(0, index).split("\n").length;
  const add = (node: Node, text: string, above: readonly Node[]) =>
    found.push({ line: lineAt(node.start), text: text.replace(/\s+/g, " "), thrown: isThrown(above) });
  const walk = (node: Node, above: readonly Node[]): void => {
    if (SKIPPED.test(node.type) || (/^Export(Named|All)/.test(node.type) && node.source)) return;
    const text = textOf(node);
    if (node.type === "JSXText" ? hasLetter(String(node.value)) : text !== undefined && isRead(node, text, above))
      add(node, text ?? String(node.value).trim(), above);
    for (const child of childrenOf(node)) walk(child, [...above, node]);
  };
  for (const node of parseAst(source, { lang: tsx ? "tsx" : "ts" }).body) walk(node as unknown as Node, []);
  return found;
}

const hasLetter = (text: string) => /\p{L}/u.test(text);

/** The text of a literal; `{}` stands for what is put in. */
function textOf(node: Node): string | undefined {
  if (node.type === "Literal") return typeof node.value === "string" ? node.value : undefined;
  if (node.type !== "TemplateLiteral") return undefined;
  return (node.quasis as { value: { cooked: string } }[]).map(({ value }) => value.cooked).join("{}");
}

function isRead(node: Node, text: string, above: readonly Node[]): boolean {
  const over = above.at(-1)!;
  const words = text.replaceAll("{}", "");
  if (!hasLetter(words) || isNameIn(node, over)) return false;
  const attribute = over.type === "JSXExpressionContainer" ? above.at(-2)! : over;
  if (attribute.type === "JSXAttribute") return READ_ATTRIBUTE.test(nameOf(attribute)) || isTitle(attribute, words);
  if (over.type === "Property" && READ_PROPERTY.test(nameOf(over))) return true;
  if (isShown(node, above) || isPutIn(node, above) || isReturned(node, above)) return true;
  return !isWithinNames(above) && (/\s/.test(words) || /^\p{Lu}\p{Ll}/u.test(words));
}

/** The name of something to press, which an icon's is not. */
const isTitle = (attribute: Node, words: string) => nameOf(attribute) === "name" && /^\p{Lu}|\s/u.test(words);

/** A value that is put into a sentence, perhaps after a condition. */
function isPutIn(node: Node, above: readonly Node[]): boolean {
  const at = beyondConditions(node, above);
  const call = above[at - 2];
  return (
    above[at]?.type === "Property" &&
    call?.type === "CallExpression" &&
    /^say|^prose$/.test(nameOf(call.callee as Node))
  );
}

/** Stands in an element, perhaps after a condition. */
function isShown(node: Node, above: readonly Node[]): boolean {
  const at = beyondConditions(node, above);
  return above[at]?.type === "JSXExpressionContainer" && /^JSX(Element|Fragment)$/.test(above[at - 1]?.type ?? "");
}

/** What a function returns that says it returns any text, or says nothing of it; one that names what it returns returns codes. */
function isReturned(node: Node, above: readonly Node[]): boolean {
  const at = beyondConditions(node, above);
  const isBody = above[at]?.type === "ArrowFunctionExpression" && above[at]!.body === (above[at + 1] ?? node);
  if (!isBody && above[at]?.type !== "ReturnStatement") return false;
  const maker = above.slice(0, at + 1).findLast(({ type }) => /Function/.test(type));
  return maker !== undefined && returnsText(maker);
}

const returnsText = ({ returnType }: Node): boolean =>
  !isNode(returnType) || /^TSStringKeyword$/.test((returnType.typeAnnotation as Node).type);

/** Inside of `throw new Error(…)`; what a class of its own says is no programmer's error. */
const isThrown = (above: readonly Node[]): boolean =>
  above.some(
    ({ type, callee }, i) =>
      type === "NewExpression" &&
      /^(Range|Type)?Error$/.test(nameOf(callee as Node)) &&
      above[i - 1]?.type === "ThrowStatement",
  );

/** Index of what is around a node and the conditions on which it is taken. */
function beyondConditions(node: Node, above: readonly Node[]): number {
  let inner = node;
  return above.findLastIndex((outer) => {
    const ends = !/^(Conditional|Logical)Expression$/.test(outer.type) || outer.test === inner;
    inner = outer;
    return ends;
  });
}

/** Compared with, a key, a case, or handed to what takes names. */
function isNameIn(node: Node, over: Node): boolean {
  switch (over.type) {
    case "BinaryExpression":
      return /^[!=]==?$/.test(String(over.operator));
    case "SwitchCase":
      return over.test === node;
    case "Property":
      return over.key === node;
    case "MemberExpression":
    case "TaggedTemplateExpression":
    case "ExpressionStatement":
      return true;
    case "CallExpression":
      return NAMES_THINGS.test(nameOf(over.callee as Node));
    default:
      return false;
  }
}

/** In an attribute that nobody reads, such as a class. */
function isWithinNames(above: readonly Node[]): boolean {
  const at = above.findLastIndex(({ type }) => type === "JSXAttribute");
  if (at < 0 || READ_ATTRIBUTE.test(nameOf(above[at]!))) return false;
  return !above.slice(at).some(({ type }) => /Function|CallExpression|JSXElement/.test(type));
}

/** What an attribute, a property, a variable or a method is called. */
function nameOf(node: Node): string {
  const named = (node.name ?? node.key ?? node.property) as Node | string | undefined;
  if (typeof named === "string") return named;
  return isNode(named) ? nameOf(named) : "";
}
