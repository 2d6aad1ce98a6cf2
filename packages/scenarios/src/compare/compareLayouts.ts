/** Two to four layouts side by side: what differs, in the figures that decide between them. Labels are made elsewhere. */
import type { PartId } from "@secondline/rig";
import type { EventClass } from "../events/eventKind.ts";
import type { Outcome, PartOutcome } from "../outcome/outcome.ts";
import type { WhatIfOutcome } from "../run/whatIfOutcome.ts";

/** What a row shows, by which it is labelled. */
export type RowSubject =
  | { readonly kind: "leastMargin" }
  | { readonly kind: "standingTension" | "standingSag" | "clearance" | "person" }
  | { readonly kind: "walker" | "mainEnd" | "backupEnd" | "drop"; readonly class: EventClass }
  | { readonly kind: "margin"; readonly part: PartId };

export interface ComparisonRow {
  readonly id: string;
  readonly subject: RowSubject;
  readonly quantity: "load" | "length" | "margin";
  /** One value per layout; undefined if the layout does not have this quantity, or no run gave a number. */
  readonly values: readonly (number | undefined)[];
  /** For quantities from draws: the 95 % interval of each value, in its unit. */
  readonly intervals?: readonly (readonly [low: number, high: number] | undefined)[];
  /** Margins: what each layout says of the part; a part that is not loaded has no margin, and is not the stronger for it. */
  readonly verdicts?: readonly (PartOutcome["verdict"] | undefined)[];
  /**
   * Of what falls tell: which layouts lose the walker. Their runs end before all is asked, so a load or drop is at least the value, and a
   * margin or a height left at most.
   */
  readonly bounds?: readonly boolean[];
  /** Which end of the scale is kinder to the walker or the rig; absent: neither end. */
  readonly better?: "less" | "more";
  /** Largest over smallest, minus one [-]; absent where a value is missing or but a bound. */
  readonly spread?: number;
}

export interface Comparison {
  readonly names: readonly string[];
  readonly rows: readonly ComparisonRow[];
}

const FEWEST_LAYOUTS = 2;
const MOST_LAYOUTS = 4;

/** Throws for less than two or more than four layouts: that is no comparison, or no table a person can read. */
export function compareLayouts(outcomes: readonly Outcome[]): Comparison {
  if (outcomes.length < FEWEST_LAYOUTS || outcomes.length > MOST_LAYOUTS) {
    throw new RangeError(`A comparison takes ${FEWEST_LAYOUTS} to ${MOST_LAYOUTS} layouts, got ${outcomes.length}.`);
  }
  const row = (
    subject: RowSubject,
    quantity: ComparisonRow["quantity"],
    better: ComparisonRow["better"],
    value: (outcome: Outcome) => number | undefined,
  ): ComparisonRow => rowOf(subject, quantity, better, outcomes.map(value));
  const ofFalls = (...given: Parameters<typeof row>) => withBounds(row(...given), outcomes);
  const ofClass = (name: EventClass): ComparisonRow[] => [
    ofFalls({ kind: "walker", class: name }, "load", "less", (o) => largest(o, name, ({ peaks }) => peaks?.leash)),
    ofFalls({ kind: "mainEnd", class: name }, "load", "less", (o) =>
      largest(o, name, ({ peaks }) => peaks && Math.max(peaks.mainA, peaks.mainB)),
    ),
    ofFalls({ kind: "backupEnd", class: name }, "load", "less", (o) =>
      largest(o, name, ({ peaks }) => peaks && positive(Math.max(peaks.backupA, peaks.backupB))),
    ),
    ofFalls({ kind: "drop", class: name }, "length", "less", (o) => largest(o, name, ({ drop }) => drop)),
  ];
  return {
    names: outcomes.map((outcome) => outcome.rigName),
    rows: [
      ofFalls({ kind: "leastMargin" }, "margin", "more", (o) => marginOf(partNamed(o, o.leastMargin))),
      row({ kind: "standingTension" }, "load", undefined, (o) => o.statics.standingTension),
      row({ kind: "standingSag" }, "length", undefined, (o) => o.statics.standingSag),
      ...ofClass("expected"),
      ...ofClass("afterFailure"),
      {
        ...ofFalls({ kind: "person" }, "load", "less", (o) => o.person?.demand),
        intervals: outcomes.map(({ person }) => person && ([person.low, person.high] as const)),
      },
      ofFalls({ kind: "clearance" }, "length", "more", (o) => o.falls.leastFeet?.height),
      ...partRows(outcomes).map((one) => withBounds(one, outcomes)),
    ],
  };
}

/** Whether a fall of a class, or of any, ends with the walker lost. Runs go on through the ground, but not past a leash that has parted. */
const losesWalker = ({ falls, whatIfs }: Outcome, name?: EventClass): boolean =>
  falls.notCaught.some((i) => name === undefined || whatIfs[i]?.class === name);

/** A row of what falls tell; values that are but bounds are not set against one another. */
function withBounds({ spread, ...row }: ComparisonRow, outcomes: readonly Outcome[]): ComparisonRow {
  const name = "class" in row.subject ? row.subject.class : undefined;
  const bounds = outcomes.map((outcome) => losesWalker(outcome, name));
  if (bounds.includes(true)) return { ...row, bounds };
  return spread === undefined ? row : { ...row, spread };
}

/** Margins of the parts that all layouts have. */
function partRows(outcomes: readonly Outcome[]): ComparisonRow[] {
  const [first, ...others] = outcomes;
  const shared = first!.parts.filter((part) => others.every((outcome) => partNamed(outcome, part.id) !== undefined));
  return shared.map(({ id }) => {
    const parts = outcomes.map((outcome) => partNamed(outcome, id)!);
    return {
      ...rowOf({ kind: "margin", part: id }, "margin", "more", parts.map(marginOf)),
      verdicts: parts.map(({ verdict }) => verdict),
    };
  });
}

const partNamed = (outcome: Outcome, id: PartId | undefined) => outcome.parts.find((part) => part.id === id);
const marginOf = (part: PartOutcome | undefined): number | undefined =>
  part?.governing && part.byClass[part.governing]?.margin;
const positive = (value: number) => (value > 0 ? value : undefined);

function largest(
  outcome: Outcome,
  name: EventClass,
  value: (one: WhatIfOutcome) => number | undefined,
): number | undefined {
  const counted = outcome.whatIfs.filter((one) => one.ok && one.counts && one.class === name);
  const found = counted.flatMap((one) => value(one) ?? []);
  return found.length === 0 ? undefined : Math.max(...found);
}

function rowOf(
  subject: RowSubject,
  quantity: ComparisonRow["quantity"],
  better: ComparisonRow["better"],
  values: readonly (number | undefined)[],
): ComparisonRow {
  const known = values.filter((value): value is number => value !== undefined && value > 0);
  const id = [
    subject.kind,
    ...("class" in subject ? [subject.class] : []),
    ...("part" in subject ? [subject.part] : []),
  ];
  return {
    id: id.join("."),
    subject,
    quantity,
    values,
    ...(better === undefined ? {} : { better }),
    ...(known.length === values.length ? { spread: Math.max(...known) / Math.min(...known) - 1 } : {}),
  };
}
