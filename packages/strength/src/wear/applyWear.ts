/** Puts the state of a wear record at a date into a rig. */
import {
  type AnchorName,
  backupSectionLengths,
  distinctFacts,
  type LineEnd,
  type LineName,
  mainSectionLengths,
  type OwnJudgement,
  type Rig,
  type Wear,
  type WebbingSection,
} from "@secondline/rig";
import { date, type PlainDate } from "../dates/calendarDate.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import { addedCondition } from "./addedCondition.ts";
import { inOnePlace } from "./inOnePlace.ts";
import { lateNotes } from "./lateNote.ts";
import { isUsedSection, lateEnd, lateMarks } from "./lateWebbing.ts";
import { placedWear, wearOfMarks } from "./markWear.ts";
import { missingSection } from "./misplaced.ts";
import { needFacts, ownOf } from "./needWords.ts";
import { endPosition } from "./placement.ts";
import { type ReadingComparison, readingAgainstRig } from "./readings/readingAgainstRig.ts";
import { tensionDrift } from "./readings/tensionDrift.ts";
import type { WearRecord } from "./record.ts";
import { recordOfRig } from "./recordOfRig.ts";
import { nameMatchNote, otherRigNotes, rigMatch } from "./rigReference.ts";
import { type WearState, wearState } from "./wearState.ts";
import type { WearMark, WebbingState } from "./webbingState.ts";
import { wearPart } from "./wornPart.ts";
import { type JoinedWear, withAllWritten, withWrittenDamage } from "./writtenWear.ts";

export interface WornRig {
  readonly rig: Rig;
  readonly state: WearState;
  /** Flags of the webbings that hang in this rig, and the facts where record and rig do not fit together. */
  readonly notes: readonly NoteFact[];
  /**
   * Events that nobody has judged yet. As long as there is one, no verdict says that the rig holds. The parts of the rig carry
   * them too.
   */
  readonly needsInspection: readonly NoteFact[];
  /** The last reading of the main line since its tension was changed, against the tension that the rig states. */
  readonly reading?: ReadingComparison;
}

/** Lengths in record and rig may differ by this share before a note says so [-]. */
const LENGTH_MISMATCH = 0.03;
/** If lengths differ by more than this share, record and rig do not describe the same line [-]. */
const LENGTH_DOUBT = 0.1;

/**
 * The rig as it is on a date. Sections, ends and parts that the record follows from their first use on take their condition and
 * wear from the record alone, but for damage; their wear in the rig document is put aside. A record that begins later is added
 * to the document. Everything else stays as written.
 */
export function applyWear(written: Rig, asWritten: WearRecord, on: string | PlainDate): WornRig {
  const day = typeof on === "string" ? date(on) : on;
  const { rig, record, notes: placeNotes } = inOnePlace(written, asWritten);
  const own = recordOfRig(rig, record);
  const state = wearState(own.record, day);
  const hanging = state.webbings.filter((w) => w.placement && rigMatch(rig, w.placement.rig));
  const parts = state.parts.filter((part) => rigMatch(rig, part.rig));
  const flags = state.flags.filter((f) => hanging.some((w) => w.id === f.webbing)).map((f) => f.message);
  const notes = [...flags, ...own.notes, ...matchNotes(rig, hanging, parts), ...silentLineNotes(rig, hanging, state)];
  notes.push(...otherRigNotes(rig, otherReferences(record, state, silentLines(rig, hanging).length > 0)));
  if (hanging.length + parts.length > 0) notes.push(...placeNotes, ...climateNotes(record));
  const worn: Worn = { rig, notes, needs: [] };
  wearLine(worn, "main", mainSectionLengths(rig), hanging);
  wearLine(worn, "backup", backupSectionLengths(rig), hanging);
  const reading = readTension(worn, hanging);
  for (const part of parts) worn.rig = wearPart(worn, part);
  return {
    rig: worn.rig,
    state,
    notes: [...worn.needs, ...distinctFacts(notes)],
    needsInspection: worn.needs,
    ...(reading === undefined ? {} : { reading }),
  };
}

/** The worn rig alone. */
export function wearToRig(rig: Rig, record: WearRecord, on: string | PlainDate): Rig {
  return applyWear(rig, record, on).rig;
}

/** A rig into which wear is being put, with the notes and open needs so far. */
export interface Worn {
  rig: Rig;
  readonly notes: NoteFact[];
  readonly needs: NoteFact[];
}

function matchNotes(
  rig: Rig,
  hanging: readonly WebbingState[],
  parts: readonly { readonly rig: string }[],
): NoteFact[] {
  const references = [...hanging.map(({ placement }) => placement!.rig), ...parts.map((part) => part.rig)];
  return references.some((reference) => rigMatch(rig, reference) === "name") ? [nameMatchNote(rig)] : [];
}

