/** What lies where on a webbing, in lanes of its own kind: riggings, falls, clamps, stitching and damage. */
import { formatMonths } from "@secondline/rig";
import type { WebbingState } from "@secondline/strength";
import { placeOf, type Stretch, type WrittenEntry } from "@secondline/workbench";
import { dateWords } from "../wearInHand/days.ts";
import { entryWords, WEBBING_KINDS } from "./entryKinds.ts";

export type LaneKind = "span" | "falls" | "clamp" | "sewn" | "damage";

export interface LaneItem extends Stretch {
  readonly key: string;
  readonly kind: LaneKind;
  readonly label: string;
  /** In full, for screen readers and tooltips. */
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
    lane("Hung", "span"),
    lane("Falls", "falls"),
    lane("Clamps", "clamp"),
    lane("Sewn, damaged", "sewn", "damage"),
  ].filter(({ items: own }) => own.length > 0);
}

function entryItem(entry: WrittenEntry, index: number, on: string): LaneItem[] {
  const kind = LANE_OF[entry.event];
  const place = placeOf(entry);
  if (kind === undefined || place === undefined) return [];
  const name = `${dateWords(entry.date)}: ${entryWords(WEBBING_KINDS, entry)}`;
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

/** A few letters for a bar. */
export function shortLabel(entry: WrittenEntry): string {
  switch (entry.event) {
    case "rigged":
    case "moved":
      return `${String(entry.rig ?? "")}${entry.line === "backup" ? ", backup" : ""}`;
    case "falls":
      return `${String(entry.falls ?? "?")} falls`;
    case "clamped":
      return "clamped";
    case "damage":
      return String(entry.kind ?? "damage");
    case "retensioned":
      return `${String(entry.pulled ?? "?")} at ${String(entry.end ?? "?")}`;
    case "shade":
      return `light ${String(entry.sun ?? "?")}`;
    case "wet":
      return entry.wet === true ? "wet" : "dry";
    case "takenDown":
      return "taken down";
    case "cutToLength":
      return "cut";
    case "storm":
      return "storm";
    case "edgeContact":
      return "edge";
    case "hotRing":
    case "ranHot":
      return "ran hot";
    case "hardFall":
      return "hard fall";
    case "tensionReading":
      return String(entry.tension ?? "tension");
    case "sagReading":
      return `sag ${String(entry.sag ?? "?")}`;
    case "inspected":
      return String(entry.judgement ?? "inspected");
    default:
      return entry.event;
  }
}

function weblocks({ marks }: WebbingState): LaneItem[] {
  return marks.flatMap((mark, i) => {
    if (mark.kind !== "clampMark" || mark.weblock !== true) return [];
    const now = mark.until === undefined;
    const time = formatMonths(mark.months);
    const name = now
      ? `In a weblock since ${dateWords(mark.since.toString())}`
      : `Mark of ${time} in a weblock, ${dateWords(mark.since.toString())} to ${dateWords(mark.until.toString())}`;
    return [
      {
        key: `weblock ${i}`,
        kind: "clamp",
        from: mark.from,
        to: mark.to,
        label: now ? `${time}, still` : time,
        name,
        ends: false,
        later: false,
      },
    ];
  });
}
