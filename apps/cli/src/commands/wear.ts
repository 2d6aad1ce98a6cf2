/** `wear`: the strength of a rig on a date by its wear record: the webbing along its length, and every part. */

import { isTape, type PartId, type Rig } from "@secondline/rig";
import { judgedFactors, rigStrengths } from "@secondline/scenarios";
import { type PartStrength, type StrengthZone, weakestFirst } from "@secondline/strength";
import { listed, quantity, weakness, englishWords as words } from "@secondline/words";
import { dayText } from "@secondline/words/dates";
import { tellNote } from "@secondline/words/notes";
import { tableWords } from "@secondline/words/tables";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { jsonText } from "../jsonText.ts";
import { say } from "../say.ts";
import { table } from "../table.ts";
import { bold, dim, print, width } from "../terminal.ts";
import { bullets, wrap } from "../wrap.ts";

export interface WearCommandOptions extends AssessmentOptions {
  readonly wear: string;
  readonly on: string;
  readonly json?: boolean;
}

export function wear(file: string, options: WearCommandOptions): void {
  const { assessed } = readAssessment(file, options);
  const { rig, tests, notes, taken } = assessed;
  const { parts } = rigStrengths(rig, tests);
  const judged = judgedFactors(parts, new Map());
  const cautions = words.cautions(rig, [
    ...(judged.length > 0 ? [{ kind: "judged", judged } as const] : []),
    { kind: "general" },
    ...(rig.invented ? [{ kind: "invented" } as const] : []),
  ]);
  if (options.json) {
    print(jsonText({ rig: rig.name, on: options.on, taken: words.taken(rig, { taken }), notes, parts, cautions }));
    return;
  }
  const bases = tableWords.numberedBases(parts.map(withBases));
  const lines = parts.filter((part) => part.zones !== undefined);
  print(
    [
      bold(say("wear.title", { name: rig.name, on: dayText(options.on) })),
      wrap(words.taken(rig, { taken }), width),
      "",
      ...(notes.length > 0 ? [`${say("head.notes")}:`, ...bullets(notes.map(tellNote), width), ""] : []),
      ...lines.flatMap((line) => [lineText(rig, line, bases.list), ""]),
      partsTable(rig, parts, bases.of),
      dim(wrap(say("wear.caption"), width)),
      "",
      `${say("wear.bases")}:`,
      ...numbered(bases.list),
      "",
      ...bullets(cautions, width),
    ].join("\n"),
  );
}

/** A part with the bases of all its places. */
function withBases(part: PartStrength): { readonly id: PartId; readonly bases: PartStrength["bases"] } {
  const all = [...part.bases, ...(part.zones ?? []).flatMap(zoneBases)];
  return { id: part.id as PartId, bases: weakestFirst(all) };
}

const zoneBases = ({ ratedBasis, factors }: StrengthZone) => [ratedBasis, ...factors.map(({ basis }) => basis)];

const numbered = (list: readonly string[]): string[] =>
  list.map((text, i) => {
    const number = `${String(i + 1).padStart(4)}  `;
    return (
      number +
      wrap(text, width - number.length)
        .split("\n")
        .join(`\n${" ".repeat(number.length)}`)
    );
  });

/** Width of the strip [letters]. */
const STRIP_COLUMNS = 60;
const LEVEL_BARS = "▁▂▃▄▅▆▇█";

function lineText(rig: Rig, { id, zones }: PartStrength, bases: readonly string[]): string {
  const rows = zones!.map((zone) => [
    say("wear.stretch", { from: place(zone.from), to: place(zone.to) }),
    quantity.strengthIn(zone.strength),
    quantity.strengthIn(zone.strength5),
    weakness(zone.reason),
    tableWords.factors({ factors: zone.factors.filter((one) => one.value !== 1) }),
    listed(weakestFirst(zoneBases(zone)).map((basis) => String(bases.indexOf(words.basis(basis)) + 1))),
  ]);
  const columns = [
    { head: words.partName(rig, id as PartId) },
    { head: say("wear.holds"), align: "right" as const },
    { head: say("wear.five"), align: "right" as const },
    { head: say("wear.because") },
    { head: say("table.factors"), flexible: true },
    { head: say("table.bases") },
  ];
  return `${strip(zones!)}\n${table(columns, rows, width)}`;
}

const place = (metre: number): string => quantity.length(Number(metre.toFixed(2)));

/** The line from A to B as a row of bars; their height is the strength over the rated strength. */
function strip(zones: readonly StrengthZone[]): string {
  const length = zones.at(-1)!.to;
  const bars = Array.from({ length: STRIP_COLUMNS }, (_, i) => {
    const [from, to] = [(i * length) / STRIP_COLUMNS, ((i + 1) * length) / STRIP_COLUMNS];
    const share = Math.min(
      ...zones.filter((zone) => zone.from < to && zone.to > from).map((zone) => zone.strength / zone.rated),
    );
    return LEVEL_BARS[Math.min(LEVEL_BARS.length - 1, Math.floor(share * LEVEL_BARS.length))];
  });
  return `A ${bars.join("")} B`;
}

function partsTable(rig: Rig, parts: readonly PartStrength[], bases: ReadonlyMap<PartId, readonly number[]>): string {
  const rows = parts
    .filter((part) => part.zones === undefined && !isTape(rig, part.id as PartId))
    .map((part) => [
      words.partName(rig, part.id as PartId),
      quantity.strengthIn(part.rated),
      quantity.strengthIn(part.strength),
      quantity.strengthIn(part.strength5),
      part.noData ? say("wear.noRecord") : "",
      listed(bases.get(part.id as PartId)!.map(String)),
    ]);
  const columns = [
    { head: say("table.part"), flexible: true },
    { head: say("table.rated"), align: "right" as const },
    { head: say("wear.holds"), align: "right" as const },
    { head: say("wear.five"), align: "right" as const },
    { head: "" },
    { head: say("table.bases") },
  ];
  return table(columns, rows, width);
}
