/**
 * A slow-pull curve from the table of a test machine: force and stretch, as the first line names them with their units. Other columns,
 * such as time, may stand beside them.
 */
import { parseQuantity } from "@secondline/rig";
import { type FileColumn, readTable, type TableFault } from "../tables/readTable.ts";

/** Stretch [-] and tension [N]. */
export type PullPoint = readonly [stretch: number, tension: number];

export type PullFault =
  | TableFault
  /** The first line does not say which column is which, or in what unit. */
  | { readonly kind: "columnNames" }
  /** Several columns are forces, or several are stretches. */
  | { readonly kind: "severalColumns"; readonly first: string; readonly second: string }
  | { readonly kind: "nothing" }
  /** At a higher load it is shorter. */
  | { readonly kind: "backwards"; readonly from: number; readonly to: number };

export type PullReading =
  | { readonly ok: true; readonly points: readonly PullPoint[] }
  | { readonly ok: false; readonly faults: readonly PullFault[] };

/** Levels of load, evenly from none to the largest, at which a measured curve is read [-]. */
const LOAD_LEVELS = 12;

/** Reads the way up to the largest force; what comes after the break says nothing of the curve. */
export function readPull(text: string): PullReading {
  const table = readTable(text, columnsNeeded);
  if (!table.ok) return table;
  const found = columnsOf(table.columns ?? []);
  if ("kind" in found) return { ok: false, faults: [found] };
  const { force, stretch } = found;
  const rows = table.rows.map((row): PullPoint => [row[stretch.at]! * stretch.factor, row[force.at]! * force.factor]);
  const largest = rows.reduce((best, [, tension], i) => (tension > rows[best]![1] ? i : best), 0);
  const most = rows[largest]![1];
  if (!(most > 0)) return { ok: false, faults: [{ kind: "nothing" }] };
  const points = Array.from({ length: LOAD_LEVELS }, (_, i) => (most * (i + 1)) / LOAD_LEVELS).map(
    (level): PullPoint => [stretchAt(rows, level), level],
  );
  const fault = backwards(points);
  return fault ? { ok: false, faults: [fault] } : { ok: true, points };
}

/** The first place where more load goes with less stretch; the curve begins at nothing. */
export function backwards(points: readonly PullPoint[]): Extract<PullFault, { kind: "backwards" }> | undefined {
  const all: readonly PullPoint[] = [[0, 0], ...points];
  const at = all.findIndex(([stretch], i) => i > 0 && stretch <= all[i - 1]![0]);
  return at < 0 ? undefined : { kind: "backwards", from: all[at - 1]![1], to: all[at]![1] };
}

/** Stretch where the force first comes to a level, straight between two rows [-]. */
function stretchAt(rows: readonly PullPoint[], level: number): number {
  const at = rows.findIndex(([, tension]) => tension >= level);
  const [stretch, tension] = rows[at]!;
  if (at === 0) return stretch;
  const [before, less] = rows[at - 1]!;
  return before + ((stretch - before) * (level - less)) / (tension - less);
}

interface Found {
  readonly at: number;
  readonly factor: number;
}
interface PullColumns {
  readonly force: Found;
  readonly stretch: Found;
}

const columnsNeeded = (columns: readonly FileColumn[]): readonly number[] | undefined => {
  const found = columnsOf(columns);
  return "kind" in found ? undefined : [found.force.at, found.stretch.at];
};

function columnsOf(columns: readonly FileColumn[]): PullColumns | PullFault {
  const found = columns.map(({ name, unit }, at) => ({ at, name, ...kindOf(unit) }));
  const [force, otherForce] = found.filter(({ kind }) => kind === "force");
  const [stretch, otherStretch] = found.filter(({ kind }) => kind === "stretch");
  if (!force || !stretch) return { kind: "columnNames" };
  if (otherForce) return { kind: "severalColumns", first: force.name, second: otherForce.name };
  if (otherStretch) return { kind: "severalColumns", first: stretch.name, second: otherStretch.name };
  return { force, stretch };
}

/** Stretch as a length over a length. */
const SHARE_UNIT = /^(?:-|1|mm ?\/ ?mm|m ?\/ ?m|in ?\/ ?in)$/i;

function kindOf(unit: string): { readonly kind: "force" | "stretch" | undefined; readonly factor: number } {
  if (unit === "%") return { kind: "stretch", factor: 0.01 };
  if (SHARE_UNIT.test(unit)) return { kind: "stretch", factor: 1 };
  const read = parseQuantity(`1 ${unit}`, "force");
  return read.ok ? { kind: "force", factor: read.value } : { kind: undefined, factor: 1 };
}
