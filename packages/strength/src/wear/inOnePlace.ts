/** Where a rig and its record hang: both may say it. */
import type { Condition, Rig } from "@secondline/rig";
import { sunnier } from "../derating/sunDose.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import { atLatitude, conditionsOf } from "./atLatitude.ts";
import type { WearRecord } from "./record.ts";

interface OnePlace {
  readonly rig: Rig;
  readonly record: WearRecord;
  readonly notes: readonly NoteFact[];
}

/**
 * Rig and record with one latitude: if both say one and they differ, the sunnier counts for both. If only one says it, the months of the
 * other count as at the sunniest latitude.
 */
export function inOnePlace(rig: Rig, record: WearRecord): OnePlace {
  const [ofRig, ofRecord] = [rig.latitude, record.latitude];
  if (ofRig === undefined || ofRecord === undefined || ofRig === ofRecord) return { rig, record, notes: [] };
  const latitude = sunnier(ofRig, ofRecord);
  return {
    rig: atLatitude(rig, latitude),
    record: { ...record, latitude },
    notes: [noteFact("record.otherLatitude", { rig: ofRig, record: ofRecord })],
  };
}

/** A note if the rig's file gives months outside and does not say where: they count as at the sunniest latitude. */
export const latitudeNotes = (rig: Rig): readonly NoteFact[] =>
  conditionsOf(rig).some(countsAnywhere) ? [noteFact("rig.latitude", {})] : [];

/** Whether months of a condition in the file count as at the sunniest latitude because the file does not say where. */
export const countsAnywhere = ({ monthsOutside = 0, sun, sunMonths, latitude }: Condition): boolean =>
  monthsOutside > 0 && sun !== 0 && sunMonths === undefined && latitude === undefined;
