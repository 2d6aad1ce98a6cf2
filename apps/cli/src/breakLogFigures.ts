/** Plots of a break log as files: a drawing (SVG) and their numbers (CSV). */

import { PALETTES, type Plot, plotsSvg, textWidth } from "@secondline/figures";
import { breakLogPlots, FIGURE_KINDS, type FigureKind, plotsCsv } from "@secondline/figures/breakLog";
import { inputHash } from "@secondline/scenarios";
import type { BreakLogReport, BreakTest } from "@secondline/strength";
import { listed } from "@secondline/words";
import { englishBreakLogWords as words } from "@secondline/words/breakLog";
import { longDay } from "@secondline/words/dates";
import { sayOptions } from "@secondline/words/terminal/options";
import { sayStrength } from "@secondline/words/terminal/strength";
import { CommandFailure, EXIT } from "./failure.ts";
import { checkOutFile, type OutFile, writeOutFile } from "./outFile.ts";
import { message } from "./terminal.ts";
import { VERSION } from "./version.ts";

export interface FigureOptions {
  readonly plot?: string;
  readonly table?: string;
  readonly figure?: readonly string[];
  readonly dark?: boolean;
  readonly force?: boolean;
}

/** The files to write, checked before anything is computed. */
export interface FigureFiles {
  readonly plot: OutFile | undefined;
  readonly table: OutFile | undefined;
  readonly kinds: readonly FigureKind[];
  readonly dark: boolean;
}

export function figureFiles(log: string, options: FigureOptions): FigureFiles {
  const outFile = (name: string | undefined) =>
    name === undefined ? undefined : checkOutFile(name, options.force === true, [log]);
  const [plot, table] = [outFile(options.plot), outFile(options.table)];
  if (plot !== undefined && plot.path === table?.path) throw refuse(sayOptions("figures.sameFile"));
  const idle = (["figure", "dark", "force"] as const).find((name) => {
    const value = options[name];
    return value === true || (Array.isArray(value) && value.length > 0);
  });
  if (plot === undefined && idle === "dark") throw refuse(sayOptions("figures.needsPlot"));
  if (plot === undefined && table === undefined && idle !== undefined) {
    throw refuse(sayOptions("figures.needsFile", { option: idle }));
  }
  return { plot, table, kinds: kindsOf(options.figure ?? []), dark: options.dark === true };
}

const anyOf = (kinds: readonly string[]) =>
  kinds.reduce((list, last) => sayOptions("figures.or", { kinds: list, last }));
const refuse = (line: string) => new CommandFailure(EXIT.input, [line]);

function kindsOf(asked: readonly string[]): readonly FigureKind[] {
  const unknown = asked.find((one) => !FIGURE_KINDS.some((kind) => kind === one));
  if (unknown !== undefined)
    throw refuse(sayOptions("figures.unknown", { got: unknown.slice(0, 40), kinds: listed(FIGURE_KINDS) }));
  return asked.length === 0 ? FIGURE_KINDS : FIGURE_KINDS.filter((kind) => asked.includes(kind));
}

export interface FigureSource {
  /** File of the log. */
  readonly name: string;
  readonly tests: readonly BreakTest[];
  readonly report: BreakLogReport;
  readonly cautions: readonly string[];
}

export function writeFigures({ plot, table, kinds, dark }: FigureFiles, source: FigureSource): void {
  if (plot === undefined && table === undefined) return;
  const plots = breakLogPlots(source.tests, source.report, words).filter(({ figure }) => kinds.includes(figure));
  if (plots.length === 0) throw refuse(sayOptions("figures.none", { file: source.name, kinds: anyOf(kinds) }));
  const cautions = [words.say("figure.caution"), ...source.cautions];
  if (plot !== undefined) {
    writeOutFile(plot, drawing(plots, source, cautions, dark));
    message(words.say("figure.written", { file: plot.name, count: plots.length }));
  }
  if (table !== undefined) {
    writeOutFile(table, plotsCsv(plots, cautions));
    message(words.say("figure.written", { file: table.name, count: plots.length }));
  }
}

function drawing(
  plots: readonly Plot[],
  { name, tests }: FigureSource,
  cautions: readonly string[],
  dark: boolean,
): string {
  const day = longDay(new Date());
  const title = words.say("figure.title", { name });
  const foot = sayStrength("figures.foot", { version: VERSION, day, hash: inputHash(tests).slice(0, 16) });
  return plotsSvg(plots, { title, cautions, foot }, PALETTES[dark ? "dark" : "light"], textWidth);
}
