/** Tests in the groups that are analysed together, and by how they failed. */
import type { BreakTest } from "@secondline/strength";

/** As the analysis names its groups: part, material, state and wetness. */
export const groupLabel = (t: BreakTest): string => [t.part, t.material, t.state, t.wet ? "wet" : "dry"].join(", ");

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
export function failureOf({ failureMode, failurePlace, outcome }: BreakTest): string {
  const words = [failureMode, failurePlace].filter((word) => word !== undefined).join(", ");
  if (outcome === "stopped") return "not broken";
  return words === "" ? "failure not written down" : words;
}

/** Load at which the test is drawn [N]. */
export const loadOf = ({ result }: BreakTest): number =>
  result.kind === "between" ? (result.from + result.to) / 2 : result.value;

export function resultWords({ result, outcome }: BreakTest, force: (newton: number) => string): string {
  if (result.kind === "between") return `broke between ${force(result.from)} and ${force(result.to)}`;
  if (result.kind === "below") return `broke below ${force(result.value)}`;
  if (result.kind === "above")
    return outcome === "stopped"
      ? `held ${force(result.value)}, stopped there`
      : `held ${force(result.value)}, broke elsewhere`;
  return `broke at ${force(result.value)}`;
}
