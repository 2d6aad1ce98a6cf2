/** A ground profile from a table of distance and height, in metres or feet, as its first line says or as somebody was asked. */

import { metreText } from "../metres.ts";
import { type FileColumn, readTable, type TableFault } from "../tables/readTable.ts";
import type { Profile } from "./lowest.ts";
import { FOOT, METRES, OTHER_LENGTH_UNIT, profileColumns } from "./profileColumns.ts";

export type LengthUnit = "m" | "ft";
/** The international foot [m]. */
const METRES_PER_FOOT = 0.3048;
/** More points than this draw no better ground [-]. */
const MOST_POINTS = 1000;

export type ProfileFault =
  | TableFault
  /** The file does not say whether it is in metres or feet: somebody must. */
  | { readonly kind: "unit" }
  /** It says two, or another one. */
  | { readonly kind: "unitsDiffer"; readonly first: string; readonly second: string }
  | { readonly kind: "unitUnknown"; readonly got: string }
  /** Either could be the distance, or the height. */
  | { readonly kind: "severalColumns"; readonly first: string; readonly second: string }
  /** It says another one than somebody did. */
  | { readonly kind: "unitSaid"; readonly said: LengthUnit; readonly asked: LengthUnit }
  | { readonly kind: "backwards"; readonly row: number }
  /** Heights that count from somewhere else, such as the sea. */
  | { readonly kind: "datum"; readonly first: number };

export type ProfileReading =
  | { readonly ok: true; readonly profile: Profile; readonly unit: LengthUnit; readonly leftOut: number }
  | { readonly ok: false; readonly faults: readonly ProfileFault[] };

/** `unit`: what somebody said, where the file does not say it itself. Distances from A, heights relative to A. */
export function readProfile(text: string, unit?: LengthUnit): ProfileReading {
  const table = readTable(text, columnsNeeded);
  if (!table.ok) return table;
  const { columns } = table;
  const found = profileColumns(columns ?? table.rows[0]!.map(() => NAMELESS));
  if ("kind" in found) return { ok: false, faults: [found] };
  const said = unitOf(columns ? [columns[found.distance]!.unit, columns[found.height]!.unit] : []);
  if (typeof said === "object") return { ok: false, faults: [said] };
  if (said !== undefined && unit !== undefined && said !== unit) {
    return { ok: false, faults: [{ kind: "unitSaid", said, asked: unit }] };
  }
  const used = said ?? unit;
  if (used === undefined) return { ok: false, faults: [{ kind: "unit" }] };
  const factor = used === "ft" ? METRES_PER_FOOT : 1;
  const points = table.rows.map((row) => [row[found.distance]! * factor, row[found.height]! * factor] as const);
  const back = points.findIndex(([x], i) => i > 0 && x <= points[i - 1]![0]);
  if (back >= 0) return { ok: false, faults: [{ kind: "backwards", row: table.lines[back]! }] };
  // A profile that is above anchor A all along counts from another height.
  if (points.every(([, z]) => z > 0)) return { ok: false, faults: [{ kind: "datum", first: points[0]![1] }] };
  const kept = fewest(points);
  return {
    ok: true,
    unit: used,
    leftOut: points.length - kept.length,
    profile: kept.map(([x, z]) => [metreText(x), height(z)]),
  };
}

const NAMELESS = { name: "", unit: "" };

const columnsNeeded = (columns: readonly FileColumn[]): readonly number[] | undefined => {
  const found = profileColumns(columns);
  return "kind" in found ? undefined : [found.distance, found.height];
};

/** Ground is never written lower than it is. */
const height = (value: number) => `${Math.ceil(value * 100 - 1e-6) / 100} m`;

/** One unit for both columns; undefined where the file does not say. */
function unitOf(units: readonly string[]): LengthUnit | ProfileFault | undefined {
  const other = units.find((unit) => OTHER_LENGTH_UNIT.test(unit));
  if (other !== undefined) return { kind: "unitUnknown", got: other };
  const [first, second] = units.map((unit): LengthUnit | undefined =>
    METRES.test(unit) ? "m" : FOOT.test(unit) ? "ft" : undefined,
  );
  if (first === undefined || second === undefined) return undefined;
  return first === second ? first : { kind: "unitsDiffer", first: units[0]!, second: units[1]! };
}

/** A profile that reaches so much farther than the span is doubtful [-]. */
const DOUBTFUL_REACH_RATIO = 1.5;
/** So near to the span in the other unit, and the unit is the likelier mistake [-]. */
const NEAR_SPAN_SHARE = 0.15;

export interface ReachDoubt {
  /** [m] */
  readonly reach: number;
  readonly span: number;
  /** It would fit if it had been read in this unit. */
  readonly unit: LengthUnit | undefined;
}

/** What is odd about how far a profile reaches, for a span [m]; undefined where nothing is. Too short a one is a fault of the rig. */
export function reachDoubt(profile: Profile, read: LengthUnit, span: number): ReachDoubt | undefined {
  const reach = Number.parseFloat(profile.at(-1)?.[0] ?? "");
  if (!(reach > 0) || !(span > 0)) return undefined;
  const fits = (factor: number) => Math.abs(reach * factor - span) <= NEAR_SPAN_SHARE * span;
  if (fits(1)) return undefined;
  const unit =
    read === "m" && fits(METRES_PER_FOOT) ? "ft" : read === "ft" && fits(1 / METRES_PER_FOOT) ? "m" : undefined;
  return unit !== undefined || reach > DOUBTFUL_REACH_RATIO * span ? { reach, span, unit } : undefined;
}

type Points = readonly (readonly [x: number, z: number])[];

/**
 * As many points as a file takes: in stretches of equal number, each as high as its highest point from end to end. The profile
 * lies nowhere below that of the file.
 */
function fewest(points: Points): Points {
  if (points.length <= MOST_POINTS) return points;
  const size = Math.ceil((2 * points.length) / MOST_POINTS);
  const kept: (readonly [number, number])[] = [];
  for (let from = 0; from < points.length; from += size) {
    const stretch = points.slice(from, from + size);
    const highest = Math.max(...stretch.map(([, z]) => z));
    kept.push([stretch[0]![0], highest]);
    if (stretch.length > 1) kept.push([stretch.at(-1)![0], highest]);
  }
  return kept;
}
