/** Looks at the text of a JSON file for what its parser lets pass or chokes on. One pass, no recursion. */
import { type PathStep, pathText } from "./path.ts";
import { tooSmall } from "./units.ts";

/** Groups and lists within one another; our files need eight [-]. */
export const DEEPEST_NESTING = 32;

/** True when groups and lists are nested deeper than `DEEPEST_NESTING`. The text may be anything. */
export function tooDeep(text: string): boolean {
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const character = text[i];
    if (character === '"') i = stringEnd(text, i);
    else if (character === "{" || character === "[") depth++;
    else if (character === "}" || character === "]") depth--;
    if (depth > DEEPEST_NESTING) return true;
  }
  return false;
}

/** Place of the closing quotation mark of the string that begins at `start`; the text's end when it has none. */
function stringEnd(text: string, start: number): number {
  for (let i = start + 1; i < text.length; i++) {
    const character = text[i];
    if (character === "\\") i++;
    else if (character === '"') return i;
  }
  return text.length;
}

export interface JsonScan {
  /** Paths of names that are given again in their group. */
  readonly repeated: readonly string[];
  /** Numbers that a computer cannot hold as written. */
  readonly lost: readonly { readonly path: string; readonly written: string; readonly large: boolean }[];
}

interface Level {
  /** Names seen in a group; absent in a list. */
  readonly names?: Set<string>;
  step: PathStep;
}

const JSON_NUMBER = /-?\d[\d.eE+-]*/y;

/** Scans a text that is valid JSON. */
export function scanJson(text: string): JsonScan {
  const levels: Level[] = [];
  const repeated: string[] = [];
  const lost: { path: string; written: string; large: boolean }[] = [];
  const here = () => pathText(levels.map(({ step }) => step));
  let word = "";
  for (let i = 0; i < text.length; i++) {
    const character = text[i]!;
    const level = levels.at(-1);
    if (character === '"') {
      const end = stringEnd(text, i);
      word = text.slice(i, end + 1);
      i = end;
    } else if (character === "{") levels.push({ names: new Set(), step: "" });
    else if (character === "[") levels.push({ step: 0 });
    else if (character === "}" || character === "]") levels.pop();
    else if (character === "," && typeof level?.step === "number") level.step++;
    else if (character === ":" && level?.names) {
      const name = JSON.parse(word) as string;
      level.step = name;
      if (level.names.has(name)) repeated.push(here());
      level.names.add(name);
    } else if (character === "-" || (character >= "0" && character <= "9")) {
      JSON_NUMBER.lastIndex = i;
      const written = JSON_NUMBER.exec(text)![0];
      i += written.length - 1;
      const number = Number(written);
      const large = !Number.isFinite(number);
      if (large || tooSmall(number, written)) lost.push({ path: here(), written, large });
    }
  }
  return { repeated, lost };
}
