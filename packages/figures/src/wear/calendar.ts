/**
 * The calendar of a webbing or part: months, the times during which it hung, the entries on their days, and the take-down date.
 */
import { sayWear } from "@secondline/words/page/wear";
import type { Scale } from "../scale.ts";
import { circle, group, path, rect, type Shape, text, unspoken } from "../shapes/shape.ts";
import { bandLabel, stayBar } from "./calendarLabels.ts";

/** Height over the calendar for the day that is shown, and of the row of stays [px]. */
export const HEAD_HEIGHT = 34;
export const STAY_HEIGHT = 22;

/** A border of months; `year`: the first of a year. */
export interface CalendarTick {
  readonly day: number;
  readonly label: string;
  readonly year: boolean;
}

/** Months and years. */
export const calendarPaper = (ticks: readonly CalendarTick[], x: Scale, bottom: number): Shape =>
  unspoken([
    ...ticks.flatMap(({ day, label, year }) => [
      path(`M${x.px(day)} ${HEAD_HEIGHT}V${bottom}`, { styled: year ? "axis" : "rule" }),
      text(label, x.px(day), bottom + 17, {
        textAnchor: "middle",
        styled: year ? undefined : "soft",
        fontWeight: year ? 600 : 400,
      }),
    ]),
    path(`M${x.px(x.from)} ${bottom}H${x.px(x.to)}`, { styled: "axis" }),
  ]);

/** A time during which the webbing or part hung, from day to day; undefined: it still hangs. `title`: with its dates. */
export interface CalendarStay {
  readonly from: number;
  readonly to: number | undefined;
  readonly label: string;
  readonly title: string;
}

/** The times during which it hung, as bars. */
export function calendarStays(stays: readonly CalendarStay[], x: Scale, today: number, wide: boolean): Shape {
  const bars = stays.map((stay) => {
    const bar = stayBar(stay, x, today);
    const box = { x: bar.left, y: HEAD_HEIGHT, width: bar.width, height: STAY_HEIGHT };
    const label = { styled: "halo", textAnchor: "middle" } as const;
    return group(
      [
        rect(box, { rx: 2, fill: { pattern: "span" }, stroke: "softInk" }),
        ...(bar.label === undefined ? [] : [text(bar.label, bar.middle, HEAD_HEIGHT + 15, label)]),
      ],
      { title: stay.title },
    );
  });
  const name = text(sayWear("calendarPaper.outside"), 0, HEAD_HEIGHT + 15, { styled: "lane" });
  return group([...(wide ? [name] : []), ...bars]);
}

/** A take-down date, in days since 1970, with a few words. */
export interface TakeDownMark {
  readonly day: number;
  readonly words: string;
}

/** From the take-down date on. `today`: the day that is shown; where the words do not fit, a sentence beside the calendar says it. */
export function takeDownBand(
  { day, words }: TakeDownMark,
  x: Scale,
  today: number,
  bottom: number,
  width: number,
): Shape {
  const { at, before, fits } = bandLabel(day, words, x, x.px(today), width);
  const box = { x: at, y: HEAD_HEIGHT, width: Math.max(2, x.px(x.to) - at), height: bottom - HEAD_HEIGHT };
  const label = text(words, before ? at - 8 : at + 8, HEAD_HEIGHT + 15, {
    styled: "halo",
    textAnchor: before ? "end" : "start",
    fill: "failsInk",
    fontWeight: 600,
  });
  return unspoken([
    rect(box, { fill: { pattern: "short" }, opacity: 0.45 }),
    path(`M${at} ${HEAD_HEIGHT - 4}V${bottom}`, { stroke: "failsInk", strokeWidth: 2, strokeDasharray: "7 4" }),
    path(`M${at} ${HEAD_HEIGHT + 2}l-6-10h12z`, { fill: "failsInk" }),
    ...(fits ? [label] : []),
  ]);
}

/** The day that is shown: a line through the calendar with the date on a handle. */
export function dayLine(at: number, date: string, bottom: number, width: number): readonly Shape[] {
  const half = (date.length * 6.6 + 20) / 2;
  const middle = Math.min(Math.max(at, half), width - half);
  return [
    rect({ x: at - 12, y: HEAD_HEIGHT, width: 24, height: bottom - HEAD_HEIGHT }, { fill: "transparent" }),
    path(`M${at} 26V${bottom}`, { stroke: "accent", strokeWidth: 2 }),
    rect({ x: middle - half, y: 2, width: 2 * half, height: 24 }, { rx: 12, fill: "accent" }),
    rect({ x: middle - half - 3, y: -1, width: 2 * half + 6, height: 30 }, { rx: 15, styled: "focus" }),
    text(date, middle, 18, { textAnchor: "middle", fill: "onAccent", fontWeight: 500 }),
  ];
}

/** A shape for every kind of entry, 14 px across, about its middle. */
const EVENT_SHAPES: Readonly<Record<string, string>> = {
  rigged: "M-6 5V-5M6 5V-5M-6-3Q0 4 6-3",
  moved: "M-6 0H5M1-4l4 4-4 4",
  putUp: "M0 6V-5M-4-1l4-4 4 4",
  takenDown: "M0-6V5M-4 1l4 4 4-4",
  retensioned: "M-6 0H6M-3-3l-3 3 3 3M3-3l3 3-3 3",
  falls: "M0-6v7M-3-2l3 3 3-3M-5 5H5",
  shade: "M-6 3a6 6 0 0 1 12 0zM0-6v1M-6-3l1 1M6-3l-1 1",
  wet: "M0-6c3 4 4 5 4 7a4 4 0 0 1-8 0c0-2 1-3 4-7z",
  damage: "M-5-5L5 5M5-5L-5 5",
  clamped: "M-6-4h12M-6 4h12M-3-4v8M3-4v8",
  sewn: "M-6 2l3-4 3 4 3-4 3 4",
  cutToLength: "M-5-5L4 4M5-5L-4 4M-4 4a2 2 0 1 0-2 2M4 4a2 2 0 1 1 2 2",
  hardFall: "M0-7v8M-3-2l3 3 3-3M-6 6l3-3 3 3 3-3 3 3",
  replaced: "M-5-1a5 5 0 0 1 9-2M5 1a5 5 0 0 1-9 2M4-6v3H1M-4 6V3h3",
};

/** An entry on its day, with room for a pointer; `chosen`: the reader is looking at it. */
export const entryMark = (event: string, x: number, y: number, chosen: boolean): readonly Shape[] => [
  circle(x, y, 14, { fill: "transparent" }),
  unspoken(
    [
      circle(0, 0, 11, { fill: chosen ? "accentWash" : "paper", stroke: chosen ? "accent" : "edge" }),
      path(EVENT_SHAPES[event] ?? "M-4 0H4", {
        fill: "none",
        stroke: "ink",
        strokeWidth: 1.5,
        strokeLinecap: "round",
        strokeLinejoin: "round",
      }),
    ],
    { transform: `translate(${x} ${y})` },
  ),
  circle(x, y, 14, { styled: "focus" }),
];
