/** The first JavaScript example of a package's README. */
import { readFileSync } from "node:fs";

export interface ReadmeExample {
  /** As written, a module. */
  readonly text: string;
  /** Names that it imports from the package. */
  readonly names: readonly string[];
  /** What follows the import. */
  readonly body: string;
}

export function readmeExample(name: "engine" | "statistics"): ReadmeExample {
  const page = readFileSync(new URL(`../../packages/${name}/README.md`, import.meta.url), "utf8");
  const text = /```js\r?\n(.*?)```/s.exec(page)![1]!;
  const imported = new RegExp(`^import \\{ ([^}]*) \\} from "@secondline/${name}";\\n`).exec(text)!;
  return { text, names: imported[1]!.split(", "), body: text.slice(imported[0].length) };
}
