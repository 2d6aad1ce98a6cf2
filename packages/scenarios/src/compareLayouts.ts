/** Two to four layouts side by side: what differs, in the figures that decide between them. */
import type { Outcome, WhatIfOutcome } from "./outcome.ts";

export interface ComparisonRow {
  readonly id: string;
  readonly label: string;
  readonly unit: "N" | "m" | "-" | "words";
  /** One per layout; undefined where the layout has no such thing, or no trustworthy number. */
  readonly values: readonly (number | string | undefined)[];
  /** Which end of the scale is kinder to the walker or the rig; absent: neither. */
  readonly better?: "less" | "more";
  /** Largest over smallest, minus one [-]; absent for words and where a value is missing. */
  readonly spread?: number;
}

export interface Comparison {
  readonly names: readonly string[];
  readonly rows: readonly ComparisonRow[];
}

const FEWEST = 2;
const MOST = 4;

/** Throws for less than two or more than four layouts: that is no comparison, or no table a person can read. */
export function compareLayouts(outcomes: readonly Outcome[]): Comparison {
  if (outcomes.length < FEWEST || outcomes.length > MOST) {
    throw new RangeError(`A comparison takes ${FEWEST} to ${MOST} layouts, got ${outcomes.length}.`);
  }
  const numbers = (
    id: string,
    label: string,
    unit: "N" | "m" | "-",
    better: "less" | "more" | undefined,
    value: (outcome: Outcome) => number | undefined,
  ): ComparisonRow => row(id, label, unit, better, outcomes.map(value));
  const words = (id: string, label: string, value: (outcome: Outcome) => string): ComparisonRow => ({
    id,
    label,
    unit: "words",
    values: outcomes.map(value),
  });
  return {
    names: outcomes.map((outcome) => outcome.rigName),
    rows: [
      words("verdict", "Verdict", (outcome) => outcome.verdict + (outcome.incomplete.length > 0 ? ", incomplete" : "")),
      words("firstToFail", "First to fail", nameOfFirst),
      numbers(
        "margin",
        "Margin of the first to fail",
        "-",
        "more",
        (outcome) => partNamed(outcome, outcome.firstToFail)?.margin,
      ),
      numbers(
        "standingTension",
        "Tension, walker standing in the middle",
        "N",
        undefined,
        (o) => o.statics.standingTension,
      ),
      numbers("standingSag", "Sag, walker standing in the middle", "m", undefined, (o) => o.statics.standingSag),
      numbers("fall.leash", "Leash fall: hardest on the walker", "N", "less", (o) => largest(o, isFall, leash)),
      numbers("fall.anchor", "Leash fall: hardest on an end of the main line", "N", "less", (o) =>
        largest(o, isFall, anchor),
      ),
      numbers("fall.drop", "Leash fall: deepest drop", "m", "less", (o) => largest(o, isFall, (one) => one.drop)),
      numbers("fails.leash", "Main line fails: hardest on the walker", "N", "less", (o) =>
        largest(o, isFailure, leash),
      ),
      numbers("fails.backup", "Main line fails: hardest on the backup", "N", "less", (o) =>
        largest(o, isFailure, backup),
      ),
      numbers("fails.drop", "Main line fails: deepest drop", "m", "less", (o) =>
        largest(o, isFailure, (one) => one.drop),
      ),
      numbers("clearance", "Least height of the feet above the ground", "m", "more", (o) => {
        const least = largest(
          o,
          () => true,
          (one) => (one.feetClearance === undefined ? undefined : -one.feetClearance),
        );
        return least === undefined ? undefined : -least;
      }),
      ...outcomesParts(outcomes),
    ],
  };
}

/** Margins of the parts that all layouts have. */
function outcomesParts(outcomes: readonly Outcome[]): ComparisonRow[] {
  const [first, ...others] = outcomes;
  const shared = first!.parts.filter((part) => others.every((outcome) => partNamed(outcome, part.id) !== undefined));
  return shared.map((part) =>
    row(
      `margin.${part.id}`,
      `Margin: ${part.name}`,
      "-",
      "more",
      outcomes.map((outcome) => partNamed(outcome, part.id)!.margin),
    ),
  );
}

const partNamed = (outcome: Outcome, id: string) => outcome.parts.find((part) => part.id === id);
const nameOfFirst = (outcome: Outcome) => {
  const part = partNamed(outcome, outcome.firstToFail)!;
  return part.weakest && part.id === "main" ? `${part.name}, ${part.weakest.reason}` : part.name;
};
const isFall = (one: WhatIfOutcome) => one.whatIf.kind === "leashFall";
const isFailure = (one: WhatIfOutcome) => one.whatIf.kind === "mainFails";
const leash = (one: WhatIfOutcome) => one.peaks?.leash;
const anchor = (one: WhatIfOutcome) => one.peaks && Math.max(one.peaks.mainA, one.peaks.mainB);
const backup = (one: WhatIfOutcome) => one.peaks && Math.max(one.peaks.backupA, one.peaks.backupB);

function largest(
  outcome: Outcome,
  which: (one: WhatIfOutcome) => boolean,
  value: (one: WhatIfOutcome) => number | undefined,
): number | undefined {
  const found = outcome.whatIfs.filter((one) => one.ok && which(one)).flatMap((one) => value(one) ?? []);
  return found.length === 0 ? undefined : Math.max(...found);
}

function row(
  id: string,
  label: string,
  unit: "N" | "m" | "-",
  better: "less" | "more" | undefined,
  values: readonly (number | undefined)[],
): ComparisonRow {
  const known = values.filter((value) => value !== undefined && value > 0) as number[];
  const whole = known.length === values.length;
  return {
    id,
    label,
    unit,
    values,
    ...(better === undefined ? {} : { better }),
    ...(whole ? { spread: Math.max(...known) / Math.min(...known) - 1 } : {}),
  };
}
