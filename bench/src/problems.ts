/** The problems that are timed: those the results are checked on, and a line of a kilometre made from one of them. */
import { readdirSync, readFileSync } from "node:fs";
import { type Material, type Problem, readProblem } from "@secondline/engine";

const folder = new URL("../../tests/reference/problems/", import.meta.url);

export function referenceProblems(): Problem[] {
  const names = readdirSync(folder).filter((name) => name.endsWith(".json") && !name.includes(".expected."));
  return names.sort().map((name) => {
    const reading = readProblem(JSON.parse(readFileSync(new URL(name, folder), "utf8")));
    if (!reading.ok) throw new Error(`${name}: ${JSON.stringify(reading.issues)}`);
    return reading.problem;
  });
}

/** A kilometre of line with a backup and two connections, cut at one end. */
export function kilometre(problems: readonly Problem[]): Problem {
  const cut = problems.find(({ name }) => name === "cut-60-connected")!;
  return {
    ...cut,
    name: "cut-1000-two-connections",
    span: 1000,
    main: { ...cut.main, pretension: 8000 },
    backup: { ...cut.backup!, slack: 0.03, connections: [{ at: 0.33 }, { at: 0.67 }] },
    walker: { ...cut.walker, at: 0.5 },
    duration: 10,
  };
}

export const straightLaw = (problems: readonly Problem[]): Material =>
  problems.find(({ name }) => name === "fall-60-polyester")!.main.material!;
export const tableLaw = (problems: readonly Problem[]): Material =>
  problems.find(({ name }) => name === "fall-40-curve-with-backup")!.main.material!;
