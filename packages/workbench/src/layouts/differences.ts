/** The rows of the table of differences: first this what-if, then all what-ifs. The words package writes every figure. */

import {
  type ComparisonRow,
  compareLayouts,
  type Outcome,
  type PartVerdict,
  type Rig,
  type WhatIfOutcome,
} from "@secondline/scenarios";
import { quantity, englishWords as words } from "@secondline/words";
import { englishCompareWords as compareWords } from "@secondline/words/compare";
import { sayLayouts } from "@secondline/words/page/layouts";

export interface TableRow {
  readonly id: string;
  readonly label: string;
  readonly cells: readonly string[];
  /** What each layout says of the part that the row is about. */
  readonly verdicts?: readonly (PartVerdict | undefined)[];
  /** Against the first layout, where it is worth saying; "" elsewhere. */
  readonly changes: readonly string[];
  /** Places of the kindest values, when the layouts differ and one end of the scale is kinder. */
  readonly kindest: readonly number[];
}

/** Less spread than this is none: meshes differ by as much [-]. */
const NOTABLE_SPREAD = 0.03;

/** What a row's numbers are, and how they are written. */
type Figure = Pick<ComparisonRow, "id" | "quantity" | "better" | "values"> & {
  readonly label: string;
  readonly text: (layout: number) => string;
  readonly verdicts?: ComparisonRow["verdicts"];
};

/** `fails`: which layouts fail over all what-ifs, as far as that is known. */
export function fallRows(
  rigs: readonly Rig[],
  runs: readonly WhatIfOutcome[],
  fails: readonly boolean[] = [],
): readonly TableRow[] {
  // After a run ends on the ground nothing is pulled any more, so its small numbers are no merit; nor are those of a layout that fails.
  const lost = runs.map((one) => !one.ok || isLost(one));
  const without = lost.map((one, i) => one || fails[i] === true);
  const row = (
    id: string,
    label: string,
    kind: "load" | "drop" | "height",
    value: (run: WhatIfOutcome) => number | undefined,
  ) => {
    const values = runs.map((one) => (one.ok ? value(one) : undefined));
    const text = (layout: number) => (values[layout] === undefined ? "–" : quantity[kind](values[layout]));
    const better = kind === "height" ? "more" : "less";
    return tableRow({ id, label, quantity: kind === "load" ? "load" : "length", better, values, text }, lost, without);
  };
  return [
    {
      id: "fate",
      label: sayLayouts("differences.howEnds"),
      cells: runs.map((one, i) => (one.ok ? words.fate(rigs[i]!, one) : words.trouble(rigs[i]!, one.trouble))),
      changes: runs.map(() => ""),
      kindest: [],
    },
    row("drop", sayLayouts("differences.drop"), "drop", ({ drop }) => drop),
    row("harness", sayLayouts("differences.hardestPullHarness"), "load", ({ peaks }) => peaks?.leash),
    row(
      "main",
      sayLayouts("differences.hardestPullMain"),
      "load",
      ({ peaks }) => peaks && Math.max(peaks.mainA, peaks.mainB),
    ),
    row(
      "backup",
      sayLayouts("differences.hardestPullBackup"),
      "load",
      ({ peaks }) => peaks && Math.max(peaks.backupA, peaks.backupB),
    ),
    row("feet", sayLayouts("differences.heightLeftUnder"), "height", ({ feetClearance }) =>
      feetClearance === undefined ? undefined : Math.max(0, feetClearance),
    ),
  ];
}

/** Figures over all what-ifs, and apart from them the margins part by part. `rig`: the first of those compared. */
export function verdictRows(
  rig: Rig,
  outcomes: readonly Outcome[],
): {
  readonly figures: readonly TableRow[];
  readonly margins: readonly TableRow[];
  /** What "at least" and "at most" in the rows mean, where they stand there. */
  readonly note?: string;
} {
  const failing = outcomes.map(({ verdict }) => verdict === "fails");
  const rows = compareLayouts(outcomes).rows.map(onGround);
  const isPart = ({ subject }: ComparisonRow) => subject.kind === "margin";
  const figures = rows.filter((row) => !isPart(row)).map((row) => comparisonFigure(rig, row));
  // A title says that they are margins.
  const margins = rows.flatMap((row) =>
    row.subject.kind === "margin"
      ? [{ ...comparisonFigure(rig, row), label: words.partName(rig, row.subject.part) }]
      : [],
  );
  const table = (found: readonly Figure[]) => found.map((figure) => tableRow(figure, failing));
  const note = rows.some(({ bounds }) => bounds) ? { note: compareWords.say("caption.compareFailing") } : {};
  return { figures: table(figures), margins: table(margins), ...note };
}

