/** The tables of an outcome for a terminal. Their words come from the words package. */

import type { Rig } from "@secondline/rig";
import type { Outcome, PartOutcome } from "@secondline/scenarios";
import { quantity, englishWords as words } from "@secondline/words";
import { tellNote } from "@secondline/words/notes";
import { tableWords } from "@secondline/words/tables";
import { say } from "./say.ts";
import { type Cell, type TableColumn, table } from "./table.ts";
import { VERDICT_COLOUR, VERDICT_MARK, width } from "./terminal.ts";

const rightColumn = (head: string): TableColumn => ({ head, align: "right" });
const flexible = (head: string): TableColumn => ({ head, flexible: true });

type Verdict = PartOutcome["verdict"];
const verdictCell = (verdict: Verdict, word: string): Cell => ({
  text: `${VERDICT_MARK[verdict]} ${word}`,
  paint: VERDICT_COLOUR[verdict],
});

const numberOf = (event: number | undefined) => (event === undefined ? "" : String(event + 1));

/** `shown`: indices of what-ifs. */
export function whatIfTable(rig: Rig, outcome: Outcome, shown: readonly number[]): string {
  const rows = shown.map((index): Cell[] => {
    const row = words.whatIfRow(rig, outcome.whatIfs[index]!);
    const said = `${row.title}: ${row.fate}`;
    return [String(index + 1), said, row.walker, row.main, row.backup, row.drop, row.feet];
  });
  const columns = [
    rightColumn(""),
    flexible(say("table.whatIf")),
    rightColumn(say("table.walker")),
    rightColumn(say("table.main")),
    rightColumn(say("table.backup")),
    rightColumn(say("table.drop")),
    rightColumn(say("table.feet")),
  ];
  return table(columns, rows, width);
}

/** From the harness to the rock, and the pull on the person. */
export function partsTable(rig: Rig, outcome: Outcome): string {
  const rows = outcome.parts.map((part): Cell[] => {
    const row = words.partRow(rig, part);
    const verdict = verdictCell(part.verdict, row.verdict);
    return [row.name, row.demand, row.band, row.strength, row.margin, row.required, verdict, numberOf(row.event)];
  });
  const person = tableWords.personRow(outcome);
  const grade = outcome.person?.grade;
  if (person && grade) {
    const verdict = grade === "keeps" ? (outcome.search.complete ? "holds" : "open") : grade;
    const cell = verdictCell(verdict, person.verdict);
    rows.push([
      person.name,
      person.demand,
      person.band,
      person.strength,
      person.margin,
      person.required,
      cell,
      numberOf(person.event),
    ]);
  }
  const columns = [
    flexible(say("table.part")),
    rightColumn(say("table.demand")),
    rightColumn(say("table.band.head")),
    rightColumn(say("table.strength")),
    rightColumn(say("table.margin")),
    rightColumn(say("table.required")),
    { head: say("table.verdict") },
    rightColumn(say("table.in")),
  ];
  return table(columns, rows, width);
}

export function middleTable(rig: Rig, { parts }: Outcome): string {
  const rows = parts.flatMap((part): Cell[][] => {
    const row = tableWords.middleRow(rig, part);
    return row ? [[row.name, row.run, row.strength, row.ratio]] : [];
  });
  const columns = [
    flexible(say("table.part")),
    rightColumn(say("table.run")),
    rightColumn(say("table.middle")),
    rightColumn(say("table.ratio")),
  ];
  return table(columns, rows, width);
}

export function singlesTable(rig: Rig, { singles }: Outcome): string {
  const rows = singles.map((one): Cell[] => {
    const row = tableWords.singleRow(rig, one);
    return [row.name, row.ways, row.leaves, row.shown];
  });
  const columns: TableColumn[] = [
    { head: say("table.single") },
    { head: say("table.ways") },
    flexible(say("table.leaves")),
    { head: say("table.shown") },
  ];
  return table(columns, rows, width);
}

/** The factors of every part's strength, with the basis of each, and the notes that a reader must see. */
export function whyTables(rig: Rig, { parts }: Outcome): readonly string[] {
  return parts.flatMap((part) => {
    const { name, strength } = words.partRow(rig, part);
    const rows: Cell[][] = [
      ...words.why(part).map(({ what, value, basis }) => [what, value, basis]),
      [say("table.middle"), quantity.strength(part.strength), ""],
      [say("table.strength"), `${strength} kN`, ""],
      ...part.flags.map((flag) => ["", "", tellNote(flag)]),
    ];
    return [table([{ head: name }, rightColumn(say("table.value")), flexible(say("table.basis"))], rows, width), ""];
  });
}
