/** `sweep`: how a number of the rig moves what governs, and where it meets a limit. */
import { parseQuantity, partIds, type Rig, readRig } from "@secondline/rig";
import {
  type Accuracy,
  isApart,
  type Knob,
  type KnownBesides,
  NothingSwept,
  readKnob,
  type SweepPoints,
  type SweepWhat,
  type Swept,
  sweepPoints,
} from "@secondline/scenarios";
import { englishWords } from "@secondline/words";
import { changeText, sweepWords as words } from "@secondline/words/sweep";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { LARGEST_BYTES, readText } from "../input.ts";
import { jsonText } from "../jsonText.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { runSweep } from "../sweepRuns.ts";
import { sweepData, sweepText } from "../sweepText.ts";
import { message, print } from "../terminal.ts";
import { checkWhatIfs, readWhatIf } from "../whatIfOption.ts";

export interface SweepCommandOptions extends AssessmentOptions, ComputingOptions {
  readonly over: readonly string[];
  readonly points?: string;
  readonly what: string;
  readonly limit?: string;
  readonly whatIf: readonly string[];
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
  readonly json?: boolean;
  readonly out?: string;
  readonly force?: boolean;
}

const { say } = words;
const refuse = (...lines: readonly string[]): CommandFailure => new CommandFailure(EXIT.input, lines);

/** Points along one knob, and along each of two [-]. */
const POINT_COUNTS = { one: { usual: 13, least: 3, most: 101 }, two: { usual: 7, least: 3, most: 31 } } as const;
/** Numbers that are counted are all run, up to so many [-]. */
const MOST_COUNTED = 25;

export async function sweep(file: string, options: SweepCommandOptions): Promise<void> {
  const whatIfs = options.whatIf.map(readWhatIf);
  const computing = readComputing(options);
  const { assessment, assessed } = readAssessment(file, options);
  const { rig, ...known } = assessment;
  const what = readWhat(options.what, assessed.rig);
  const limit = options.limit === undefined ? undefined : readLimit(options.limit, what);
  const document = documentOf(file);
  const knobs = readKnobs(options.over, rig, document, known);
  const counts = readCounts(options.points, knobs);
  checkWhatIfs(rig, whatIfs);
  const files = [file, options.wear, options.tests].flatMap((one) => one ?? []);
  const out = options.out === undefined ? undefined : checkOutFile(options.out, options.force === true, files);
  const points = enough(file, sweepPoints({ document, known, knobs, counts }));
  const swept = await tried(file, what, () =>
    runSweep(
      points,
      knobs,
      {
        what,
        accuracy: options.accuracy,
        size: options.set,
        ...(whatIfs.length > 0 ? { whatIfs } : {}),
        ...(limit === undefined ? {} : { limit }),
      },
      computing,
    ),
  );
  const taken = englishWords.taken(assessed.rig, assessed);
  // Connections are counted before the tapes: the rig with most of them has a name for every one.
  const named = knobs.some(isApart) ? points.points.at(-1)!.assessed.rig : assessed.rig;
  const text = options.json ? jsonText(sweepData(named, swept, taken)) : sweepText(named, swept, taken);
  if (out) writeOutFile(out, `${text}\n`);
  else print(text);
  leave(swept);
}

function documentOf(file: string): unknown {
  const reading = readRig(readText(file, LARGEST_BYTES.rig));
  if (!reading.ok) throw refuse(`${file}: the file changed while it was read.`);
  return reading.document;
}

function readKnobs(texts: readonly string[], rig: Rig, document: unknown, known: KnownBesides): readonly Knob[] {
  if (texts.length < 1 || texts.length > 2) throw refuse(say("fault.many", { count: texts.length }));
  const readings = texts.map((text) => readKnob(text, { rig, document, dated: known.on !== undefined }));
  const faults = readings.flatMap((one) => (one.ok ? [] : [words.fault(one.fault)]));
  if (faults.length > 0) throw refuse(...faults);
  const knobs = readings.flatMap((one) => (one.ok ? [one.knob] : []));
  if (new Set(knobs.map(({ name }) => name)).size < knobs.length)
    throw refuse(say("fault.same", { name: knobs[0]!.name }));
  return knobs;
}

function readCounts(text: string | undefined, knobs: readonly Knob[]): readonly number[] {
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

function readWhat(text: string, rig: Rig): SweepWhat {
  if (text === "margin" || text === "drop" || text === "height") return { kind: text };
  const id = /^load:(.+)$/.exec(text)?.[1];
  if (id === undefined) throw refuse(say("fault.what", { text }));
  const part = partIds(rig).find((one) => one === id);
  if (part === undefined) throw refuse(say("fault.part", { text, parts: partIds(rig).join(", ") }));
  return { kind: "load", part };
}

function readLimit(text: string, { kind }: SweepWhat): number {
  if (kind === "margin") {
    const value = /^\d*\.?\d+$/.test(text) ? Number(text) : Number.NaN;
    if (value > 0) return value;
    throw refuse(say("fault.limit", { text, about: say("fault.limitNumber") }));
  }
  const read = parseQuantity(text, kind === "load" ? "force" : "length");
  if (!read.ok) throw refuse(say("fault.limit", { text, about: read.message }));
  return read.value;
}

/** Values that give no rig are told with the others; without enough others there is nothing to tell. */
function enough(file: string, found: SweepPoints): SweepPoints {
  const { points, bad } = found;
  const first = bad[0];
  if (points.length === 0 && first) {
    throw refuse(say("fault.noPoint", { file, change: changeText(first.change), message: first.issues[0]!.message }));
  }
  if (points.length < 2) throw refuse(say("fault.fewPoints", { file, count: points.length, least: 2 }));
  return found;
}

async function tried(file: string, { kind }: SweepWhat, make: () => Promise<Swept>): Promise<Swept> {
  try {
    return await make();
  } catch (error) {
    if (!(error instanceof NothingSwept)) throw error;
    throw refuse(say(`fault.nothing.${kind === "height" || kind === "load" ? kind : "other"}`, { file }));
  }
}

/** A value at which every run failed has no number. */
function leave({ points }: Swept): void {
  const failed = points.filter((one) => one.runs === 0);
  for (const { change } of failed) message(`${changeText(change)}: ${englishWords.say("trouble.draw")}`);
  if (failed.length > 0) process.exitCode = EXIT.audit;
}
