/** Chances of what-ifs, if they were worked out. */
import type { Chances } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { worthARow } from "@secondline/words/chances";
import { type Content, type Html, listOf, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

export function chancesSection(page: ReportPage, all: readonly Chances[]): readonly Html[] {
  return all.length === 0 ? [] : [tag("h2", page.words.say("head.chances")), ...all.flatMap((one) => ofOne(page, one))];
}

function ofOne(page: ReportPage, chances: Chances): readonly Html[] {
  const { words, rig } = page;
  const title = words.eventTitle(rig, chances.whatIf);
  return [
    tag("p", [tag("strong", `${title}. `), words.chances(rig, chances)]),
    listOf(words.ownChanceCautions(rig, chances), "bases"),
    partsTable(page, chances),
    sharesTable(page, chances),
    inputsTable(page, chances),
    listOf(words.chanceGrounds(rig, chances), "bases"),
    tag("p", [words.say("report.chancesHash", { seed: chances.seed }), tag("code", chances.inputHash)]),
  ];
}

function partsTable({ words, rig }: ReportPage, { parts }: Chances): Html {
  const { say } = words;
  const rows = parts
    .filter(worthARow)
    .map((part): Content[] => [
      words.chancePart(rig, part),
      quantity.loadIn(part.load),
      quantity.strengthIn(part.strength),
      words.chanceRange(part.first),
      words.chanceRange(part.fails),
    ]);
  const caption = say("chance.caption", { rest: words.chanceRest(parts) }).trimEnd();
  const heads = [
    say("chance.table.part"),
    say("chance.table.load"),
    say("chance.table.strength"),
    say("chance.table.first"),
    say("chance.table.fails"),
  ];
  return tableOf(caption, heads, rows, [1, 2, 3, 4]);
}

const MOST_SHARES = 8;

function sharesTable({ words, rig }: ReportPage, chances: Chances): Html {
  const { say } = words;
  const rows = chances.shares.sources
    .slice(0, MOST_SHARES)
    .map((share): Content[] => [words.shareName(share), say(`chance.share.${share.kind}`), words.chanceShare(share)]);
  const heads = [words.sharesTitle(rig, chances), say("chance.table.of"), say("chance.table.alone")];
  return tableOf("", heads, rows, [2]);
}

function inputsTable({ words }: ReportPage, { inputs }: Chances): Html {
  const { say } = words;
  const rows = inputs.map((input): Content[] => [
    input.name,
    words.chanceInput(input).join(" "),
    words.basis(input.basis),
  ]);
  return tableOf("", [say("chance.table.input"), say("chance.table.spread"), say("table.basis")], rows);
}
