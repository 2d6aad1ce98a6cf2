/** Reads a rig document: either a rig in SI units, or every fault in it at once. Nothing is guessed or clamped. */
import type * as z from "zod";
import { buildRig } from "./buildRig.ts";
import { checkLines } from "./checkLines.ts";
import { checkAnchors, checkGround, checkLeash, checkRings } from "./checkSurroundings.ts";
import { checkTexts } from "./checkTexts.ts";
import { RIG_FORMAT, RIG_TAG, RIG_VERSION, type RigDocument, rigSchema } from "./document.ts";
import { Draft } from "./draft.ts";
import { type Issues, issuesListed, MOST_ISSUES } from "./issueList.ts";
import { issuesOf } from "./issues.ts";
import { checkStocks } from "./ownStocks.ts";
import { readJson } from "./readJson.ts";
import type { Rig, RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";
import { checkUnconfirmed } from "./unconfirmed.ts";
import { describeValue } from "./units.ts";

export type RigReading =
  | { readonly ok: true; readonly rig: Rig; readonly document: RigDocument }
  | ({ readonly ok: false } & Issues<RigIssue>);

/** Largest file that is read [bytes]; in a text, characters are counted. A rig with everything in it has some ten thousand. */
export const MAX_RIG_TEXT = 1_000_000;
const RIG_FILE = { noun: fact("noun.rig", {}), longest: MAX_RIG_TEXT };

/**
 * Reads a rig from the text of a file, or from an object that came from JSON. Returns the rig in SI units with the
 * document as typed, or all issues: those of the file's text, then of single fields, then between fields. Never throws.
 */
export function readRig(source: unknown): RigReading {
  const json = typeof source === "string" ? readJson(source, RIG_FILE) : { parsed: true, document: source, issues: [] };
  if (!json.parsed) return { ok: false, issues: json.issues };
  const { document } = json;
  const texts = checkTexts(document, RIG_FILE.noun);
  if (texts.bottomless) return { ok: false, issues: texts.issues };
  const foreign = notOurs(document);
  if (foreign) return { ok: false, issues: [foreign] };
  const read = rigSchema().safeParse(document);
  const draft = new Draft(document);
  for (const check of [checkStocks, checkAnchors, checkLines, checkRings, checkLeash, checkGround, checkUnconfirmed])
    check(draft);
  const before = [...json.issues, ...texts.issues];
  if (read.success && draft.issues.length === 0 && before.length === 0) {
    return { ok: true, rig: buildRig(read.data, draft), document: document as RigDocument };
  }
  const { faults, unlisted } = schemaFaults(read.error?.issues ?? [], document);
  return { ok: false, ...issuesListed(withoutRepeats([...before, ...faults, ...draft.issues]), unlisted) };
}

/** Faults of the schema as issues; of a group with very many unknown keys the first, and the number of the others. */
function schemaFaults(faults: readonly z.core.$ZodIssue[], document: unknown) {
  let unlisted = 0;
  const told = faults.flatMap((fault) => {
    if (fault.code !== "unrecognized_keys" || fault.keys.length <= MOST_ISSUES) return issuesOf(fault, document);
    unlisted += fault.keys.length - MOST_ISSUES;
    return issuesOf({ ...fault, keys: fault.keys.slice(0, MOST_ISSUES) }, document);
  });
  return { faults: told, unlisted };
}

/** One issue per path: where a field itself is at fault, what follows from it is left out. */
function withoutRepeats(issues: readonly RigIssue[]): RigIssue[] {
  const seen = new Set<string>();
  return issues.filter(({ path }) => !seen.has(path) && seen.add(path));
}

/** The issue of a file that is not a rig of this version of the format; undefined when it is one. */
function notOurs(document: unknown): RigIssue | undefined {
  const expected = `"${RIG_TAG}": "${RIG_FORMAT}"`;
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    return { path: "", got: describeValue(document), expected, message: fact("file.notGroup", {}) };
  }
  const tag = Object.hasOwn(document, RIG_TAG) ? (document as Record<string, unknown>)[RIG_TAG] : undefined;
  if (tag === RIG_FORMAT) return undefined;
  const got = describeValue(tag);
  const version = typeof tag === "string" ? /^rig\/(\d{1,6})$/.exec(tag)?.[1] : undefined;
  const newer = version !== undefined && Number(version) > RIG_VERSION;
  const message =
    tag === undefined
      ? fact("file.untagged", { expected })
      : newer
        ? fact("file.newer", { tag: String(tag), format: RIG_FORMAT })
        : fact("file.unknownFormat", { got });
  return { path: RIG_TAG, got, expected: `"${RIG_FORMAT}"`, message };
}
