/** `compare`: two to four layouts side by side. */
import { type Accuracy, CAUTIONS, type Comparison, type ComparisonRow, compareLayouts } from "@secondline/scenarios";
import { CommandFailure, EXIT } from "../failure.ts";
import { kilonewtons, margin, metres } from "../quantity.ts";
import { readRigFile } from "../rigFile.ts";
import { runStudy } from "../study.ts";
import { table } from "../table.ts";
import { dim, message, print, width } from "../terminal.ts";
import { bullets, wrapHanging } from "../wrap.ts";

export interface CompareOptions {
  readonly json?: boolean;
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
}

export async function compare(files: readonly string[], options: CompareOptions): Promise<void> {
  if (files.length < 2 || files.length > 4) {
    throw new CommandFailure(EXIT.input, [`compare takes two to four rigs, got ${files.length}.`]);
  }
  const rigs = files.map(readRigFile);
  const outcomes = [];
  for (const rig of rigs) {
    outcomes.push(await runStudy(rig, { accuracy: options.accuracy, size: options.set }, `${rig.name}: `));
  }
  const comparison = compareLayouts(outcomes);
  // Of every layout, each once: what is said of one of them holds beside the others too.
  const cautions = [...new Set([...CAUTIONS, ...outcomes.flatMap((outcome) => outcome.cautions)])];
  print(options.json ? JSON.stringify({ ...comparison, cautions }, null, 2) : comparisonText(comparison, cautions));
  for (const outcome of outcomes) {
    if (outcome.incomplete.length === 0) continue;
    message(
      `${outcome.rigName}: ${outcome.incomplete.length} what-ifs could not be computed; its figures are incomplete.`,
    );
    process.exitCode = EXIT.audit;
  }
}

function comparisonText({ names, rows }: Comparison, cautions: readonly string[]): string {
  const letters = names.map((_, i) => String.fromCharCode(65 + i));
  const words = (id: string, i: number) => String(rows.find((row) => row.id === id)!.values[i]);
  const heads = names.map((name, i) =>
    wrapHanging(
      `${letters[i]}  ${name}: ${words("verdict", i)}; first to fail: ${words("firstToFail", i)}`,
      width,
      "   ",
    ),
  );
  const numbers = rows.filter((row) => row.unit !== "words");
  const body = numbers.map((row) => [label(row), ...row.values.map((value) => shown(row, value)), change(row)]);
  const columns = [
    { head: "Layout", flexible: true },
    ...letters.map((head) => ({ head, align: "right" as const })),
    { head: "differ by", align: "right" as const },
  ];
  return [
    ...heads,
    "",
    table(columns, body, width),
    dim("Forces in kN, lengths in m."),
    "",
    ...bullets(cautions, width),
  ].join("\n");
}

const label = (row: ComparisonRow) => row.label;

function shown(row: ComparisonRow, value: number | string | undefined): string {
  if (value === undefined) return "–";
  if (typeof value === "string") return value;
  return row.unit === "N" ? kilonewtons(value) : row.unit === "m" ? metres(value) : margin(value);
}

function change(row: ComparisonRow): string {
  return row.spread === undefined || row.spread < 0.005 ? "" : `${(row.spread * 100).toFixed(0)} %`;
}
