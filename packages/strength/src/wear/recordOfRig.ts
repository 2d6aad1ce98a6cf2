/**
 * A record read together with its rig. The rig fills in blanks of the record: the ends that have a weblock, and the line's
 * tension.
 */
import { type AnchorName, distinctFacts, type Rig } from "@secondline/rig";
import { constant } from "../derating/constantValues.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import type { WebbingEntry } from "./entries/entryKinds.ts";
import type { Placement } from "./placement.ts";
import type { WearRecord } from "./record.ts";
import { rigMatch } from "./rigReference.ts";

export interface CompletedRecord {
  readonly record: WearRecord;
  /** Notes on values that were taken from the rig, and on assumed ones. */
  readonly notes: readonly NoteFact[];
}

/** The record with the placements in this rig completed from it. */
export function recordOfRig(rig: Rig, record: WearRecord): CompletedRecord {
  const notes: NoteFact[] = [];
  const webbings = record.webbings.map((webbing) => ({
    ...webbing,
    entries: webbing.entries.map((entry): WebbingEntry => {
      if (entry.event !== "rigged" && entry.event !== "moved") return entry;
      const { placement } = entry;
      if (rigMatch(rig, placement.rig) !== undefined) {
        return { ...entry, placement: completed(rig, placement, webbing.name, notes) };
      }
      if (placement.clampsAssumed === true) {
        notes.push(noteFact("record.clampsElsewhere", { name: webbing.name, rig: placement.rig }));
      }
      return entry;
    }),
  }));
  return { record: { ...record, webbings }, notes: distinctFacts(notes) };
}

function completed(rig: Rig, placement: Placement, name: string, notes: NoteFact[]): Placement {
  const clampedAt = clampedEnds(rig, placement, name, notes);
  const { clampsAssumed: _assumed, ...rest } = placement;
  const tension = placement.tension ?? standingTension(rig, placement);
  return { ...rest, clampedAt, ...(tension === undefined ? {} : { tension }) };
}

/** The main line's tension, but no less than the load that makes a usual clamp mark: falls load the line too [N]. */
function standingTension(rig: Rig, { line, section }: Placement): number | undefined {
  const rated = rig.main.sections[section]?.stock.rated.strength;
  if (line !== "main" || rated === undefined) return undefined;
  return Math.max(rig.main.pretension, constant("clamp.usualLoad") * rated);
}

/** A weblock of the rig marks the webbing in it, whether or not the record says so. */
function clampedEnds(rig: Rig, placement: Placement, name: string, notes: NoteFact[]): readonly AnchorName[] {
  const ofRig = weblocks(rig, placement);
  const stated = placement.clampsAssumed === true ? [] : placement.clampedAt;
  const missing = ofRig.filter((side) => !stated.includes(side));
  if (missing.length > 0) {
    const line = noteFact(`line.${placement.line}`, {});
    const values = { name, line, ends: { list: ofRig, joined: "and" as const }, written: JSON.stringify(ofRig) };
    notes.push(
      placement.clampsAssumed === true
        ? noteFact("record.clampsUnsaid", values)
        : noteFact("record.clampsDenied", { ...values, missing: { list: missing, joined: "and" } }),
    );
  }
  return [...stated, ...missing];
}

/** Sides of the section's ends that sit in a weblock of the rig. */
function weblocks(rig: Rig, { line, section }: Placement): AnchorName[] {
  const ends = rig[line];
  if (ends === undefined) return ["A", "B"];
  return [
    ...(section === 0 && ends.endA.kind === "weblock" ? (["A"] as const) : []),
    ...(section === ends.sections.length - 1 && ends.endB.kind === "weblock" ? (["B"] as const) : []),
  ];
}
