/** Faults of a record's entries: places outside the webbing, stretches that end before they begin. */
import type { FactValue, Issue } from "@secondline/rig";
import { type RecordFact, recordFact } from "./recordFacts.ts";

export type RecordIssue = Issue<RecordFact>;

/** The extent of a webbing, positions from the marked end [m]. */
export type RemainingWebbing = readonly [from: number, to: number];

export function recordFault(path: string, got: FactValue, expected: FactValue, message: RecordFact): RecordIssue {
  return { path, got, expected, message };
}

/** `point`: a place without length will do. */
export function stretchFaults(
  { from, to }: { readonly from: number; readonly to: number },
  kept: RemainingWebbing,
  path: string,
  point = false,
): RecordIssue[] {
  const issues = [...outside(from, kept, `${path}.from`), ...outside(to, kept, `${path}.to`)];
  if (point ? to < from : to <= from) {
    issues.push(
      recordFault(
        `${path}.to`,
        { length: to },
        recordFact("expected.longer", { than: { length: from } }),
        recordFact("stretch.backwards", lengthRange(from, to)),
      ),
    );
  }
  return issues;
}

export const spotFaults = (at: number, kept: RemainingWebbing, path: string) => outside(at, kept, `${path}.at`);

function outside(at: number, [from, to]: RemainingWebbing, path: string): RecordIssue[] {
  if (from <= at && at <= to) return [];
  const range = recordFact("range", lengthRange(from, to));
  return [recordFault(path, { length: at }, range, recordFact("spot.outside", { at: { length: at }, range }))];
}

/** Values of a stretch [m]. */
export const lengthRange = (from: number, to: number) => ({ from: { length: from }, to: { length: to } });
