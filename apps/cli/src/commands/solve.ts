/** `solve`: one problem file through the engine. */
import { type Accuracy, type Recording, simulate } from "@secondline/engine";
import { broughtIn, quantity } from "@secondline/words";
import { saySolve } from "@secondline/words/terminal/solve";
import { CommandFailure, EXIT } from "../failure.ts";
import { LARGEST_BYTES, readJsonFile } from "../input.ts";
import { jsonText } from "../jsonText.ts";
import { problemOf } from "../problemFile.ts";
import { table } from "../table.ts";
import { print, width } from "../terminal.ts";

export function solve(file: string, options: { readonly json?: boolean; readonly accuracy: Accuracy }): void {
  const problem = problemOf(readJsonFile(file, LARGEST_BYTES.problem));
  const result = simulate(problem, { accuracy: options.accuracy });
  if (!result.ok) throw new CommandFailure(EXIT.audit, [`${file}: ${result.reason}: ${broughtIn(result.message)}`]);
  const flat = flatResult(result.recording);
  print(options.json ? jsonText(flat) : solveTable(result.recording, flat));
}

/** The figures that programs solving the same problem are compared by. SI units; null: did not happen. */
export function flatResult({ standing, peaks, walker, energy, firstBreak }: Recording) {
  return {
    "standing.tension": standing.tension,
    "standing.sag": standing.sag,
    "leash.cfc60": peaks.leash.cfc60,
    "leash.peakTime": peaks.leash.cfc60Time,
    "mainA.cfc60": peaks.mainA.cfc60,
    "mainB.cfc60": peaks.mainB.cfc60,
    "backupA.cfc60": peaks.backupA.cfc60,
    "backupB.cfc60": peaks.backupB.cfc60,
    "walker.drop": walker.drop,
    "walker.lowest": walker.lowest,
    "energy.gain": energy.gain,
    firstBreak: firstBreak?.part ?? null,
    ...(firstBreak ? { "firstBreak.time": firstBreak.time, "firstBreak.at": firstBreak.at ?? null } : {}),
  };
}

const UNIT_OF_RESULT: Readonly<Record<string, string>> = {
  "standing.tension": "N",
  "standing.sag": "m",
  "leash.peakTime": "s",
  "walker.drop": "m",
  "walker.lowest": "m",
  "energy.gain": "J",
  "firstBreak.time": "s",
  "firstBreak.at": "-",
};

function solveTable(recording: Recording, flat: Readonly<Record<string, number | string | null>>): string {
  const rows = Object.entries(flat).map(([name, value]) => {
    const unit = typeof value === "number" ? (UNIT_OF_RESULT[name] ?? "N") : "";
    return [
      name,
      typeof value === "number" ? quantity.local(value.toFixed(unit === "N" ? 0 : 4)) : (value ?? saySolve("none")),
      unit,
    ];
  });
  const { elements, step, steps } = recording.mesh;
  const values = { elements, steps, step: quantity.local((step * 1e6).toFixed(1)) };
  const columns = [
    { head: saySolve("table.quantity") },
    { head: saySolve("table.value"), align: "right" },
    { head: saySolve("table.unit") },
  ] as const;
  return `${saySolve("mesh", { problem: recording.problem.name, ...values })}\n\n${table(columns, rows, width)}`;
}