/** A place that the record leaves blank counts as the one that brings the most sun. */
const climateNotes = ({ latitude, hemisphere }: WearRecord): NoteFact[] => [
  ...(latitude === undefined ? [noteFact("record.latitude", {})] : []),
  ...(hemisphere === undefined ? [noteFact("record.hemisphere", {})] : []),
];

function silentLines(rig: Rig, hanging: readonly WebbingState[]): readonly LineName[] {
  const lines = (["main", "backup"] as const).filter((line) => rig[line] !== undefined);
  return lines.filter((line) => hanging.every((w) => w.placement!.line !== line));
}

/** Rigs named by parts and plans, and by webbing that hangs on that day; `told`: those of the webbing are told already. */
function otherReferences({ parts, plans }: WearRecord, { webbings }: WearState, told: boolean): readonly string[] {
  const hangingIn = webbings.flatMap(({ placement }) => placement?.rig ?? []);
  const others = [...parts, ...plans].map((one) => one.rig);
  return told ? others.filter((reference) => !hangingIn.includes(reference)) : [...others, ...hangingIn];
}

/** Notes on lines that the record does not have on that date: they stay as in the rig document, whatever the date. */
function silentLineNotes(rig: Rig, hanging: readonly WebbingState[], { on, webbings }: WearState): NoteFact[] {
  const silent = silentLines(rig, hanging);
  if (silent.length === 0) return [];
  const rigs = [...new Set(webbings.flatMap(({ placement }) => placement?.rig ?? []))].filter(
    (reference) => rigMatch(rig, reference) === undefined,
  );
  const others =
    rigs.length === 0
      ? undefined
      : noteFact("record.hangsElsewhere", { rigs: { list: rigs.map((name) => `"${name}"`) } });
  const which = silent.length > 1 ? "both" : silent[0]!;
  return [noteFact(`record.silentOn.${which}`, { rig: rig.name, on: { day: on } }, others)];
}

function wearLine(worn: Worn, line: LineName, lengths: readonly number[], hanging: readonly WebbingState[]): void {
  const before = worn.rig[line];
  const own = hanging.filter((w) => w.placement!.line === line);
  if (own.length === 0) return;
  if (before === undefined) {
    worn.notes.push(noteFact(line === "main" ? "record.noMain" : "record.noBackup", { name: own[0]!.name }));
    return;
  }
  const sections = [...before.sections];
  let { endA, endB } = before;
  for (const webbing of own) {
    const i = webbing.placement!.section;
    const section = sections[i];
    if (section === undefined) {
      worn.needs.push(missingSection(worn.rig, webbing.placement!, webbing.name)!);
      continue;
    }
    const { notes, doubts } = lengthMismatch(webbing, lengths[i]!);
    worn.notes.push(...notes);
    const needs = [...needFacts(webbing), ...doubts];
    worn.needs.push(...needs);
    const [first, last] = [i === 0, i === sections.length - 1];
    const ends = [...(first ? [endA] : []), ...(last ? [endB] : [])];
    // The weblock at an end is the end's own matter: its present mark is not a place in the section.
    const booked = ends.some(({ kind }) => kind === "weblock");
    const inSection = webbing.marks.filter(
      (mark) => !(booked && atOwnWeblock(mark, webbing, { first, last, endA, endB })),
    );
    const isLate = !webbing.reach.fromNew;
    if (isLate && isUsedSection(section, ends)) {
      const written = [section, ...ends].map(({ condition }) => condition);
      worn.notes.push(...lateNotes(webbing.name, webbing.reach, written));
    }
    const marks = isLate ? lateMarks(inSection, section, ends) : inSection;
    const recorded = wearOfMarks(marks, webbing.placement!, lengths[i]!);
    const speaksOfFalls = marks.some(({ kind }) => kind === "fallZone");
    const joined = isLate
      ? withAllWritten(recorded, section.wear)
      : withWrittenDamage(recorded, section.wear, speaksOfFalls);
    worn.notes.push(...damageNotes(joined, line, webbing.name));
    sections[i] = wornSection(section, { webbing, wear: joined.wear, needs });
    if (first) endA = wornEnd(endA, webbing, marks, "A");
    if (last) endB = wornEnd(endB, webbing, marks, "B");
  }
  worn.rig = { ...worn.rig, [line]: { ...before, sections, endA, endB } };
}

function damageNotes({ kept, worse }: JoinedWear, line: LineName, name: string): NoteFact[] {
  const values = { line: noteFact(`line.${line}`, {}), name };
  const kinds = (list: JoinedWear["kept"]) => ({ list: list.map((kind) => noteFact(damageCode(kind), {})) });
  return [
    ...(kept.length === 0 ? [] : [noteFact("record.damageKept", { ...values, kinds: kinds(kept) })]),
    ...(worse.length === 0 ? [] : [noteFact("record.damageWorse", { ...values, kinds: kinds(worse) })]),
  ];
}

const damageCode = (kind: JoinedWear["kept"][number]) =>
  kind === "fallZone" ? ("damage.falls" as const) : (`damage.${kind}` as const);

