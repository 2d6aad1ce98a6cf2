/** The first lines of a recording: remarks that say what was measured, and the header that names time and force with their units. */
import { CHANNELS, type Channel, type RecordingFault } from "./recording.ts";

export const RECORDING_FORMAT = "secondline/measured/1";

export interface RecordingHead {
  readonly channel: Channel;
  readonly event: string;
  readonly mass?: number;
  readonly source: string;
  readonly synthetic: boolean;
  readonly filtered: boolean;
  readonly delimiter: "," | ";" | "\t";
  readonly timeColumn: number;
  readonly forceColumn: number;
  /** Cells of the header. */
  readonly columns: number;
  readonly timeName: string;
  readonly forceName: string;
  /** Seconds, and newtons, to one of the file's units. */
  readonly timeUnit: number;
  readonly forceUnit: number;
  /** Index of the first line below the header. */
  readonly firstRow: number;
}

type HeadReading =
  | { readonly ok: true; readonly head: RecordingHead }
  | { readonly ok: false; readonly faults: readonly RecordingFault[] };

const TIME_UNITS: ReadonlyMap<string, number> = new Map([
  ["s", 1],
  ["ms", 1e-3],
]);
const FORCE_UNITS: ReadonlyMap<string, number> = new Map([
  ["n", 1],
  ["kn", 1000],
]);
const MASS = /^(\d+(?:\.\d+)?)\s*kg$/i;
const KNOWN = ["format", "channel", "what-if", "mass", "source", "filter"] as const;
type Remark = (typeof KNOWN)[number];

export function readHead(lines: readonly string[]): HeadReading {
  const at = lines.findIndex((line) => line.trim() !== "" && !line.startsWith("#"));
  const faults: RecordingFault[] = [];
  const tell = (line: number, column: string, got: string, expected: string, message: string) =>
    faults.push({ line, column, got, expected, message });
  const remarks = readRemarks(lines.slice(0, at < 0 ? lines.length : at));
  const said = (name: Remark) => remarks.get(name)?.text ?? "";
  const lineOf = (name: Remark) => remarks.get(name)?.line ?? 1;
  const got = (name: Remark) => (remarks.has(name) ? `"${said(name)}"` : "no such line");

  if (said("format") !== RECORDING_FORMAT)
    tell(
      lineOf("format"),
      "format",
      got("format"),
      `# format: ${RECORDING_FORMAT}`,
      "The file does not say its format.",
    );
  const channel = CHANNELS.find((one) => one === said("channel"));
  if (channel === undefined)
    tell(lineOf("channel"), "channel", got("channel"), `one of ${CHANNELS.join(", ")}`, "Where did the load cell sit?");
  if (said("what-if") === "")
    tell(lineOf("what-if"), "what-if", got("what-if"), "what happened, such as fall@0.5", "What fall was it?");
  if (said("source") === "")
    tell(lineOf("source"), "source", got("source"), "who measured it, where and when", "Who measured this?");
  const mass = MASS.exec(said("mass"))?.[1];
  if (remarks.has("mass") && !(Number(mass) >= 20 && Number(mass) <= 300))
    tell(lineOf("mass"), "mass", got("mass"), "the walker's mass, such as 82 kg", "This is no walker's mass.");
  const filter = said("filter").toLowerCase();
  if (!["", "none", "cfc 60"].includes(filter))
    tell(
      lineOf("filter"),
      "filter",
      got("filter"),
      "none or CFC 60",
      "This filter is not known; give the recording before it.",
    );
  const columns = at < 0 ? undefined : readColumns(lines[at]!);
  if (columns === undefined) {
    const expected = "a header such as: time [s],force [kN]";
    const shown = at < 0 ? "no header" : `"${lines[at]!.slice(0, 60)}"`;
    tell(
      Math.max(at, 0) + 1,
      "",
      shown,
      expected,
      "Time (s or ms) and force (N or kN) need their units in the header.",
    );
  }
  if (columns !== undefined && columns.forces > 1)
    tell(
      at + 1,
      "",
      `${columns.forces} columns of force`,
      "one column of force",
      "Which of the columns of force is the one of this channel? Rename the others.",
    );
  if (faults.length > 0 || channel === undefined || columns === undefined) return { ok: false, faults };
  const source = said("source");
  const { forces: _one, ...read } = columns;
  return {
    ok: true,
    head: {
      channel,
      event: said("what-if"),
      source,
      synthetic: /^synthetic\b/i.test(source),
      filtered: filter === "cfc 60",
      ...(mass === undefined ? {} : { mass: Number(mass) }),
      ...read,
      firstRow: at + 1,
    },
  };
}

/** Lines "# name: text" before the header, by their names; other remarks are nobody's business. */
function readRemarks(lines: readonly string[]): ReadonlyMap<Remark, { text: string; line: number }> {
  const remarks = new Map<Remark, { text: string; line: number }>();
  for (const [i, line] of lines.entries()) {
    const colon = line.indexOf(":");
    if (!line.startsWith("#") || colon < 0) continue;
    const name = KNOWN.find((one) => one === line.slice(1, colon).trim().toLowerCase());
    if (name !== undefined) remarks.set(name, { text: line.slice(colon + 1).trim(), line: i + 1 });
  }
  return remarks;
}

function readColumns(header: string) {
  for (const delimiter of [",", ";", "\t"] as const) {
    const names = header.split(delimiter).map((name) => name.trim().replaceAll('"', ""));
    const unitOf = (name: string) => /\[([^\]]*)\]/.exec(name)?.[1]?.trim().toLowerCase() ?? "";
    const timeColumn = names.findIndex((name) => /^time\b/i.test(name));
    const forceColumn = names.findIndex((name) => /^force\b/i.test(name));
    if (timeColumn < 0 || forceColumn < 0) continue;
    const timeUnit = TIME_UNITS.get(unitOf(names[timeColumn]!));
    const forceUnit = FORCE_UNITS.get(unitOf(names[forceColumn]!));
    if (timeUnit === undefined || forceUnit === undefined) return undefined;
    const forces = names.filter((name) => /^force\b/i.test(name)).length;
    const named = { forces, timeName: names[timeColumn]!, forceName: names[forceColumn]! };
    return { delimiter, columns: names.length, timeColumn, forceColumn, timeUnit, forceUnit, ...named };
  }
  return undefined;
}
