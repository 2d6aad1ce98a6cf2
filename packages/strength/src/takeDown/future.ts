/** A rig on days to come, at the present rate of use. */
import type { Condition, LineEnd, LineName, Rig, Wear, WebbingSection } from "@secondline/rig";
import { date, isBefore, monthShares, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { conditionSunMonths } from "../derating/sun.ts";
import { type Climate, DoseSum } from "../derating/sunDose.ts";
import { wearToRig } from "../wear/applyWear.ts";
import { withConditions } from "../wear/atLatitude.ts";
import { inOnePlace } from "../wear/inOnePlace.ts";
import { type PartState, partState } from "../wear/partState.ts";
import type { PartRecord, WearRecord, WebbingRecord } from "../wear/record.ts";
import { rigMatch } from "../wear/rigReference.ts";
import { webbingState } from "../wear/webbingState.ts";
import { partOf, withPart } from "../wear/wornPart.ts";

/**
 * From a wear record. Webbing and parts that it follows keep hanging as they hang, and are fallen on as often as since they
 * were rigged. Everything else ages as from the rig document alone.
 */
export function futureFromRecord(written: Rig, asWritten: WearRecord, on: string): (day: PlainDate) => Rig {
  const today = date(on);
  const { rig, record } = inOnePlace(written, asWritten);
  const { hemisphere } = record;
  const climate = { ...climateOf(rig), ...(hemisphere === undefined ? {} : { hemisphere }) };
  return (day) => {
    if (!isBefore(today, day)) return wearToRig(rig, record, day);
    const older = olderRig(rig, timeAhead(today, day, climate));
    return wearToRig(followedAsWritten(older, rig, record, today), usedUntil(record, today, day), day);
  };
}

/**
 * The older rig, but with the document's times for webbing and parts that the record follows: the record counts their time
 * itself. Falls of the document go on at their own rate.
 */
function followedAsWritten(older: Rig, rig: Rig, record: WearRecord, today: PlainDate): Rig {
  const hanging = record.webbings.flatMap((webbing) => webbingState(webbing, today, record).placement ?? []);
  const withLines = hanging
    .filter((placement) => rigMatch(rig, placement.rig) !== undefined)
    .reduce((done, { line, section }) => sectionAsWritten(done, rig, line, section), older);
  return record.parts
    .filter((part) => rigMatch(rig, part.rig) !== undefined)
    .reduce((done, part) => partAsWritten(done, rig, partState(part, today, record)), withLines);
}

function sectionAsWritten(older: Rig, rig: Rig, line: LineName, at: number): Rig {
  const [aged, written] = [older[line], rig[line]];
  if (aged === undefined || written === undefined || written.sections[at] === undefined) return older;
  const sections = aged.sections.map((section, i) =>
    i === at ? { ...section, condition: written.sections[at]!.condition } : section,
  );
  const ends = {
    ...(at === 0 ? { endA: written.endA } : {}),
    ...(at === written.sections.length - 1 ? { endB: written.endB } : {}),
  };
  return { ...older, [line]: { ...aged, sections, ...ends } };
}

/**
 * A part for which the record does not say when it was up goes on as in the document. Only its age is counted by the record.
 */
function partAsWritten(older: Rig, rig: Rig, { part: id, placed, reach }: PartState): Rig {
  const written = partOf(rig, id)?.condition;
  if (reach.begun === undefined || written === undefined) return older;
  const { ageYears } = written;
  const put = withPart(older, id, (part) => ({
    ...part,
    condition: placed ? written : { ...part.condition, ...(ageYears === undefined ? {} : { ageYears }) },
  }));
  return put ?? older;
}

function usedUntil(record: WearRecord, today: PlainDate, day: PlainDate): WearRecord {
  return {
    ...record,
    webbings: record.webbings.map((webbing) => fallenOn(webbing, record, today, day)),
    parts: record.parts.map((part) => fallenOnPart(part, record, today, day)),
  };
}

/** Entries dated after today are plans, not use: they are left out. */
function fallenOn(webbing: WebbingRecord, record: WearRecord, today: PlainDate, day: PlainDate): WebbingRecord {
  const entries = webbing.entries.filter((entry) => !isBefore(today, entry.date));
  const { placement } = webbingState(webbing, today, record);
  if (placement === undefined) return { ...webbing, entries };
  const share = monthsBetween(today, day) / Math.max(1, monthsBetween(placement.since, today));
  const more = entries.flatMap((entry) =>
    entry.event === "falls" && !isBefore(entry.date, placement.since)
      ? [{ ...entry, date: day, falls: entry.falls * share }]
      : [],
  );
  return { ...webbing, entries: [...entries, ...more] };
}

function fallenOnPart(part: PartRecord, record: WearRecord, today: PlainDate, day: PlainDate): PartRecord {
  const entries = part.entries.filter((entry) => !isBefore(today, entry.date));
  const { up, placed, recorded, reach, condition } = partState(part, today, record);
  if ((placed && !up) || recorded.falls === 0) return { ...part, entries };
  // If the record does not say when the part was up, its falls are spread over the time since the record or the part began.
  const months = placed ? recorded.monthsOutside : Math.min(reach.months, 12 * (condition.ageYears ?? reach.months));
  const falls = (recorded.falls * monthsBetween(today, day)) / Math.max(1, months);
  return { ...part, entries: [...entries, { date: day, event: "falls", falls }] };
}

/**
 * From the rig document alone: every further month adds a month in the open to parts that have been in the open, and falls in
 * proportion. The sun of those months is that of their season. A rig document says nothing of the hemisphere, so the one that brings
 * more sun counts unless `climate` says it.
 */
export function futureFromRig(rig: Rig, on: string, climate: Climate = climateOf(rig)): (day: PlainDate) => Rig {
  const today = date(on);
  return (day) => olderRig(rig, timeAhead(today, day, climate));
}

/** What a rig document says of the sun where the rig hangs. */
const climateOf = ({ latitude }: Rig): Climate => (latitude === undefined ? {} : { latitude });

/** Time from one day to a later one. */
interface TimeAhead {
  readonly months: number;
  /** Sun that an unshaded part takes in it [months of full sun]. */
  readonly sunMonths: number;
}

function timeAhead(from: PlainDate, to: PlainDate, climate: Climate): TimeAhead {
  const dose = new DoseSum(climate);
  for (const { month, share } of monthShares(from, to)) dose.add(month, share, 1);
  return { months: Math.max(0, monthsBetween(from, to)), sunMonths: dose.total };
}

/** The rig after some more time of the same use. */
function olderRig(rig: Rig, ahead: TimeAhead): Rig {
  const { months } = ahead;
  const line = <T extends { sections: readonly WebbingSection[]; endA: LineEnd; endB: LineEnd }>(made: T): T => ({
    ...made,
    sections: made.sections.map((section) => fallenOnLonger(section, months)),
    endA: clampedLonger(made.endA, months),
    endB: clampedLonger(made.endB, months),
  });
  const { backup, leash } = rig;
  const used = {
    ...rig,
    main: line(rig.main),
    ...(backup && { backup: line(backup) }),
    leash: leash.falls === undefined ? leash : { ...leash, falls: leash.falls * growth(leash.condition, months) },
  };
  return withConditions(used, (condition) => olderCondition(condition, ahead));
}

function olderCondition(condition: Condition, ahead: TimeAhead): Condition {
  const { monthsOutside, ageYears, sun = 1 } = condition;
  const sunMonths = conditionSunMonths(condition);
  return {
    ...condition,
    ...(monthsOutside === undefined ? {} : { monthsOutside: monthsOutside + ahead.months }),
    ...(sunMonths === undefined ? {} : { sunMonths: sunMonths + sun * ahead.sunMonths }),
    ...(ageYears === undefined ? {} : { ageYears: ageYears + ahead.months / 12 }),
  };
}

function fallenOnLonger(section: WebbingSection, months: number): WebbingSection {
  const factor = growth(section.condition, months);
  const wear = section.wear.map((w): Wear => (w.kind === "fallZone" ? { ...w, falls: w.falls * factor } : w));
  return { ...section, wear };
}

const clampedLonger = (end: LineEnd, months: number): LineEnd =>
  end.monthsClamped === undefined ? end : { ...end, monthsClamped: end.monthsClamped + months };

/** Growth of a count that arose in the months outside so far; the count of a new rig is taken to be that of a month. */
function growth(condition: Condition, months: number): number {
  return 1 + months / Math.max(1, condition.monthsOutside ?? 1);
}
