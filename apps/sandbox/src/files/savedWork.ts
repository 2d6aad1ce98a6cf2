/**
 * Work kept on this device as it comes back: checked part by part, because another version, another program or a broken
 * disk may have written it. What cannot be read is left out and told, with the text of it to keep; the rig is never
 * lost for the sake of the rest.
 */

import { isGroup, isPartId } from "@secondline/rig";
import { parseWhatIf, type WhatIf, whatIfKey } from "@secondline/scenarios";
import { sayFiles } from "@secondline/words/page/files";
import * as z from "zod";
import type { Notice, ReadRig, SessionSlice, WrittenRig } from "../state/types.ts";
import { KEPT_PARTS, type KeptPart, type SavedWork } from "./workStore.ts";

export interface CheckedWork {
  /** Undefined: there is none, or no rig of it can be read. */
  readonly work: SavedWork | undefined;
  readonly notices: readonly Omit<Notice, "id">[];
  /** A document that could not be read, to be set aside. */
  readonly setAside: WrittenRig | undefined;
  /** All that was kept, as text, when not all of it could be read. */
  readonly unread?: string;
}

const share = z.number().min(0).max(1);
const CAUSES = [
  z.object({ kind: z.literal("leashFall"), at: share }),
  z.object({
    kind: z.literal("mainFails"),
    at: share,
    cutAt: share,
    walker: z.enum(["hanging", "standing", "caught"]),
  }),
  z.object({
    kind: z.literal("legFails"),
    at: share,
    anchor: z.enum(["A", "B"]),
    leg: z.int().min(0),
    walker: z.enum(["hanging", "caught"]),
  }),
] as const;
const PART_ID = z.string().refine(isPartId);
const GIVES_WAY = z.object({
  kind: z.literal("givesWay"),
  at: share,
  part: PART_ID,
  place: share.optional(),
  during: z.discriminatedUnion("kind", CAUSES),
});
const WHAT_IF = z
  .discriminatedUnion("kind", [...CAUSES, GIVES_WAY])
  // The same limits as in a link.
  .refine((whatIf) => parseWhatIf(whatIfKey(whatIf as WhatIf)) !== undefined);

const owners = z.array(z.looseObject({ entries: z.array(z.looseObject({})) })).optional();
const wearWork = z.looseObject({
  record: z.looseObject({ name: z.string(), webbings: owners, parts: owners }),
  log: z.looseObject({
    name: z.string(),
    invented: z.boolean(),
    tests: z.array(z.looseObject({ result: z.looseObject({ kind: z.string() }) })),
  }),
  stocks: z.looseObject({}),
  // Of earlier versions: own tests count by themselves now, and are left out beside the verdict.
  useTests: z.boolean().optional(),
});
const WEAR = z.looseObject({
  work: wearWork,
  earlier: z.array(z.looseObject({ name: z.string(), replaced: z.number(), work: wearWork })),
});

/** What each part of a session must be, and how to say that it was lost. */
const PARTS: Readonly<Record<KeptPart, { readonly schema: z.ZodType; readonly words: string }>> = {
  whatIf: { schema: WHAT_IF, words: sayFiles("savedWork.whatIfSight") },
  accuracy: { schema: z.enum(["quick", "standard", "fine"]), words: sayFiles("savedWork.choiceMesh") },
  theme: { schema: z.enum(["light", "dark"]), words: sayFiles("savedWork.theme") },
  camera: { schema: z.enum(["overview", "event", "elevation", "anchor"]), words: sayFiles("savedWork.viewScene") },
  showForces: { schema: z.boolean(), words: sayFiles("savedWork.whetherForcesShown") },
  wear: { schema: WEAR, words: sayFiles("savedWork.wearRecordBreak") },
};

/** `saveText` hands a text to the user as a file. */
export function checkSaved(saved: unknown, read: ReadRig, saveText: (text: string, name: string) => void): CheckedWork {
  if (saved === undefined || saved === null) return { work: undefined, notices: [], setAside: undefined };
  const { document, goodDocument, session } = isGroup(saved) ? saved : {};
  const unread = textOf(saved);
  const action = { label: sayFiles("savedWork.saveWhatKept"), run: () => saveText(unread, "kept-work") };
  const reads = (one: unknown): one is WrittenRig => isGroup(one) && read(one).ok;
  const good = reads(goodDocument) ? goodDocument : reads(document) ? document : undefined;
  if (!good) {
    const tried = isGroup(goodDocument) ? read(goodDocument) : undefined;
    const issues = tried && !tried.ok ? tried.issues.map(({ message }) => message) : [];
    const where = isGroup(document) ? sayFiles("savedWork.setAsideUnder") : sayFiles("savedWork.here");
    const text = sayFiles("savedWork.workKeptDevice", { where });
    return {
      work: undefined,
      notices: [{ tone: "fault", text, details: issues, action }],
      setAside: isGroup(document) ? document : undefined,
      unread,
    };
  }
  const checked = checkSession(session);
  const lost = [...(isGroup(document) ? [] : [sayFiles("savedWork.entriesBeingPut")]), ...checked.lost];
  const text = sayFiles("savedWork.notEverythingKept", { lost: listed(lost), count: lost.length });
  const work = { document: isGroup(document) ? document : good, goodDocument: good, session: checked.session };
  if (lost.length === 0) return { work, notices: [], setAside: undefined };
  return { work, notices: [{ tone: "fault", text, action }], setAside: undefined, unread };
}

function checkSession(session: unknown): { session: Partial<SessionSlice>; lost: readonly string[] } {
  if (session === undefined) return { session: {}, lost: [] };
  if (!isGroup(session)) return { session: {}, lost: [sayFiles("savedWork.statePage")] };
  const kept: Record<string, unknown> = {};
  const lost: string[] = [];
  for (const key of KEPT_PARTS) {
    const { schema, words } = PARTS[key];
    const value = session[key];
    if (value === undefined) continue;
    if (schema.safeParse(value).success) kept[key] = value;
    else lost.push(words);
  }
  // Every part has just been held against the type it has in the session.
  return { session: kept as Partial<SessionSlice>, lost };
}

const listed = (words: readonly string[]): string =>
  words.length < 2
    ? (words[0] ?? "")
    : sayFiles("savedWork.and", { list: words.slice(0, -1).join(", "), last: words.at(-1)! });

/** What was kept may be anything that a browser can keep, also what JSON cannot say. */
function textOf(saved: unknown): string {
  const seen = new WeakSet<object>();
  return `${JSON.stringify(
    saved,
    (_key, value: unknown) => {
      if (typeof value === "bigint") return String(value);
      if (typeof value !== "object" || value === null) return value;
      if (seen.has(value)) return sayFiles("savedWork.seenAbove");
      seen.add(value);
      return value;
    },
    2,
  )}\n`;
}
