/** Faults of a record's entries: places outside the webbing, stretches that end before they begin. */
import { formatLength, type RigIssue } from "@secondline/rig";

/** What there is of a webbing, positions from the marked end [m]. */
export type Kept = readonly [from: number, to: number];

export function fault(path: string, got: string, expected: string, message: string): RigIssue {
  return { path, got, expected, message };
}

/** `point`: a place without length will do. */
export function stretchFaults(
  { from, to }: { readonly from: number; readonly to: number },
  kept: Kept,
  path: string,
  point = false,
): RigIssue[] {
  const issues = [...outside(from, kept, `${path}.from`), ...outside(to, kept, `${path}.to`)];
  if (point ? to < from : to <= from) {
    issues.push(
      fault(
        `${path}.to`,
        formatLength(to),
        `more than ${formatLength(from)}`,
        `It ends at ${formatLength(to)}, before it begins at ${formatLength(from)}.`,
      ),
    );
  }
  return issues;
}

export const spotFaults = (at: number, kept: Kept, path: string) => outside(at, kept, `${path}.at`);

function outside(at: number, [from, to]: Kept, path: string): RigIssue[] {
  if (from <= at && at <= to) return [];
  const range = `${formatLength(from)} to ${formatLength(to)}`;
  return [
    fault(path, formatLength(at), range, `${formatLength(at)} lies outside the webbing, of which there is ${range}.`),
  ];
}
