/** Layouts by the load of an anchor and the drop, each with its weight: those that no other beats, those that one beats, those that fail. */

import type { FrontierLayout, FrontierPoint } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { englishCompareWords as words } from "@secondline/words/compare";
import { labelHeights } from "../labelHeights.ts";
import type { Axis, Mark, Plot, PlotText } from "../plot/plot.ts";
import { roundTicks } from "../roundTicks.ts";

/** Height of the space between the axes [px]. */
const AXES_HEIGHT = 200;
/** Least distance between names [px]. */
const NAME_GAP = 17;
const NAME_DISTANCE = 9;
/** Room beside the outermost points, as a share of the distance between them; if they are one, of the largest value [-]. */
const EDGE_ROOM_SHARE = 0.25;
const LEAST_EDGE_ROOM = 0.05;

const MARK_BY_STANDING: Readonly<Record<FrontierLayout["standing"]["kind"], Mark["kind"]>> = {
  unbeaten: "best",
  beaten: "beaten",
  fails: "keepsNot",
  unknown: "open",
};

interface Placed {
  readonly letter: string;
  readonly layout: FrontierLayout;
  readonly at: FrontierPoint;
}

/** `letters`: names of the layouts. Undefined if no layout has all three numbers. */
export function frontierPlot(layouts: readonly FrontierLayout[], letters: readonly string[]): Plot | undefined {
  const placed = layouts.flatMap((layout, i): Placed[] =>
    layout.at ? [{ letter: letters[i]!, layout, at: layout.at }] : [],
  );
  if (placed.length === 0) return undefined;
  const x = axisOf(
    words.sayFrontier("frontier.drop"),
    placed.map(({ at }) => at.drop),
  );
  const y = axisOf(
    words.sayFrontier("frontier.load"),
    placed.map(({ at }) => at.load / 1000),
  );
  return {
    figure: "frontier",
    of: layouts[0]!.name,
    title: words.sayFrontier("frontier.title"),
    notes: [
      ...words.frontierSentences(layouts, letters),
      ...placed.map(({ letter, at }) => words.frontierNumbers(letter, at)),
    ],
    x,
    y,
    strength: "y",
    bands: [],
    curves: [],
    marks: placed.map(
      ({ layout, at }): Mark => ({ kind: MARK_BY_STANDING[layout.standing.kind], at: [at.drop, at.load / 1000] }),
    ),
    rules: [],
    texts: namesOf(placed, y),
    height: AXES_HEIGHT,
    rows: placed.map(({ letter, layout, at }) => ({
      series: layout.standing.kind,
      layout: letter,
      drop_m: at.drop,
      load_kN: at.load / 1000,
      weight_kg: at.weight,
    })),
  };
}

function axisOf(label: string, values: readonly number[]): Axis {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = Math.max(EDGE_ROOM_SHARE * (most - least), LEAST_EDGE_ROOM * most);
  const [from, to] = [Math.max(0, least - room), most + room];
  return { label, from, to, ticks: roundTicks(from, to, 5).map((at) => ({ at, text: quantity.number(at) })) };
}

/** Letter and weight beside each point, moved apart where they would lie on one another. */
function namesOf(placed: readonly Placed[], y: Axis): readonly PlotText[] {
  const perPixel = (y.to - y.from) / AXES_HEIGHT;
  const rows = [...placed].sort((a, b) => b.at.load - a.at.load);
  const heights = labelHeights(
    rows.map(({ at }) => (y.to - at.load / 1000) / perPixel + 4),
    NAME_GAP,
  );
  return rows.map(({ letter, at }, i) => ({
    at: [at.drop, y.to - heights[i]! * perPixel],
    text: words.frontierPoint(letter, at),
    off: NAME_DISTANCE,
  }));
}
