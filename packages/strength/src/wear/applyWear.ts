/** Puts the state of a wear record at a date into a rig. */
import {
  backupSectionLengths,
  formatLength,
  type LineEnd,
  mainSectionLengths,
  type Rig,
  type Wear,
  type WebbingSection,
} from "@secondline/rig";
import type { PlainDate } from "../dates/calendarDate.ts";
import { fallZones } from "./fallZones.ts";
import type { PartState } from "./partState.ts";
import type { LineName, Placement, WearRecord } from "./record.ts";
import { sectionPosition } from "./sectionPosition.ts";
import { type WearState, wearState } from "./wearState.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";

export interface WornRig {
  readonly rig: Rig;
  readonly state: WearState;
  /** Flags of the webbings that hang in this rig, and where record and rig do not fit together. */
  readonly notes: readonly string[];
}

/** Lengths in record and rig may differ by this share before it is said [-]. */
const LENGTH_MISMATCH = 0.03;

/**
 * The rig as it is on a date. Sections, ends and parts that the record speaks of take their condition and wear from it
 * alone; what the rig document says of their wear is put aside. Everything else stays as written.
 */
export function applyWear(rig: Rig, record: WearRecord, on: string | PlainDate): WornRig {
  const state = wearState(record, on);
  const hanging = state.webbings.filter((w) => w.placement?.rig === rig.name);
  const flags = state.flags.filter((f) => hanging.some((w) => w.id === f.webbing)).map((f) => f.message);
  const notes = [...flags];
  notes.push(...unspoken(rig, hanging, state));
  let worn = wearLine(rig, "main", mainSectionLengths(rig), hanging, notes);
  worn = wearLine(worn, "backup", backupSectionLengths(rig), hanging, notes);
  for (const part of state.parts.filter((p) => p.rig === rig.name)) worn = wearPart(worn, part, notes);
  return { rig: worn, state, notes };
}

/** Lines of which the record says nothing on that date: they stay as the rig document has them, whatever the date. */
function unspoken(rig: Rig, hanging: readonly WebbingState[], { on, webbings }: WearState): string[] {
  const lines = (["main", "backup"] as const).filter((line) => rig[line] !== undefined);
  const silent = lines.filter((line) => hanging.every((w) => w.placement!.line !== line));
  if (silent.length === 0) return [];
  const which = silent.map((line) => (line === "main" ? "main line" : "backup")).join(" or the ");
  const rigs = [...new Set(webbings.flatMap(({ placement }) => placement?.rig ?? []))].filter(
    (name) => name !== rig.name,
  );
  const others =
    rigs.length === 0 ? "" : ` On that day it has webbing in: ${rigs.map((name) => `"${name}"`).join(", ")}.`;
  return [
    `The record has no webbing in the ${which} of a rig named "${rig.name}" on ${on}. What is said of ${silent.length === 1 ? "it" : "them"} is from the rig's own file, not a state of that day.${others}`,
  ];
}

/** The worn rig alone. */
export function wearToRig(rig: Rig, record: WearRecord, on: string | PlainDate): Rig {
  return applyWear(rig, record, on).rig;
}

function wearLine(
  rig: Rig,
  line: LineName,
  lengths: readonly number[],
  hanging: readonly WebbingState[],
  notes: string[],
): Rig {
  const before = rig[line];
  const own = hanging.filter((w) => w.placement!.line === line);
  if (own.length === 0) return rig;
  if (before === undefined) {
    notes.push(`The record hangs "${own[0]!.name}" in the ${line}, which this rig does not have.`);
    return rig;
  }
  const sections = [...before.sections];
  let { endA, endB } = before;
  for (const webbing of own) {
    const i = webbing.placement!.section;
    const section = sections[i];
    if (section === undefined) {
      notes.push(
        `The record hangs "${webbing.name}" in section ${i + 1} of the ${line} line, which has ${sections.length}.`,
      );
      continue;
    }
    notes.push(...lengthNotes(webbing, lengths[i]!));
    sections[i] = wornSection(section, webbing, lengths[i]!);
    if (i === 0) endA = wornEnd(endA, webbing.clampedMonths.A);
    if (i === sections.length - 1) endB = wornEnd(endB, webbing.clampedMonths.B);
  }
  return { ...rig, [line]: { ...before, sections, endA, endB } };
}

