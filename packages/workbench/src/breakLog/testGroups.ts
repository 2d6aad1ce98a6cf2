/** Tests in the groups that are analysed together, and by how they failed. */

import type { BreakTest, GroupReport } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";

export interface Grouped {
  readonly name: string;
  readonly tests: readonly BreakTest[];
}

export function groupsBy(tests: readonly BreakTest[], nameOf: (test: BreakTest) => string): Grouped[] {
  const groups = new Map<string, BreakTest[]>();
  for (const test of tests) groups.set(nameOf(test), [...(groups.get(nameOf(test)) ?? []), test]);
  return [...groups].map(([name, own]) => ({ name, tests: own }));
}

/** How it failed and where; a test that did not break says so. */
export function failureWords({ failureMode, failurePlace, outcome }: BreakTest): string {
  const words = [failureMode, failurePlace].filter((word) => word !== undefined).join(", ");
  if (outcome === "stopped") return sayBreakLog("testGroups.notBroken");
  return words === "" ? sayBreakLog("testGroups.failureNotWritten") : words;
}

/** Load at which the test is drawn [N]. */
export const loadOf = ({ result }: BreakTest): number =>
  result.kind === "between" ? (result.from + result.to) / 2 : result.value;

export function resultWords({ result, outcome }: BreakTest, force: (newton: number) => string): string {
  if (result.kind === "between")
    return sayBreakLog("testGroups.brokeBetween", { from: force(result.from), to: force(result.to) });
  if (result.kind === "below") return sayBreakLog("testGroups.brokeBelow", { force: force(result.value) });
  if (result.kind === "above")
    return outcome === "stopped"
      ? sayBreakLog("testGroups.heldStoppedThere", { force: force(result.value) })
      : sayBreakLog("testGroups.heldBrokeElsewhere", { force: force(result.value) });
  return sayBreakLog("testGroups.broke", { force: force(result.value) });
}

/** The test that the outlier test points out. */
export function isOutlier(test: BreakTest, report: GroupReport | undefined): boolean {
  const index = report?.outlier?.index;
  if (report === undefined || index === undefined) return false;
  const exact = report.tests.filter(({ result }) => result.kind === "exact");
  const odd = exact[index];
  return (
    odd !== undefined &&
    odd.result.kind === "exact" &&
    test.result.kind === "exact" &&
    odd.result.value === test.result.value
  );
}
