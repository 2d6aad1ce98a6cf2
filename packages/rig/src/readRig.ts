/** Reads a rig document: either a rig in SI units, or every fault in it at once. Nothing is guessed or clamped. */
import { buildRig } from "./buildRig.ts";
import { checkLines } from "./checkLines.ts";
import { checkAnchors, checkGround, checkLeash, checkRings } from "./checkSurroundings.ts";
import { RIG_FORMAT, RIG_TAG, RIG_VERSION, type RigDocument, rigSchema } from "./document.ts";
import { Draft } from "./draft.ts";
import { issuesOf } from "./issues.ts";
import { checkStocks } from "./ownStocks.ts";
import { repeatedKeys } from "./repeatedKeys.ts";
import type { Rig, RigIssue } from "./rig.ts";
import { describeValue } from "./units.ts";

export type RigReading =
  | { readonly ok: true; readonly rig: Rig; readonly document: RigDocument }
  | { readonly ok: false; readonly issues: readonly RigIssue[] };

/** Largest file that is read [characters]. A rig with everything in it has some ten thousand. */
export const MAX_RIG_TEXT = 1_000_000;

/**
 * Reads a rig from the text of a file, or from an object that came from JSON. Returns the rig in SI units with the
 * document as typed, or all issues: first those of single fields, then those between fields. Never throws.
 */
export function readRig(source: unknown): RigReading {
  const parsed = typeof source === "string" ? parseText(source) : { document: source };
  if ("issue" in parsed) return { ok: false, issues: [parsed.issue] };
  const { document } = parsed;
  const foreign = notOurs(document);
  if (foreign) return { ok: false, issues: [foreign] };
  const read = rigSchema.safeParse(document);
  const draft = new Draft(document);
  if (typeof source === "string") checkRepeats(draft, source);
  for (const check of [checkStocks, checkAnchors, checkLines, checkRings, checkLeash, checkGround]) check(draft);
  if (read.success && draft.issues.length === 0) {
    return { ok: true, rig: buildRig(read.data, draft), document: document as RigDocument };
  }
  const faults = read.success ? [] : read.error.issues.flatMap((fault) => issuesOf(fault, document));
  return { ok: false, issues: withoutRepeats([...faults, ...draft.issues]) };
}

function checkRepeats(draft: Draft, text: string): void {
  for (const path of repeatedKeys(text)) {
    draft.fault(path, "a name once", "This is given twice in the same group; which one is meant?");
  }
}

/** One issue per path: where a field itself is at fault, what follows from it is left out. */
function withoutRepeats(issues: readonly RigIssue[]): RigIssue[] {
  const seen = new Set<string>();
  return issues.filter(({ path }) => !seen.has(path) && seen.add(path));
}

function parseText(text: string): { document: unknown } | { issue: RigIssue } {
  if (text.length > MAX_RIG_TEXT) {
    const size = `${(text.length / 1e6).toFixed(1)} million characters`;
    const expected = `at most ${MAX_RIG_TEXT / 1e6} million characters`;
    return { issue: { path: "", got: size, expected, message: `This file is too large to be a rig: it has ${size}.` } };
  }
  try {
    return { document: JSON.parse(text.replace(/^\uFEFF/, "")) };
  } catch (error) {
    return { issue: notJson(text, error) };
  }
}

function notJson(text: string, error: unknown): RigIssue {
  const position = /position (\d+)/.exec(String(error))?.[1];
  const line = position === undefined ? undefined : text.slice(0, Number(position)).split("\n").length;
  const where = line === undefined ? "" : ` The trouble is in line ${line}.`;
  const got = text.trim() === "" ? "an empty file" : describeValue(text.trim().slice(0, 40));
  return { path: "", got, expected: "a JSON file", message: `This file is not JSON, so it is not a rig.${where}` };
}

/** The issue of a file that is not a rig of this version of the format; undefined when it is one. */
function notOurs(document: unknown): RigIssue | undefined {
  const expected = `"${RIG_TAG}": "${RIG_FORMAT}"`;
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    const message = "This is not a rig: a rig is one group of named values in { }.";
    return { path: "", got: describeValue(document), expected, message };
  }
  const tag = Object.hasOwn(document, RIG_TAG) ? (document as Record<string, unknown>)[RIG_TAG] : undefined;
  if (tag === RIG_FORMAT) return undefined;
  const got = describeValue(tag);
  const version = typeof tag === "string" ? /^rig\/(\d{1,6})$/.exec(tag)?.[1] : undefined;
  const newer = version !== undefined && Number(version) > RIG_VERSION;
  const message =
    tag === undefined
      ? `This file is JSON, but not a rig: it does not say ${expected}. It may belong to another program.`
      : newer
        ? `This rig was written by a newer version of Secondline (${tag}); this version reads up to ${RIG_FORMAT}.`
        : `This is not a rig: ${got} is not a format that is known here.`;
  return { path: RIG_TAG, got, expected: `"${RIG_FORMAT}"`, message };
}
