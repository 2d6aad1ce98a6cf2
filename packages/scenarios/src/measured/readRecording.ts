/** Reads a load cell's recording from CSV; docs/MEASURED.md has the format. What makes it another file is refused, the rest is noted. */

import { evenSamples } from "./evenSamples.ts";
import type { RecordingFault, RecordingReading } from "./recording.ts";
import { type RecordingHead, readHead } from "./recordingHead.ts";

/** Far more than a fall: two million lines [-]. */
const MOST_CHARACTERS = 60e6;
const MOST_FAULTS = 20;
/** A recording with fewer samples shows no fall [-]. */
const FEWEST_SAMPLES = 20;
/** Peaks outside of this are in another unit, or of no fall [N]. */
const LEAST_PEAK = 200;
const MOST_PEAK = 200_000;
/** Longest recording that is laid out evenly [s]. */
const MOST_SECONDS = 600;

export interface CellSample {
  readonly time: number;
  /** NaN where the cell is empty or says that there is no number. */
  readonly force: number;
  /** The recorder wrote that the cell was beyond its limit. */
  readonly overload?: boolean;
  readonly line: number;
}

/** `text`: of the file. Every fault at once, at most twenty, each with its line. */
export function readRecording(text: string): RecordingReading {
  if (text.length > MOST_CHARACTERS) {
    const got = `${Math.round(text.length / 1e6)} MB`;
    return refused([
      recordingFault(
        1,
        "",
        got,
        "a recording of at most 60 MB",
        `The file has ${got}. Cut it to the seconds around the fall.`,
      ),
    ]);
  }
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const head = readHead(lines);
  if (!head.ok) return refused(head.faults);
  const { samples, faults } = readSamples(lines, head.head);
  if (faults.length > 0) return refused(faults);
  const wrong = axisFaults(samples, head.head) ?? sizeFault(samples, head.head);
  if (wrong) return refused([wrong]);
  const { channel, event, mass, source, synthetic, filtered } = head.head;
  return {
    ok: true,
    fall: {
      channel,
      event,
      source,
      synthetic,
      filtered,
      ...(mass === undefined ? {} : { mass }),
      ...evenSamples(samples),
    },
  };
}

const refused = (faults: readonly RecordingFault[]): RecordingReading => ({ ok: false, faults });

export function recordingFault(
  line: number,
  column: string,
  got: string,
  expected: string,
  message: string,
): RecordingFault {
  return { line, column, got, expected, message };
}

