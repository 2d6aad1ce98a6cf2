/** `wear`: what a rig still holds on a date, by its wear record: the webbing along its length, and every part. */
import { formatLength, formatRatio } from "@secondline/rig";
import { CAUTIONS, INVENTED, judgedParts, judgementCautions } from "@secondline/scenarios";
import { factorsFromLog, type PartStrength, partStrengths, type StrengthZone } from "@secondline/strength";
import { readBreakLogFile, testNotes } from "../breakLogFile.ts";
import { kilonewtons } from "../quantity.ts";
import { readJudgedRig } from "../rigFile.ts";
import { table } from "../table.ts";
import { bold, dim, print, width } from "../terminal.ts";
import { wornRig } from "../wearFile.ts";
import { bullets, wrap } from "../wrap.ts";

export interface WearCommandOptions {
  readonly wear: string;
  readonly on: string;
  readonly tests?: string;
  readonly judge?: readonly string[];
  readonly json?: boolean;
}

export async function wear(file: string, options: WearCommandOptions): Promise<void> {
  const { rig, notes: looks, flags } = wornRig(await readJudgedRig(file, options.judge), options.wear, options.on);
  const tests = options.tests === undefined ? [] : readBreakLogFile(options.tests);
  const notes = [...looks, ...testNotes(rig, tests)];
  const parts = tests.length === 0 ? partStrengths(rig) : partStrengths(rig, factorsFromLog(tests));
  const cautions = [...judgementCautions(judgedParts(parts, [])), ...CAUTIONS, ...(rig.invented ? [INVENTED] : [])];
  if (options.json) {
    print(JSON.stringify({ rig: rig.name, on: options.on, notes, flags, parts, cautions }, null, 2));
    return;
  }
  const lines = parts.filter((part) => part.zones !== undefined);
  print(
    [
      bold(`${rig.name} on ${options.on}`),
      "",
      ...(notes.length > 0 ? ["Look at these:", ...bullets(notes, width), ""] : []),
      ...lines.flatMap((line) => [lineText(line), ""]),
      partsTable(parts),
      dim(
        wrap(
          "Central value; 5 %: what 19 of 20 such parts reach. Positions in metres of natural length from anchor A.",
          width,
        ),
      ),
      "",
      ...bullets(cautions, width),
    ].join("\n"),
  );
}

const STRIP = 60;
const LEVELS = "▁▂▃▄▅▆▇█";

function lineText({ name, zones }: PartStrength): string {
  const rows = zones!.map((zone) => [
    `${formatLength(Math.round(zone.from * 100) / 100)} to ${formatLength(Math.round(zone.to * 100) / 100)}`,
    kilonewtons(zone.strength),
    kilonewtons(zone.strength5),
    zone.reason,
    zone.factors
      .filter((one) => one.value < 1)
      .map((one) => `${one.name} × ${formatRatio(one.value)}`)
      .join(", "),
  ]);
  const columns = [
    { head: name },
    { head: "Holds", align: "right" as const },
    { head: "5 %", align: "right" as const },
    { head: "Because" },
    { head: "Factors", flexible: true },
  ];
  return `${strip(zones!)}\n${table(columns, rows, width)}`;
}

/** The line from A to B as a row of bars: as high as it still holds of what it was rated. */
function strip(zones: readonly StrengthZone[]): string {
  const length = zones.at(-1)!.to;
  const bars = Array.from({ length: STRIP }, (_, i) => {
    const [from, to] = [(i * length) / STRIP, ((i + 1) * length) / STRIP];
    const share = Math.min(
      ...zones.filter((zone) => zone.from < to && zone.to > from).map((zone) => zone.strength / zone.rated),
    );
    return LEVELS[Math.min(LEVELS.length - 1, Math.floor(share * LEVELS.length))];
  });
  return `A ${bars.join("")} B`;
}

function partsTable(parts: readonly PartStrength[]): string {
  const rows = parts
    .filter((part) => part.zones === undefined && !part.name.startsWith("Tape "))
    .map((part) => [
      part.name,
      kilonewtons(part.rated),
      kilonewtons(part.strength),
      kilonewtons(part.strength5),
      part.noData ? "no record: cautious" : "",
    ]);
  return table(
    [
      { head: "Part", flexible: true },
      { head: "Rated", align: "right" },
      { head: "Holds", align: "right" },
      { head: "5 %", align: "right" },
      { head: "" },
    ],
    rows,
    width,
  );
}
