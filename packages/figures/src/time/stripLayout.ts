/** Places of the words around a plot over time: the names at its right end, flags over it, names beside their traces. */
import type { Recording } from "@secondline/engine";
import { type EndLabel, keptLabels } from "./endLabel.ts";
import { ENERGY_BANDS } from "./energyBands.ts";
import type { EventMark } from "./eventMarks.ts";
import { flagLanes, spreadLabels } from "./labelLayout.ts";
import { type Gutter, type PlotFrame, xOf } from "./plotFrame.ts";
import type { TimeRange } from "./plotGrid.ts";
import { tracesOf } from "./traces.ts";

/** Width of a label [px]. */
type Measure = (text: string) => number;

const FORCE_NAMES: Gutter = { wide: 184, compact: 108 };
const ENERGY_NAMES: Gutter = { wide: 216, compact: 142 };
/** Room beside a name for its leader, its sample and its value [px]. */
const WIDTH_BESIDE_NAME: Gutter = { wide: 104, compact: 52 };

/** Room for the names, more of it where a language has longer ones. */
export function stripGutter(of: "forces" | "energy", recording: Recording, widthOf: Measure): Gutter {
  const [least, named] = of === "energy" ? [ENERGY_NAMES, ENERGY_BANDS] : [FORCE_NAMES, tracesOf(recording)];
  const widest = (names: readonly string[]) => Math.max(...names.map(widthOf));
  return {
    wide: Math.max(least.wide, WIDTH_BESIDE_NAME.wide + widest(named.map(({ name }) => name))),
    compact: Math.max(least.compact, WIDTH_BESIDE_NAME.compact + widest(named.map(({ shortName }) => shortName))),
  };
}

/** Room around a flag's words, the gap to the next one included [px]. */
const FLAG_PADDING = 18;

export interface LaidFlag {
  readonly mark: EventMark;
  readonly x: number;
  /** Upper end of the hairline down to its moment [px]. */
  readonly lineTop: number;
  /** Place of the words; null: they have no room. */
  readonly words: { readonly left: number; readonly top: number; readonly side: "left" | "right" } | null;
}

/** Flags of the events in sight. */
export function laidFlags(
  marks: readonly EventMark[],
  range: TimeRange,
  frame: PlotFrame,
  widthOf: Measure,
): LaidFlag[] {
  const visible = marks.filter(({ time }) => time >= range.from && time <= range.to);
  const wishes = visible.map(({ time, label, rank }) => ({
    at: xOf(time, range, frame),
    size: widthOf(label) + FLAG_PADDING,
    rank,
  }));
  const places = flagLanes(wishes, frame.lanes, frame.width);
  return visible.map((mark, i) => {
    const [x, place] = [wishes[i]!.at, places[i]];
    if (!place) return { mark, x, lineTop: frame.top - 8, words: null };
    const { lane, left } = place;
    return {
      mark,
      x,
      lineTop: (lane + 1) * frame.laneHeight - 4,
      words: { left, top: lane * frame.laneHeight, side: left < x - 1 ? "left" : "right" },
    };
  });
}

const LABEL_HEIGHT: Gutter = { wide: 24, compact: 18 };
/** Between the traces and their names [px]. */
const LEADER_WIDTH: Gutter = { wide: 18, compact: 10 };

export interface LaidNames {
  /** Height of each, and the width of the line from its trace to it [px]. */
  readonly size: number;
  readonly leader: number;
  /** With the middle of each, from the top of the plot area [px]. */
  readonly names: readonly { readonly label: EndLabel; readonly centre: number }[];
}

/** Names beside the ends of their traces, none over another; only the greatest if there is no room for all. */
export function laidNames(all: readonly EndLabel[], frame: PlotFrame, compact: boolean): LaidNames {
  const kind = compact ? "compact" : "wide";
  const size = LABEL_HEIGHT[kind];
  const [low, high] = [-frame.headroom, frame.height + frame.axisHeight];
  const kept = keptLabels(all, Math.floor((high - low) / size));
  const centres = spreadLabels(
    kept.map(({ y }) => ({ at: y, size })),
    low,
    high,
  );
  return { size, leader: LEADER_WIDTH[kind], names: kept.map((label, i) => ({ label, centre: centres[i]! })) };
}
