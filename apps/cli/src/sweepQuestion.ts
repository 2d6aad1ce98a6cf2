/** The question of a sweep, read from options. A refusal names the option. */

import { parseQuantity, partIds, type Rig, readRig } from "@secondline/rig";
import {
  type Assessed,
  isApart,
  type Knob,
  type KnownBesides,
  NothingSwept,
  readKnob,
  type SweepPoints,
  type SweepWhat,
  type Swept,
} from "@secondline/scenarios";
import { listed } from "@secondline/words";
import { tellFault } from "@secondline/words/faults";
import { changeText, sweepWords as words } from "@secondline/words/sweep";
import { sayFiles } from "@secondline/words/terminal/files";
import { CommandFailure, EXIT } from "./failure.ts";
import { LARGEST_BYTES, readText } from "./input.ts";

const { say } = words;
const refuse = (...lines: readonly string[]): CommandFailure => new CommandFailure(EXIT.input, lines);

/** Number of points along one swept number, and along each of two [-]. */
const POINT_COUNTS = { one: { usual: 13, least: 3, most: 101 }, two: { usual: 7, least: 3, most: 31 } } as const;
/** Whole numbers are all run, up to this many [-]. */
const MOST_COUNTED = 25;

export function documentOf(file: string): unknown {
  const reading = readRig(readText(file, LARGEST_BYTES.rig));
  if (!reading.ok) throw refuse(sayFiles("unread.changed", { file }));
  return reading.document;
}

export interface SweptFile {
  readonly rig: Rig;
  readonly document: unknown;
  readonly known: KnownBesides;
}

/** One number, or two that make a map. */
export function readKnobs(
  texts: readonly string[],
  { rig, document, known }: SweptFile,
  option: string,
): readonly Knob[] {
  if (texts.length < 1 || texts.length > 2) throw refuse(say("fault.many", { option, count: texts.length }));
  const readings = texts.map((text) => readKnob(text, { rig, document, dated: known.on !== undefined }));
  const faults = readings.flatMap((one) => (one.ok ? [] : [words.fault(one.fault, option)]));
  if (faults.length > 0) throw refuse(...faults);
  const knobs = readings.flatMap((one) => (one.ok ? [one.knob] : []));
  if (new Set(knobs.map(({ name }) => name)).size < knobs.length)
    throw refuse(say("fault.same", { option, name: knobs[0]!.name }));
  return knobs;
}

export function readCounts(text: string | undefined, knobs: readonly Knob[]): readonly number[] {
  const { usual, least, most } = knobs.length > 1 ? POINT_COUNTS.two : POINT_COUNTS.one;
  const asked = text === undefined ? undefined : /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (asked !== undefined && !(asked >= least && asked <= most))
    throw refuse(say("fault.points", { text: text!, least, most }));
  return knobs.map(({ whole, from, to }) => {
    const all = to - from + 1;
    if (whole && (asked === undefined ? all <= MOST_COUNTED : all <= asked)) return Math.max(2, all);
    return asked ?? usual;
  });
}

export function readWhat(text: string, rig: Rig, option: string): SweepWhat {
  if (text === "margin" || text === "drop" || text === "height") return { kind: text };
  const id = /^load:(.+)$/.exec(text)?.[1];
  if (id === undefined) throw refuse(say("fault.what", { option, text }));
  const part = partIds(rig).find((one) => one === id);
  if (part === undefined) throw refuse(say("fault.part", { option, text, parts: listed(partIds(rig)) }));
  return { kind: "load", part };
}

export function readLimit(text: string, { kind }: SweepWhat): number {
  if (kind === "margin") {
    const value = /^\d*\.?\d+$/.test(text) ? Number(text) : Number.NaN;
    if (value > 0) return value;
    throw refuse(say("fault.limit", { text, about: say("fault.limitNumber") }));
  }
  const read = parseQuantity(text, kind === "load" ? "force" : "length");
  if (!read.ok) throw refuse(say("fault.limit", { text, about: tellFault(read.message) }));
  return read.value;
}

/** Values that give no valid rig are told beside the others; without enough others there is no result. */
export function enough(file: string, found: SweepPoints): SweepPoints {
  const { points, bad } = found;
  const first = bad[0];
  if (points.length === 0 && first) {
    throw refuse(
      say("fault.noPoint", { file, change: changeText(first.change), message: tellFault(first.issues[0]!.message) }),
    );
  }
  if (points.length < 2) throw refuse(say("fault.fewPoints", { file, count: points.length, least: 2 }));
  return found;
}

export async function tried(file: string, { kind }: SweepWhat, make: () => Promise<Swept>): Promise<Swept> {
  try {
    return await make();
  } catch (error) {
    if (!(error instanceof NothingSwept)) throw error;
    throw refuse(say(`fault.nothing.${kind === "height" || kind === "load" ? kind : "other"}`, { file }));
  }
}

/** Connections are counted before the tapes: the rig with most of them has a name for every one. */
export const namedRig = ({ points }: SweepPoints, knobs: readonly Knob[], { rig }: Pick<Assessed, "rig">): Rig =>
  knobs.some(isApart) ? points.at(-1)!.assessed.rig : rig;
