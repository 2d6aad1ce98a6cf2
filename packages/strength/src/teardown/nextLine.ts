/** The next line: the same rig with new webbing and a new leash on a day, hung and fallen on as this one has been. */
import type { Rig } from "@secondline/rig";
import { date, monthsBetween, type PlainDate } from "../dates/calendarDate.ts";
import { wearToRig } from "../wear/applyWear.ts";
import { inOnePlace } from "../wear/inOnePlace.ts";
import { partState } from "../wear/partState.ts";
import type { PartRecord, WearRecord, WebbingRecord } from "../wear/record.ts";
import { rigMatch } from "../wear/rigReference.ts";
import { webbingState } from "../wear/webbingState.ts";

/** The next line on a day, if it is hung on `on`. */
export function nextLine(written: Rig, asWritten: WearRecord, on: string): (day: PlainDate) => Rig {
  const today = date(on);
  const { rig, record } = inOnePlace(written, asWritten);
  return (day) => wearToRig(rig, nextRecord(rig, record, today, day), day);
}

function nextRecord(rig: Rig, record: WearRecord, today: PlainDate, day: PlainDate): WearRecord {
  return {
    ...record,
    webbings: record.webbings.flatMap((webbing) => nextWebbing(rig, webbing, record, today, day)),
    parts: record.parts.flatMap((part) =>
      rigMatch(rig, part.rig) === undefined ? [] : [nextPart(part, record, today, day)],
    ),
  };
}

/** Least time over which falls are spread to get their rate [months]. */
const LEAST_MONTHS = 1;

function nextWebbing(
  rig: Rig,
  webbing: WebbingRecord,
  record: WearRecord,
  today: PlainDate,
  day: PlainDate,
): WebbingRecord[] {
  const { placement } = webbingState(webbing, today, record);
  if (placement === undefined || rigMatch(rig, placement.rig) === undefined) return [];
  const { since, ...place } = placement;
  const share = monthsBetween(today, day) / Math.max(LEAST_MONTHS, monthsBetween(since, today));
  const falls = webbing.entries.flatMap((entry) =>
    entry.event === "falls" && entry.date.toString() >= since.toString() && entry.date.toString() <= today.toString()
      ? [{ ...entry, date: day, falls: entry.falls * share }]
      : [],
  );
  const wet = webbingState(webbing, today, record).wet;
  return [
    {
      ...webbing,
      made: today,
      firstUse: today,
      entries: [
        { date: today, event: "rigged", placement: place },
        ...(wet === undefined ? [] : [{ date: today, event: "wet" as const, wet }]),
        ...(falls.length > 0
          ? falls
          : [{ date: today, event: "falls" as const, from: place.from, to: place.to, falls: 0 }]),
      ],
    },
  ];
}

function nextPart(part: PartRecord, record: WearRecord, today: PlainDate, day: PlainDate): PartRecord {
  const { condition, recorded } = partState(part, today, record);
  const { monthsOutside: months, falls } = recorded;
  const more = (falls * monthsBetween(today, day)) / Math.max(LEAST_MONTHS, months);
  return {
    ...part,
    made: today,
    firstUse: today,
    entries: [
      { date: today, event: "putUp", sun: shareOfSun(recorded.sunMonths, part, record, today) },
      { date: today, event: "falls", falls: 0 },
      ...(condition.wet === undefined ? [] : [{ date: today, event: "wet" as const, wet: condition.wet }]),
      ...(more > 0 ? [{ date: day, event: "falls" as const, falls: more }] : []),
    ],
  };
}

/** Share of the light that has fallen on the part while it was up, over all seasons; all of it if the record does not know [-]; `taken`: [months of full sun]. */
function shareOfSun(taken: number, part: PartRecord, record: WearRecord, today: PlainDate): number {
  const unshaded = part.entries.map((entry) => ("sun" in entry ? { ...entry, sun: 1 } : entry));
  const most = partState({ ...part, entries: unshaded }, today, record).recorded.sunMonths;
  return most > 0 ? Math.min(1, taken / most) : 1;
}
