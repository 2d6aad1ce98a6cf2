/** A ground profile from a table of distance and height, in metres or feet, as its first line says or as somebody was asked. */
import { readTable, type TableFault } from "../tables/readTable.ts";
import type { Profile } from "./lowest.ts";

export type LengthUnit = "m" | "ft";
/** The international foot [m]. */
const METRES_PER_FOOT = 0.3048;
/** More points than this draw no better ground [-]. */
const MOST_POINTS = 1000;

export type ProfileFault =
  | TableFault
  /** The file does not say whether it is in metres or feet: somebody must. */
  | { readonly kind: "unit" }
  | { readonly kind: "backwards"; readonly row: number }
  /** Heights that count from somewhere else, such as the sea. */
  | { readonly kind: "datum"; readonly first: number };

export type ProfileReading =
  | { readonly ok: true; readonly profile: Profile; readonly unit: LengthUnit; readonly leftOut: number }
  | { readonly ok: false; readonly faults: readonly ProfileFault[] };

/** `unit`: what somebody said, where the file does not say it itself. Distances from A, heights relative to A. */
export function readProfile(text: string, unit?: LengthUnit): ProfileReading {
  const table = readTable(text);
  if (!table.ok) return table;
  const said = table.columns && unitOf(table.columns.slice(0, 2).map((column) => column.unit));
  const used = said ?? unit;
  if (used === undefined) return { ok: false, faults: [{ kind: "unit" }] };
  const factor = used === "ft" ? METRES_PER_FOOT : 1;
  const points = table.rows.map(([x, z]) => [x! * factor, z! * factor] as const);
  const back = points.findIndex(([x], i) => i > 0 && x <= points[i - 1]![0]);
  if (back >= 0) return { ok: false, faults: [{ kind: "backwards", row: table.lines[back]! }] };
  // A profile that is above anchor A all along counts from another height.
  if (points.every(([, z]) => z > 0)) return { ok: false, faults: [{ kind: "datum", first: points[0]![1] }] };
  const kept = fewest(points);
  return {
    ok: true,
    unit: used,
    leftOut: points.length - kept.length,
    profile: kept.map(([x, z]) => [metre(x), height(z)]),
  };
}

const metre = (value: number) => `${Math.round(value * 100) / 100} m`;

/** Ground is never written lower than it is. */
const height = (value: number) => `${Math.ceil(value * 100 - 1e-6) / 100} m`;

/** One unit for both columns; undefined where the file does not say, or says two. */
function unitOf(units: readonly string[]): LengthUnit | undefined {
  const known = units.map((unit): LengthUnit | undefined => {
    if (/^(?:m|metre|metres|meter|meters)$/i.test(unit)) return "m";
    return /^(?:ft|foot|feet)$/i.test(unit) ? "ft" : undefined;
  });
  return known[0] !== undefined && known[0] === known[1] ? known[0] : undefined;
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
