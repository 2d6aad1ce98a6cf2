/** The figures kept in the repository, to compare with: written with --save on the machine named in them. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";

export type Figures = Readonly<Record<string, number>>;
interface Baseline {
  readonly machine: string;
  readonly node: string;
  readonly figures: Figures;
}
const file = new URL("../baseline.json", import.meta.url);
export const machine = (): string => `${cpus()[0]?.model ?? "unknown"}, ${cpus().length} processors`;

export const readBaseline = (): Baseline | undefined =>
  existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as Baseline) : undefined;

export function saveBaseline(figures: Figures): void {
  const rounded = Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [name, Number(value.toPrecision(4))]),
  );
  const baseline: Baseline = { machine: machine(), node: process.version, figures: rounded };
  writeFileSync(file, `${JSON.stringify(baseline, null, 2)}\n`);
}