function lengthNotes({ name, placement }: WebbingState, length: number): string[] {
  const loaded = placement!.to - placement!.from;
  if (Math.abs(loaded - length) <= LENGTH_MISMATCH * length) return [];
  return [
    `The record has ${formatLength(loaded)} of "${name}" loaded, the rig ${formatLength(length)}: positions may be off by the difference.`,
  ];
}

function wornSection(section: WebbingSection, webbing: WebbingState, length: number): WebbingSection {
  const { monthsOutside, sunMonths, wet, ageYears } = webbing;
  const condition = {
    monthsOutside,
    sunMonths,
    ...(wet ? { wet } : {}),
    ...(ageYears === undefined ? {} : { ageYears }),
  };
  // The weblock at an end is the end's own matter: its present mark is not a place in the section.
  const marks = webbing.marks.filter((m) => !(m.kind === "clampMark" && m.weblock === true && m.until === undefined));
  return { ...section, condition, wear: wearOfMarks(marks, webbing.placement!, length) };
}

type Stretch = Pick<Placement, "markedEnd" | "from" | "to">;

/** Marks as wear of a stretch of `length` [m]: clipped to it, falls of overlapping zones added. */
export function wearOfMarks(marks: readonly WearMark[], stretch: Stretch, length: number): Wear[] {
  const others = marks.filter((m) => m.kind !== "fallZone");
  return [...fallZones(marks), ...others].flatMap((mark) => wearOf(mark, stretch, length));
}

/** A mark as wear of the section, clipped to it; none when it lies outside. */
function wearOf(mark: WearMark, placement: Stretch, length: number): Wear[] {
  const ends = [sectionPosition(placement, mark.from), sectionPosition(placement, mark.to)];
  const from = Math.max(0, Math.min(...ends));
  const to = Math.min(length, Math.max(...ends));
  if (from > to || (from === to && mark.kind !== "cut")) return [];
  const spot = { at: (from + to) / 2, length: to - from };
  switch (mark.kind) {
    case "clampMark":
      return [
        { kind: "clampMark", ...spot, months: mark.months, ...(mark.load === undefined ? {} : { load: mark.load }) },
      ];
    case "fallZone":
      return [{ kind: "fallZone", from, to, falls: mark.falls }];
    case "stitching":
      return [{ kind: "stitching", ...spot }];
    case "cut":
      return [{ kind: "cut", at: spot.at, depth: mark.depth }];
    default:
      return [{ kind: mark.kind, from, to, depth: mark.depth }];
  }
}

/** A loop or knot is made of the webbing that the record follows, so it has been through the same as that. */
function wornEnd({ condition: _written, ...end }: LineEnd, monthsClamped: number | undefined): LineEnd {
  return monthsClamped === undefined ? end : { ...end, monthsClamped };
}

function wearPart(rig: Rig, { part, condition, falls }: PartState, notes: string[]): Rig {
  const [group, list, index] = part.split(".");
  if (part === "leash") return { ...rig, leash: { ...rig.leash, condition, falls } };
  if (part === "harness") return { ...rig, harness: { ...rig.harness, condition } };
  if (group === "connection" && rig.backup?.connections[Number(list)] !== undefined) {
    return {
      ...rig,
      backup: { ...rig.backup, connections: replaced(rig.backup.connections, Number(list), condition) },
    };
  }
  if ((group === "anchorA" || group === "anchorB") && (list === "hardware" || list === "points")) {
    const parts = rig[group][list];
    if (parts[Number(index)] !== undefined) {
      return { ...rig, [group]: { ...rig[group], [list]: replaced(parts, Number(index), condition) } };
    }
  }
  notes.push(`The record speaks of a part "${part}" that this rig does not have, or whose wear is kept elsewhere.`);
  return rig;
}

function replaced<T extends object>(parts: readonly T[], at: number, condition: PartState["condition"]): T[] {
  return parts.map((part, i) => (i === at ? { ...part, condition } : part));
}