interface SectionEnds {
  readonly first: boolean;
  readonly last: boolean;
  readonly endA: LineEnd;
  readonly endB: LineEnd;
}

/** Whether a mark belongs to the weblock in which the webbing sits now, at an end where the rig has a weblock. */
function atOwnWeblock(mark: WearMark, { placement }: WebbingState, ends: SectionEnds): boolean {
  if (mark.kind !== "clampMark" || mark.weblock !== true || mark.until !== undefined) return false;
  const middle = (mark.from + mark.to) / 2;
  const at = (side: AnchorName) => Math.abs(middle - endPosition(placement!, side)) < 1e-9;
  return (
    (ends.first && ends.endA.kind === "weblock" && at("A")) || (ends.last && ends.endB.kind === "weblock" && at("B"))
  );
}

/** Notes on lengths that differ between record and rig, and the ones that keep a verdict from saying that the rig holds. */
function lengthMismatch(
  { name, placement }: WebbingState,
  length: number,
): { readonly notes: readonly NoteFact[]; readonly doubts: readonly NoteFact[] } {
  const loaded = placement!.to - placement!.from;
  const share = Math.abs(loaded - length) / length;
  const both = { loaded: { length: loaded }, name, length: { length } };
  if (share <= LENGTH_MISMATCH) return { notes: [], doubts: [] };
  if (share <= LENGTH_DOUBT) return { notes: [noteFact("record.lengthOff", both)], doubts: [] };
  return { notes: [], doubts: [noteFact("record.lengthDoubt", both)] };
}

interface SectionWear {
  readonly webbing: WebbingState;
  readonly wear: readonly Wear[];
  readonly needs: readonly NoteFact[];
}

function wornSection(section: WebbingSection, { webbing, wear, needs }: SectionWear): WebbingSection {
  const own: OwnJudgement | undefined = ownOf(webbing.doubts, section.own);
  const counted = webbing.reach.fromNew ? conditionOf(webbing) : addedCondition(section.condition, webbing);
  const condition = { ...counted, ...(needs.length === 0 ? {} : { needsInspection: needs }) };
  return { ...section, condition, wear, ...(own === undefined ? {} : { own }) };
}

/** The condition of a webbing over its whole life; values that its record does not know are left out. */
export function conditionOf({ monthsOutside, sunMonths, wet, ageYears, reach }: WebbingState) {
  return {
    ...(reach.fromNew ? { monthsOutside, sunMonths } : {}),
    ...(wet === undefined ? {} : { wet }),
    ...(ageYears === undefined ? {} : { ageYears }),
  };
}

/** Farther behind the span than any end reaches: webbing there carries nothing [m]. */
const DISTANCE_BEHIND_SPAN = 10;

/** A loop or knot is made of the webbing that the record follows, so it has the same condition. */
function wornEnd(written: LineEnd, webbing: WebbingState, marks: readonly WearMark[], side: AnchorName): LineEnd {
  const { behind: _before, ...end } = webbing.reach.fromNew
    ? endFromNew(written, webbing, side)
    : lateEnd(written, webbing, side);
  const outwards = webbing.placement!.markedEnd === side ? -1 : 1;
  const spanEnd = endPosition(webbing.placement!, side);
  const behind = placedWear(marks, (position) => outwards * (position - spanEnd), DISTANCE_BEHIND_SPAN);
  return { ...end, ...(behind.length === 0 ? {} : { behind }) };
}

function endFromNew(
  { condition: _written, ...end }: LineEnd,
  { clampedMonths }: WebbingState,
  side: AnchorName,
): LineEnd {
  const monthsClamped = clampedMonths[side];
  return {
    ...end,
    ...(monthsClamped === undefined || end.kind !== "weblock" ? {} : { monthsClamped }),
  };
}

/** The last reading of the main line against the rig. A reading that disagrees asks for an inspection. */
function readTension(worn: Worn, hanging: readonly WebbingState[]): ReadingComparison | undefined {
  const readings = hanging
    .filter(({ placement }) => placement!.line === "main")
    .flatMap((webbing) => webbing.readings)
    .sort((a, b) => (a.on ?? "").localeCompare(b.on ?? ""));
  const last = readings.at(-1);
  if (last === undefined) return undefined;
  const drift = tensionDrift(worn.rig, readings);
  if (drift !== undefined) worn.notes.push(drift.message);
  const comparison = readingAgainstRig(worn.rig, last);
  if (comparison.agrees) {
    worn.notes.push(comparison.message);
    return comparison;
  }
  worn.needs.push(comparison.message);
  const { main } = worn.rig;
  const sections = main.sections.map((section, i) => {
    if (i > 0) return section;
    const needsInspection = [...(section.condition.needsInspection ?? []), comparison.message];
    return { ...section, condition: { ...section.condition, needsInspection } };
  });
  worn.rig = { ...worn.rig, main: { ...main, sections } };
  return comparison;
}
