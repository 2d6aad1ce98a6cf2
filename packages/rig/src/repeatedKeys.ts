/** Names given twice in one group: JSON's reader would drop the first without a word. */
import { type PathStep, pathText } from "./path.ts";

const TOKEN = /"(?:[^"\\]|\\.)*"|[{}[\],:]/g;

interface Level {
  /** Names seen in a group; absent in a list. */
  readonly names?: Set<string>;
  step: PathStep;
}

/** Paths of the names that a text gives more than once. The text must be valid JSON. */
export function repeatedKeys(text: string): string[] {
  const levels: Level[] = [];
  const repeated: string[] = [];
  let word = "";
  for (const [token] of text.matchAll(TOKEN)) {
    const level = levels.at(-1);
    if (token === "{") levels.push({ names: new Set(), step: "" });
    else if (token === "[") levels.push({ step: 0 });
    else if (token === "}" || token === "]") levels.pop();
    else if (token === "," && typeof level?.step === "number") level.step++;
    else if (token === ":" && level?.names) {
      const name = JSON.parse(word) as string;
      level.step = name;
      if (level.names.has(name)) repeated.push(pathText(levels.map((each) => each.step)));
      level.names.add(name);
    } else word = token;
  }
  return repeated;
}
