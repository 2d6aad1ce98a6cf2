/** Chances of failure for reading in a terminal, and as data. */

import type { Rig } from "@secondline/rig";
import type { Chances, PartChance } from "@secondline/scenarios";
import { broughtIn, quantity, englishWords as words } from "@secondline/words";
import { englishChanceWords as chanceWords, worthARow } from "@secondline/words/chances";
import { say } from "./say.ts";
import { type TableColumn, table } from "./table.ts";
import { bold, dim, width } from "./terminal.ts";
import { bullets, wrap } from "./wrap.ts";

const rightColumn = (head: string): TableColumn => ({ head, align: "right" });

export function chancesData(rig: Rig, all: readonly Chances[], notes: readonly string[]): object {
  return {
    rig: rig.name,
    ...(notes.length > 0 ? { notes } : {}),
    taken: words.taken(rig, all[0]!),
    chances: all.map((found) => ({
      ...found,
      title: words.eventTitle(rig, found.whatIf),
      sentence: chanceWords.chances(rig, found),
      restsOn: chanceWords.chanceGrounds(rig, found),
      cautions: chanceWords.chanceCautions(rig, found),
    })),
  };
}

/** Chances of one rig, one what-if after another; sentences common to all are printed once, at the end. */
export function chancesText(rig: Rig, all: readonly Chances[], notes: readonly string[]): string {
  return [
    bold(rig.name),
    wrap(words.taken(rig, all[0]!), width),
    "",
    ...all.flatMap((found) => [whatIfText(rig, found), ""]),
    ...(notes.length > 0 ? [`${say("head.notes")}:`, ...bullets(notes, width), ""] : []),
    `${say("head.cautions")}:`,
    ...bullets([...new Set(all.flatMap((found) => chanceWords.chanceCautions(rig, found)))], width),
  ].join("\n");
}

function whatIfText(rig: Rig, found: Chances): string {
  const rest = chanceWords.chanceRest(found.parts);
  return [
    bold(words.eventTitle(rig, found.whatIf)),
    wrap(chanceWords.chances(rig, found), width),
    "",
    partsTable(rig, found),
    dim(wrap(chanceWords.say("chance.caption", { rest }).trimEnd(), width)),
    "",
    sharesTable(rig, found),
    "",
    inputsTable(found),
    "",
    `${chanceWords.say("chance.rests")}:`,
    ...bullets(chanceWords.chanceGrounds(rig, found), width),
  ].join("\n");
}

function partsTable(rig: Rig, { parts }: Chances): string {
  const rows = parts
    .filter(worthARow)
    .map((part) => [
      nameOf(rig, part),
      quantity.loadIn(part.load),
      quantity.strengthIn(part.strength),
      chanceWords.chanceRange(part.first),
      chanceWords.chanceRange(part.fails),
    ]);
  const columns = [
    { head: chanceWords.say("chance.table.part"), flexible: true },
    rightColumn(chanceWords.say("chance.table.load")),
    rightColumn(chanceWords.say("chance.table.strength")),
    rightColumn(chanceWords.say("chance.table.first")),
    rightColumn(chanceWords.say("chance.table.fails")),
  ];
  return table(columns, rows, width);
}

/** Name of a part, with the middle of its weak stretch. */
function nameOf(rig: Rig, part: PartChance): string {
  const name = chanceWords.chancePart(rig, part);
  const { stretch } = part;
  if (!stretch || stretch.reason === "webbing") return name;
  return chanceWords.say("chance.place", { part: name, distance: quantity.along((stretch.from + stretch.to) / 2) });
}

const MOST_SHARES = 10;

function sharesTable(rig: Rig, found: Chances): string {
  const rows = found.shares.sources
    .slice(0, MOST_SHARES)
    .map((share) => [
      chanceWords.shareName(share),
      chanceWords.say(`chance.share.${share.kind}`),
      chanceWords.chanceShare(share),
    ]);
  const columns = [
    { head: chanceWords.sharesTitle(rig, found), flexible: true },
    { head: chanceWords.say("chance.table.of") },
    rightColumn(chanceWords.say("chance.table.alone")),
  ];
  return table(columns, rows, width);
}

function inputsTable({ inputs }: Chances): string {
  const rows = inputs.map((input) => [
    broughtIn(input.name),
    input.id,
    chanceWords.chanceInput(input).join(" "),
    words.basis(input.basis),
  ]);
  const columns = [
    { head: chanceWords.say("chance.table.input") },
    { head: "--spread" },
    { head: chanceWords.say("chance.table.spread") },
    { head: say("table.basis"), flexible: true },
  ];
  return table(columns, rows, width);
}
