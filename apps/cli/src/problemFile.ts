/** Reads a problem for the bare engine. The engine checks the values; this file checks the text. */
import { type Problem, readProblem } from "@secondline/engine";
import { checkTexts } from "@secondline/rig";
import { sayFiles } from "@secondline/words/terminal/files";
import { faults, inBroughtWords, type JsonFile } from "./input.ts";

export function problemOf({ file, document, issues }: JsonFile): Problem {
  const texts = checkTexts(document, sayFiles("noun.problem"));
  if (texts.bottomless) throw faults(file, texts);
  const reading = readProblem(document);
  const before = [...issues, ...texts.issues];
  if (reading.ok && before.length === 0) return reading.problem;
  throw faults(file, { issues: [...before, ...(reading.ok ? [] : reading.issues.map(inBroughtWords))] });
}
