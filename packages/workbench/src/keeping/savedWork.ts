/**
 * Work kept on a device, as it is written and as it comes back: checked part by part, because another version, another program or
 * a broken disk may have written it. The rig is never lost for the sake of the rest.
 */
import { isGroup, isPartId, type RigIssue } from "@secondline/rig";
import { parseWhatIf, type WhatIf, whatIfKey } from "@secondline/scenarios";
import * as z from "zod";
import type { WrittenRig } from "../documents/documents.ts";
import type { ReadRig, SessionSlice } from "../inHand/state.ts";
import { KEPT_PARTS, type KeptPart, type SavedWork } from "./work.ts";

/** What of the saved work could not be read: a part of the session, the whole session, or the rig as it was being typed. */
export type LostPart = KeptPart | "session" | "entries";

export type SavedReading =
  | { readonly ok: true; readonly work: SavedWork; readonly lost: readonly LostPart[] }
  /** The saved work has no readable rig. It comes with the faults, and with the document to set aside, if there is a document. */
  | { readonly ok: false; readonly issues: readonly RigIssue[]; readonly document: WrittenRig | undefined };

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
});
const WEAR = z.looseObject({
  work: wearWork,
  earlier: z.array(z.looseObject({ name: z.string(), replaced: z.number(), work: wearWork })),
});

/** What each part of a session must be. */
const PARTS: Readonly<Record<KeptPart, z.ZodType>> = {
  whatIf: WHAT_IF,
  accuracy: z.enum(["quick", "standard", "fine"]),
  theme: z.enum(["light", "dark"]),
  camera: z.enum(["overview", "event", "elevation", "anchor"]),
  showForces: z.boolean(),
  wear: WEAR,
};

export function readSaved(saved: unknown, read: ReadRig): SavedReading {
  const { version, document, goodDocument, session: written } = isGroup(saved) ? saved : {};
  const session = version === undefined && isGroup(written) ? fromFirst(written) : written;
  const reads = (one: unknown): one is WrittenRig => isGroup(one) && read(one).ok;
  const good = reads(goodDocument) ? goodDocument : reads(document) ? document : undefined;
  if (!good) {
    const tried = isGroup(goodDocument) ? read(goodDocument) : undefined;
    return {
      ok: false,
      issues: tried && !tried.ok ? tried.issues : [],
      document: isGroup(document) ? document : undefined,
    };
  }
  const checked = readSession(session);
  return {
    ok: true,
    work: { document: isGroup(document) ? document : good, goodDocument: good, session: checked.session },
    lost: [...(isGroup(document) ? [] : (["entries"] as const)), ...checked.lost],
  };
}

/** Version 1 kept beside record and log whether own tests count: they do by themselves now, and are left out beside the verdict. */
function fromFirst(session: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  const { wear } = session;
  if (!isGroup(wear)) return session;
  const withoutChoice = (work: unknown) => {
    if (!isGroup(work)) return work;
    const { useTests: _, ...rest } = work;
    return rest;
  };
  const earlier = Array.isArray(wear.earlier)
    ? wear.earlier.map((one) => (isGroup(one) ? { ...one, work: withoutChoice(one.work) } : one))
    : wear.earlier;
  return { ...session, wear: { ...wear, work: withoutChoice(wear.work), earlier } };
}

function readSession(session: unknown): { session: Partial<SessionSlice>; lost: readonly LostPart[] } {
  if (session === undefined) return { session: {}, lost: [] };
  if (!isGroup(session)) return { session: {}, lost: ["session"] };
  const given = KEPT_PARTS.filter((key) => session[key] !== undefined);
  const good = given.filter((key) => PARTS[key].safeParse(session[key]).success);
  return {
    // Every part has just been held against the type it has in the session.
    session: Object.fromEntries(good.map((key) => [key, session[key]])) as Partial<SessionSlice>,
    lost: given.filter((key) => !good.includes(key)),
  };
}
