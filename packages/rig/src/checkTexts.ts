/** Checks every text and name of a document, whatever its format: nothing hidden, no name that JavaScript keeps for itself. */
import type { FactValue } from "./fact.ts";
import { hiddenCharacter } from "./hiddenCharacters.ts";
import { DEEPEST_NESTING } from "./jsonScan.ts";
import { type PathStep, pathText } from "./path.ts";
import { tooDeeplyNested } from "./readJson.ts";
import type { RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";
import { describeValue } from "./units.ts";

const RESERVED_NAMES: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);
/** Names under which a text may have lines. */
const NOTE_NAMES: ReadonlySet<PathStep> = new Set(["notes", "note"]);
/** Values in one document; the largest file that is read has fewer [-]. */
const MOST_VALUES = 3_000_000;

export interface TextCheck {
  readonly issues: readonly RigIssue[];
  /** The document is nested too deeply, or into itself, for anything else to look at it. */
  readonly bottomless: boolean;
}

/** `noun`: what the document should be. Takes any value and never throws. */
export function checkTexts(document: unknown, noun: FactValue): TextCheck {
  const issues: RigIssue[] = [];
  const waiting: { readonly value: unknown; readonly steps: readonly PathStep[] }[] = [{ value: document, steps: [] }];
  let count = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { value, steps } = next;
    if (typeof value === "string") {
      const issue = textIssue(value, steps);
      if (issue) issues.push(issue);
    }
    if (typeof value !== "object" || value === null) continue;
    if (steps.length >= DEEPEST_NESTING || ++count > MOST_VALUES)
      return { issues: [tooDeeplyNested({ noun })], bottomless: true };
    const inside: typeof waiting = Array.isArray(value)
      ? value.map((item, i) => ({ value: item as unknown, steps: [...steps, i] }))
      : Object.keys(value).map((name) => {
          const issue = nameIssue(name, steps);
          if (issue) issues.push(issue);
          return { value: (value as Record<string, unknown>)[name], steps: [...steps, name] };
        });
    // Backwards, so that what comes first in the file is looked at first.
    for (let i = inside.length - 1; i >= 0; i--) waiting.push(inside[i]!);
  }
  return { issues, bottomless: false };
}

/** The issue of a text; undefined when it can be shown. */
export function textIssue(text: string, steps: readonly PathStep[]): RigIssue | undefined {
  const layout = NOTE_NAMES.has(steps.at(-1) ?? "");
  const hidden = hiddenCharacter(text, layout);
  if (hidden === undefined) return undefined;
  const expected = fact(layout ? "expected.plainNote" : "expected.plainText", {});
  const got = describeValue(text);
  return { path: pathText(steps), got, expected, message: fact("text.hidden", { hidden }) };
}

function nameIssue(name: string, steps: readonly PathStep[]): RigIssue | undefined {
  const hidden = hiddenCharacter(name);
  if (hidden === undefined && !RESERVED_NAMES.has(name)) return undefined;
  const got = describeValue(name);
  const message = hidden === undefined ? fact("name.reserved", { got }) : fact("name.hidden", { hidden });
  return { path: pathText([...steps, name]), got, expected: fact("expected.knownName", {}), message };
}