/** What recorders write where they have no number. */
const NO_NUMBER = /^(nan|n\/a|na|null|-|--|#n\/a)?$/i;
/** What they write where the cell pulled more than they can. */
const OVERLOAD = /^[+-]?(overload|ovl)$/i;
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

function readSamples(lines: readonly string[], head: RecordingHead) {
  const samples: CellSample[] = [];
  const faults: RecordingFault[] = [];
  let more = 0;
  const tell = (one: RecordingFault) => {
    if (faults.length < MOST_FAULTS) faults.push(one);
    else more += 1;
  };
  for (let i = head.firstRow; i < lines.length; i++) {
    const text = lines[i]!.trim();
    if (text === "" || text.startsWith("#")) continue;
    const cells = text.split(head.delimiter).map((cell) => decimal(cell.trim(), head));
    const [time, force] = [cells[head.timeColumn] ?? "", cells[head.forceColumn] ?? ""];
    if (cells.slice(head.columns).some((cell) => cell !== "")) tell(manyCells(i + 1, text, cells.length, head));
    else if (!NUMBER.test(time)) tell(noTime(i + 1, time, head));
    else if (![NUMBER, NO_NUMBER, OVERLOAD].some((form) => form.test(force))) {
      tell(
        recordingFault(
          i + 1,
          "force",
          `"${short(force)}"`,
          "a number, or an empty cell where there is none",
          "This force is no number.",
        ),
      );
    } else {
      const value = NUMBER.test(force) ? Number(force) * head.forceUnit : Number.NaN;
      const overload = OVERLOAD.test(force) ? { overload: true } : {};
      samples.push({ time: Number(time) * head.timeUnit, force: value, ...overload, line: i + 1 });
    }
  }
  if (more > 0) {
    const last = faults.at(-1)!;
    faults.push(
      recordingFault(
        last.line,
        "",
        `${more} more faults`,
        "a recording without faults",
        `There are ${more} more faults below.`,
      ),
    );
  }
  return { samples, faults };
}

/** Decimal commas are taken where semicolons or tabs part the cells. */
const decimal = (cell: string, { delimiter }: RecordingHead) => (delimiter === "," ? cell : cell.replace(",", "."));

const short = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/** With decimal commas between commas the digits behind a comma would be lost, and the force would read too low. */
function manyCells(line: number, text: string, cells: number, { columns, delimiter }: RecordingHead): RecordingFault {
  const message =
    delimiter === ","
      ? "This line has more cells than the header. Are its decimals behind commas? Then part the cells by semicolons or tabs."
      : "This line has more cells than the header.";
  return recordingFault(line, "", `${cells} cells: "${short(text)}"`, `${columns} cells, as in the header`, message);
}

function noTime(line: number, time: string, { timeName }: RecordingHead): RecordingFault {
  const clock = /\d:\d/.test(time);
  const message = clock
    ? "This is a time of day. Write seconds from any moment on, such as 0.0005."
    : "This time is no number.";
  return recordingFault(
    line,
    timeName,
    `"${short(time)}"`,
    "a number of seconds or milliseconds, as the header says",
    message,
  );
}

function axisFaults(samples: readonly CellSample[], { timeName }: RecordingHead): RecordingFault | undefined {
  if (samples.length < FEWEST_SAMPLES) {
    const got = `${samples.length} samples`;
    return recordingFault(
      1,
      "",
      got,
      `at least ${FEWEST_SAMPLES} samples`,
      `The recording has ${got}; that is no fall.`,
    );
  }
  const back = samples.findIndex((one, i) => i > 0 && one.time <= samples[i - 1]!.time);
  if (back > 0) {
    const { line, time } = samples[back]!;
    const earlier = samples[back - 1]!.time;
    const got = `${time} s after ${earlier} s`;
    const message =
      time === earlier
        ? "Two samples have the same time. Write more digits of the time, or number the samples by their rate."
        : "Time goes backwards here: are two recordings in one file? Keep the one with the fall.";
    return recordingFault(line, timeName, got, "times that grow from line to line", message);
  }
  const lasts = samples.at(-1)!.time - samples[0]!.time;
  if (lasts > MOST_SECONDS) {
    const got = `${Math.round(lasts)} s from the first sample to the last`;
    const message =
      "Is the time in milliseconds while the header says s? If not, cut the file to the minute around the fall.";
    return recordingFault(samples.at(-1)!.line, timeName, got, `at most ${MOST_SECONDS} s`, message);
  }
  if (lasts < 0.05) {
    const got = `${lasts} s from the first sample to the last`;
    return recordingFault(
      samples.at(-1)!.line,
      timeName,
      got,
      "at least 0.05 s",
      "Is the time in seconds while the header says ms?",
    );
  }
  return undefined;
}

function sizeFault(samples: readonly CellSample[], { forceName }: RecordingHead): RecordingFault | undefined {
  const known = samples.filter(({ force }) => !Number.isNaN(force));
  if (known.length === 0) {
    const expected = "a force in newtons or kilonewtons";
    return recordingFault(samples[0]!.line, forceName, "no number in any line", expected, "There is no force in it.");
  }
  const largest = known.reduce((most, { force }) => Math.max(most, Math.abs(force)), 0);
  if (largest >= LEAST_PEAK && largest <= MOST_PEAK) return undefined;
  const { line } = known.find(({ force }) => Math.abs(force) === largest) ?? samples[0]!;
  const got = `${largest} N at most`;
  const expected = `a peak of ${LEAST_PEAK} N to ${MOST_PEAK / 1000} kN`;
  const message =
    largest > MOST_PEAK
      ? "No highline carries that. Is the force in N while the header says kN?"
      : "No fall pulls so little. Is the force in kN while the header says N?";
  return recordingFault(line, forceName, got, expected, message);
}
