/** The values of a sweep one by one: as rows of a table, and as places in its plot that can be opened. */
import type { SweptPoint } from "@secondline/scenarios";
import { howFarWords as words } from "@secondline/words/howFar";
import type { FoundSweep } from "./howFarDesk.ts";

const { say } = words;

export interface SweepTable {
  readonly heads: readonly string[];
  readonly rows: readonly { readonly values: readonly number[]; readonly cells: readonly string[] }[];
  /** So many cells at the beginning of a row are numbers. */
  readonly numbers: number;
}

/** The varied value, the result with its band, whether the result keeps the limit, and which part governs. */
export function sweepTable({ swept, named }: FoundSweep): SweepTable {
  const { points, what, knobs, region } = swept;
  const parts = what.kind === "margin";
  return {
    numbers: knobs.length + 2,
    heads: [
      ...knobs.map((knob) => words.number(named, knob)),
      words.sweep.say("table.value"),
      words.sweep.say("table.band"),
      ...(region ? [words.sweep.limit(what, region.limit)] : []),
      ...(parts ? [words.sweep.say("table.governs")] : []),
    ],
    rows: points.map(({ values, curve }, i) => {
      const state = region?.states[i];
      return {
        values,
        cells: [
          ...knobs.map((knob, k) => words.point(knob, values[k]!)),
          curve ? words.sweep.value(what, curve.value) : "–",
          curve ? words.sweep.band(what, curve) : "",
          ...(region ? [state ? say(`state.${state}`) : ""] : []),
          ...(parts ? [curve ? words.sweep.governs(named, curve) : ""] : []),
        ],
      };
    }),
  };
}

export interface SweepSpot {
  readonly values: readonly number[];
  /** Its place in the plot. */
  readonly at: readonly [number, number];
  /** "6 % slack: 1.43 (1.41 to 1.52). Show its run." */
  readonly label: string;
}

/** Values that have a place in the plot. */
export const sweepSpots = ({ swept }: FoundSweep): readonly SweepSpot[] =>
  swept.points.flatMap((point) => {
    const y = swept.knobs.length > 1 ? point.values[1] : (point.own?.value ?? point.curve?.value);
    if (y === undefined) return [];
    return [{ values: point.values, at: [point.values[0]!, y] as const, label: spotLabel(swept, point) }];
  });

function spotLabel({ knobs, what }: FoundSweep["swept"], { values, curve }: SweptPoint): string {
  const at = words.at(knobs, values);
  const value = curve ? `: ${words.sweep.value(what, curve.value)} (${words.sweep.band(what, curve)})` : "";
  return `${at}${value}. ${say("table.open", { at })}`;
}
