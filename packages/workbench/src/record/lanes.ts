/** What lies where on a webbing, in lanes of its own kind: riggings, falls, clamps, stitching and damage. */

import type { WebbingState } from "@secondline/strength";
import { dayText } from "@secondline/words/dates";
import { sayRecord } from "@secondline/words/page/record";
import type { WrittenEntry } from "../documents/documents.ts";
import { placeOf, type Stretch } from "../wear/place.ts";
import { entryWords, judgementWords, WEBBING_KINDS } from "./entryKinds.ts";
import { monthsWords } from "./months.ts";

export type LaneKind = "span" | "falls" | "clamp" | "sewn" | "damage";

export interface LaneItem extends Stretch {
  readonly key: string;
  readonly kind: LaneKind;
  readonly label: string;
  /** The full sentence, for screen readers and tooltips. */
  readonly name: string;
  /** Index of the entry it can be moved by; absent for what follows from others. */
  readonly entry?: number;
  /** Has a length of its own that can be drawn out. */
  readonly ends: boolean;
  /** Dated after the day that is shown. */
  readonly later: boolean;
}

export interface Lane {
  readonly name: string;
  readonly items: readonly LaneItem[];
}

const LANE_OF: Readonly<Record<string, LaneKind>> = {
  rigged: "span",
  moved: "span",
  falls: "falls",
  clamped: "clamp",
  sewn: "sewn",
  damage: "damage",
  edgeContact: "damage",
  hotRing: "damage",
  hardFall: "damage",
};

/** `state` gives the marks that weblocks leave; everything else is drawn from the entries as written. */
export function lanesOf(entries: readonly WrittenEntry[], state: WebbingState, on: string): Lane[] {
  const items = [...entries.flatMap((entry, i) => entryItem(entry, i, on)), ...weblocks(state)];
  const lane = (name: string, ...kinds: LaneKind[]): Lane => ({
    name,
    items: items.filter((item) => kinds.includes(item.kind)),
  });
  return [
    lane(sayRecord("lanes.hung"), "span"),
    lane(sayRecord("lanes.falls"), "falls"),
    lane(sayRecord("lanes.clamps"), "clamp"),
    lane(sayRecord("lanes.sewnDamaged"), "sewn", "damage"),
  ].filter(({ items: own }) => own.length > 0);
}

function entryItem(entry: WrittenEntry, index: number, on: string): LaneItem[] {
  const kind = LANE_OF[entry.event];
  const place = placeOf(entry);
  if (kind === undefined || place === undefined) return [];
  const name = `${dayText(entry.date)}: ${entryWords(WEBBING_KINDS, entry)}`;
  const ends = entry.at === undefined;
  return [
    {
      key: `entry ${index}`,
      kind,
      ...place,
      label: shortLabel(entry),
      name,
      entry: index,
      ends,
      later: entry.date > on,
    },
  ];
}

const damageWords = (kind: unknown): string =>
  kind === "abrasion" || kind === "heat" || kind === "cut"
    ? sayRecord(`lanes.damage.${kind}`)
    : String(kind ?? sayRecord("lanes.damaged"));

/** A few letters for a bar. */
export function shortLabel(entry: WrittenEntry): string {
  switch (entry.event) {
    case "rigged":
    case "moved":
      return entry.line === "backup"
        ? sayRecord("lanes.backupOf", { rig: String(entry.rig ?? "") })
        : String(entry.rig ?? "");
    case "falls":
      return sayRecord("lanes.fallsTaken", { count: String(entry.falls ?? "?") });
    case "clamped":
      return sayRecord("lanes.clamped");
    case "damage":
      return damageWords(entry.kind);
    case "retensioned":
      return sayRecord("lanes.clampedAt", { force: String(entry.pulled ?? "?"), time: String(entry.end ?? "?") });
    case "shade":
      return sayRecord("lanes.light", { share: String(entry.sun ?? "?") });
    case "wet":
      return entry.wet === true ? sayRecord("lanes.wet") : sayRecord("lanes.dry");
    case "takenDown":
      return sayRecord("lanes.takenDown");
    case "cutToLength":
      return sayRecord("lanes.cut");
    case "storm":
      return sayRecord("lanes.storm");
    case "edgeContact":
      return sayRecord("lanes.edge");
    case "hotRing":
    case "ranHot":
      return sayRecord("lanes.ranHot");
    case "hardFall":
      return sayRecord("lanes.hardFall");
    case "tensionReading":
      return String(entry.tension ?? sayRecord("lanes.tension"));
    case "sagReading":
      return sayRecord("lanes.sag", { sag: String(entry.sag ?? "?") });
    case "inspected":
      return judgementWords(entry.judgement);
    default:
      return entry.event;
  }
}

function weblocks({ marks }: WebbingState): LaneItem[] {
  return marks.flatMap((mark, i) => {
    if (mark.kind !== "clampMark" || mark.weblock !== true) return [];
    const now = mark.until === undefined;
    const time = monthsWords(mark.months);
    const name = now
      ? sayRecord("lanes.weblockSince", { day: dayText(mark.since.toString()) })
      : sayRecord("lanes.clampMarkOf", {
          time,
          from: dayText(mark.since.toString()),
          to: dayText(mark.until.toString()),
        });
    return [
      {
        key: `weblock ${i}`,
        kind: "clamp",
        from: mark.from,
        to: mark.to,
        label: now ? sayRecord("lanes.still", { time }) : time,
        name,
        ends: false,
        later: false,
      },
    ];
  });
}