/** What a layout does otherwise than the first one, in the figures of the table: the widest apart first. */
export function differencesTold(rig: Rig, first: Outcome, other: Outcome): readonly string[] {
  return compareLayouts([first, other])
    .rows.map(onGround)
    .filter(({ spread, verdicts }) => (spread ?? 0) > NOTABLE_SPREAD && !verdicts?.includes("notLoaded"))
    .sort((a, b) => b.spread! - a.spread!)
    .slice(0, MOST_TOLD_DIFFERENCES)
    .map((row) => {
      const { label, text } = comparisonFigure(rig, row);
      return sayLayouts("differences.instead", { label, now: text(1), before: text(0) });
    });
}
const MOST_TOLD_DIFFERENCES = 4;

/** Nothing holds the walker, or the ground came first. */
export const isLost = ({ caughtBy, lostBecause }: WhatIfOutcome) => lostBecause !== undefined || caughtBy === "nothing";

function comparisonFigure(rig: Rig, row: ComparisonRow): Figure {
  return { ...row, label: compareWords.compareLabel(rig, row), text: (layout) => withUnit(row, layout) };
}

function withUnit(row: ComparisonRow, layout: number): string {
  const text = compareWords.compareValue(row, layout);
  if (row.values[layout] === undefined || row.verdicts?.[layout] === "notLoaded") return text;
  switch (row.quantity) {
    case "load":
      return `${text} kN`;
    case "length":
      return `${text} m`;
    case "margin":
      return row.bounds?.[layout] ? text : `× ${text}`;
  }
}

/** Feet that would be below the ground are on it. */
const onGround = (row: ComparisonRow): ComparisonRow =>
  row.subject.kind === "clearance"
    ? { ...row, values: row.values.map((value) => (value === undefined ? undefined : Math.max(0, value))) }
    : row;

/** `out`: layouts whose values are set against no other; `unkind`: those that are no merit when the kindest is sought. */
function tableRow(
  { id, label, quantity: kind, better, values, text, verdicts }: Figure,
  out: readonly boolean[],
  unkind = out,
): TableRow {
  const within = (left: readonly boolean[]) =>
    values.map((value, i) => (left[i] || verdicts?.[i] === "notLoaded" ? undefined : value));
  const counted = within(out);
  return {
    id,
    label,
    cells: values.map((_, i) => text(i)),
    ...(verdicts ? { verdicts } : {}),
    changes: values.map((_, i) => (i === 0 ? "" : changeText(counted[0], counted[i], kind))),
    kindest: better === undefined ? [] : kindestOf(within(unkind), better),
  };
}

function changeText(first: number | undefined, value: number | undefined, kind: ComparisonRow["quantity"]): string {
  if (first === undefined || value === undefined) return "";
  const change = value - first;
  if (Math.abs(change) <= NOTABLE_SPREAD * Math.max(Math.abs(first), Math.abs(value))) return "";
  const sign = change > 0 ? "+" : "−";
  const size = Math.abs(change);
  switch (kind) {
    case "load":
      return `${sign}${quantity.rounded(size / 1000, size < 1000 ? 2 : 1, "nearest")} kN`;
    case "length":
      return `${sign}${quantity.rounded(size, 1, "nearest")} m`;
    case "margin":
      return `${sign}${quantity.rounded(size, size < 10 ? 2 : 0, "nearest")}`;
  }
}

function kindestOf(values: readonly (number | undefined)[], better: "less" | "more"): readonly number[] {
  const known = values.filter((value) => value !== undefined);
  if (known.length < 2) return [];
  const [least, most] = [Math.min(...known), Math.max(...known)];
  if (most - least <= NOTABLE_SPREAD * Math.max(Math.abs(least), Math.abs(most))) return [];
  const best = better === "less" ? least : most;
  return values.flatMap((value, i) => (value === best ? [i] : []));
}
