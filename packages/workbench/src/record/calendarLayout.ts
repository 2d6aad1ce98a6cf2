/** The calendar of a webbing or part laid out: its axis, its paper, and where every entry stands. */
import { type Scale, type Shape, scaleOf } from "@secondline/figures";
import {
  calendarPaper,
  calendarStays,
  HEAD_HEIGHT,
  STAY_HEIGHT,
  type TakeDownMark,
  takeDownBand,
} from "@secondline/figures/wear";
import { sayWear } from "@secondline/words/page/wear";
import type { WrittenEntry, WrittenRecord } from "../documents/documents.ts";
import { dayOf } from "../wear/days.ts";
import { entriesOf, type Owner } from "../wear/entryEdits.ts";
import { calendarSpan, datedOf, type PlacedDate, placeDates, staysOf } from "./calendar.ts";
import { calendarTicks } from "./dateWords.ts";
import { PART_KINDS, WEBBING_KINDS } from "./entryKinds.ts";

export interface CalendarOf {
  readonly record: WrittenRecord;
  readonly owner: Owner;
  /** The day that is shown, YYYY-MM-DD. */
  readonly on: string;
  readonly mark: TakeDownMark | undefined;
  /** First and last day while a hand moves something: the axis holds still. */
  readonly held: readonly [number, number] | undefined;
  readonly width: number;
  readonly wide: boolean;
}

export interface CalendarLayout {
  readonly entries: readonly WrittenEntry[];
  readonly x: Scale;
  readonly span: readonly [number, number];
  /** The day that is shown, since 1970. */
  readonly today: number;
  readonly placed: readonly (PlacedDate & { readonly y: number })[];
  /** There is room for the words beside the marks. */
  readonly hasLabels: boolean;
  readonly bottom: number;
  readonly paper: readonly Shape[];
}

/** More entries than these have no room for words beside their marks. */
const MOST_LABELS = 18;

export function calendarLayout({ record, owner, on, mark, held, width, wide }: CalendarOf): CalendarLayout {
  const entries = entriesOf(record, owner);
  const dated = datedOf(entries, owner.list === "webbings" ? WEBBING_KINDS : PART_KINDS);
  const days = dated.map(({ day }) => day);
  const today = dayOf(on) ?? 0;
  const span = held ?? calendarSpan(days, today, mark ? [mark.day] : []);
  const x = scaleOf(span[0], span[1], wide ? 112 : 12, width - 14);
  const rowHeight = wide ? 28 : 34;
  const hasLabels = wide && dated.length <= MOST_LABELS;
  const placed = placeDates(dated, x, hasLabels, width);
  const top = HEAD_HEIGHT + STAY_HEIGHT + 12;
  const bottom = top + (Math.max(0, ...placed.map(({ row }) => row)) + 1) * rowHeight + 6;
  const ticks = calendarTicks(span[0], span[1], Math.floor(width / (wide ? 52 : 44)));
  const name: Shape = { kind: "text", words: sayWear("calendarFigure.entries"), x: 0, y: top + 18, styled: "lane" };
  const paper = [
    calendarPaper(ticks, x, bottom),
    ...(mark ? [takeDownBand(mark, x, today, bottom, width)] : []),
    calendarStays(staysOf(entries), x, today, wide),
    ...(wide ? [name] : []),
  ];
  const withHeight = placed.map((one) => ({ ...one, y: top + one.row * rowHeight + rowHeight / 2 }));
  return { entries, x, span, today, placed: withHeight, hasLabels, bottom, paper };
}
