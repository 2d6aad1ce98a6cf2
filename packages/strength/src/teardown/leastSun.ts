/**
 * The least sun that the parts of a rig can have taken. A break test whose dose is told too large makes the sun look harmless: what is left
 * unsaid counts as the least for a test, and as the most for a strength.
 */
import type { Condition, Latitude, Rig } from "@secondline/rig";
import type { PlainDate } from "../dates/calendarDate.ts";
import { DARKEST_LATITUDE, leastDose, lessSunny } from "../derating/sunDose.ts";
import { possibleYears } from "../derating/unknown.ts";
import { atLatitude, withConditions } from "../wear/atLatitude.ts";
import type { WearRecord } from "../wear/record.ts";
import { wearState } from "../wear/wearState.ts";

/** Rig and record in the least sunny place at which they can hang, the rig's months in the darkest of the year. */
export function leastSun(rig: Rig, record: WearRecord, day: PlainDate): { rig: Rig; record: WearRecord } {
  const [ofRig, ofRecord] = [rig.latitude ?? DARKEST_LATITUDE, record.latitude ?? DARKEST_LATITUDE];
  const differ = rig.latitude !== undefined && record.latitude !== undefined;
  const latitude = (one: Latitude) => (differ ? lessSunny(ofRig, ofRecord) : one);
  // The rig's months have their latitude, and the rig none: `applyWear` would take the sunnier one for both.
  const { latitude: _said, ...placed } = withConditions(atLatitude(rig, latitude(ofRig)), inDarkestMonths);
  return { rig: placed, record: onDarkerHalf({ ...inDeepShade(record), latitude: latitude(ofRecord) }, day) };
}

/** Light of which the record does not say how much fell counts as none. */
const inDeepShade = (record: WearRecord): WearRecord => ({
  ...record,
  webbings: record.webbings.map((webbing) => ({
    ...webbing,
    entries: webbing.entries.map((entry) =>
      "placement" in entry && entry.placement.sunAssumed
        ? { ...entry, placement: { ...entry.placement, sun: 0 } }
        : entry,
    ),
  })),
  parts: record.parts.map((part) => ({
    ...part,
    entries: part.entries.map((entry) =>
      entry.event === "putUp" && "sunAssumed" in entry ? { ...entry, sun: 0 } : entry,
    ),
  })),
});

/** Months of which the file does not say how much light fell bring none. */
function inDarkestMonths(condition: Condition): Condition {
  const { monthsOutside, sun = 0, sunMonths, latitude } = condition;
  if (sunMonths !== undefined || monthsOutside === undefined || latitude === undefined) return condition;
  return { ...condition, sunMonths: sun * leastDose(monthsOutside, possibleYears(condition), latitude) };
}

/** On the hemisphere where all of it together took less sun, if the record does not say which. */
function onDarkerHalf(record: WearRecord, day: PlainDate): WearRecord {
  if (record.hemisphere !== undefined) return record;
  const [north, south] = (["north", "south"] as const).map((hemisphere) => ({ ...record, hemisphere })) as [
    WearRecord,
    WearRecord,
  ];
  const sun = (one: WearRecord): number => {
    const { webbings, parts } = wearState(one, day);
    return [...webbings, ...parts.map(({ recorded }) => recorded)].reduce((sum, { sunMonths }) => sum + sunMonths, 0);
  };
  return sun(south) < sun(north) ? south : north;
}
