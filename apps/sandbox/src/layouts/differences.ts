/** The rows of the table of differences: this what-if, then all of them. */
import { formatForce, formatLength, formatRatio } from "@secondline/rig";
import { type ComparisonRow, compareLayouts, type Outcome, type WhatIfOutcome } from "@secondline/scenarios";
import { backupOf, fateWords, isLost, mainOf } from "./whatItDid.ts";

export interface TableRow {
  readonly id: string;
  readonly label: string;
  readonly cells: readonly string[];
  /** Against the first layout, where it is worth saying; "" elsewhere. */
  readonly changes: readonly string[];
  /** Places of the kindest values, when the layouts differ and one end of the scale is kinder. */
  readonly kindest: readonly number[];
}

/** Less spread than this is none [-]. */
const NOTABLE = 0.03;

export function fallRows(outcomes: readonly WhatIfOutcome[]): readonly TableRow[] {
  const number = (
    id: string,
    label: string,
    unit: "N" | "m",
    better: "less" | "more",
    value: (outcome: WhatIfOutcome) => number | undefined,
  ) => {
    const values = outcomes.map((one) => (one.ok ? value(one) : undefined));
    return tableRow({ id, label, unit, better, values }, lost);
  };
  // A run that ends on the ground pulls on nothing any more: small numbers of it are no merit.
  const lost = outcomes.map((one) => !one.ok || isLost(one));
  return [
    tableRow({
      id: "fate",
      label: "How it ends",
      unit: "words",
      values: outcomes.map((one) => (one.ok ? fateWords(one) : "not computed reliably")),
    }),
    number("drop", "Drop", "m", "less", ({ drop }) => drop),
    number("harness", "Hardest pull on the harness", "N", "less", ({ peaks }) => peaks?.leash),
    number("main", "Hardest pull of the main line at an anchor", "N", "less", mainOf),
    number("backup", "Hardest pull of the backup at an anchor", "N", "less", backupOf),
    number("feet", "Height left under the feet", "m", "more", ({ feetClearance }) =>
      feetClearance === undefined ? undefined : Math.max(0, feetClearance),
    ),
  ];
}

/** Figures over all what-ifs, and apart from them the margins part by part. */
export function verdictRows(outcomes: readonly Outcome[]): {
  readonly figures: readonly TableRow[];
  readonly margins: readonly TableRow[];
} {
  const failing = outcomes.map(({ verdict }) => verdict === "fails");
  const rows = compareLayouts(outcomes).rows.map((row) =>
    tableRow(row.id === "clearance" ? overGround(row) : row, failing),
  );
  const isPart = ({ id }: TableRow) => id.startsWith("margin.");
  return { figures: rows.filter((row) => !isPart(row)), margins: rows.filter(isPart) };
}

/** Feet that would be below the ground are on it. */
const overGround = (row: ComparisonRow): ComparisonRow => ({
  ...row,
  values: row.values.map((value) => (typeof value === "number" ? Math.max(0, value) : value)),
});

/** `out`: layouts whose values count for nothing when the kindest is sought. */
function tableRow(
  { id, label, unit, better, values }: Omit<ComparisonRow, "spread">,
  out: readonly boolean[] = [],
): TableRow {
  return {
    id,
    label,
    cells: values.map((value) => cellWords(value, unit)),
    changes: values.map((value, i) => (i === 0 ? "" : changeWords(values[0], value, unit))),
    kindest:
      better === undefined
        ? []
        : kindestOf(
            values.map((value, i) => (out[i] ? undefined : value)),
            better,
          ),
  };
}

function cellWords(value: number | string | undefined, unit: ComparisonRow["unit"]): string {
  if (value === undefined) return "–";
  if (typeof value === "string") return value;
  if (unit === "N") return formatForce(value);
  return unit === "m" ? formatLength(value) : `× ${formatRatio(value)}`;
}

function changeWords(
  first: number | string | undefined,
  value: number | string | undefined,
  unit: ComparisonRow["unit"],
): string {
  if (typeof first !== "number" || typeof value !== "number") return "";
  const change = value - first;
  if (Math.abs(change) <= NOTABLE * Math.max(Math.abs(first), Math.abs(value))) return "";
  const sign = change > 0 ? "+" : "−";
  const size = Math.abs(change);
  // Beside a value in kilonewtons or metres: in the same unit, however small, and no finer than that value.
  const fine = (number: number) => String(Number(number.toFixed(number < 1 ? 2 : 1)));
  if (unit === "N") return `${sign}${fine(size / 1000)} kN`;
  return unit === "m" ? `${sign}${fine(size)} m` : `${sign}${formatRatio(size)}`;
}

function kindestOf(values: readonly (number | string | undefined)[], better: "less" | "more"): readonly number[] {
  const known = values.filter((value) => typeof value === "number");
  if (known.length < 2) return [];
  const [least, most] = [Math.min(...known), Math.max(...known)];
  if (most - least <= NOTABLE * Math.max(Math.abs(least), Math.abs(most))) return [];
  const best = better === "less" ? least : most;
  return values.flatMap((value, i) => (value === best ? [i] : []));
}
