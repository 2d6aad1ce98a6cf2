/** Chances of what-ifs, where they were worked out. */
import { formatForce } from "@secondline/rig";
import type { Chances } from "../reliability/chancesOutcome.ts";
import {
  chanceText,
  FEW_FIRST,
  IN_BRACKETS,
  inputText,
  ownCautions,
  partName,
  SHARE_KINDS,
  shareText,
  worthARow,
} from "../reliability/chanceWords.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";

export function chancesSection(all: readonly Chances[]): readonly Html[] {
  return all.length === 0 ? [] : [tag("h2", "Chances"), ...all.flatMap(ofOne)];
}

function ofOne(chances: Chances): readonly Html[] {
  return [
    tag("p", [tag("strong", `${chances.title}. `), chances.sentence]),
    list(ownCautions(chances)),
    partsTable(chances),
    ...sharesTable(chances),
    inputsTable(chances),
    list(chances.restsOn),
    tag("p", ["Input of these chances (SHA-256): ", tag("code", chances.inputHash), `, seed ${chances.seed}`]),
  ];
}

const list = (items: readonly string[]): Html =>
  tag(
    "ul",
    items.map((item) => tag("li", item)),
    { class: "bases" },
  );

function partsTable({ parts }: Chances): Html {
  const rows = parts
    .filter(worthARow)
    .map((part): Content[] => [
      partName(part),
      formatForce(part.load),
      formatForce(part.strength),
      chanceText(part.first),
      chanceText(part.fails),
    ]);
  const caption = `Middle load of the runs, central strength. Goes first: has the least margin of all parts. Fails: carries more than it holds, before anything else has failed. ${IN_BRACKETS} Parts that never fail in any draw and go ${FEW_FIRST} are left out.`;
  return tableOf(caption, ["Part", "Load", "Strength", "Goes first", "Fails"], rows, [1, 2, 3, 4]);
}

const MOST_SHARES = 8;

function sharesTable({ shares }: Chances): readonly Html[] {
  if (shares.length === 0) return [];
  const rows = shares
    .slice(0, MOST_SHARES)
    .map((share): Content[] => [share.name, SHARE_KINDS[share.kind], shareText(share)]);
  return [
    tableOf(`Where the scatter of the least margin comes from. ${IN_BRACKETS}`, ["Source", "Of", "Share"], rows, [2]),
  ];
}

function inputsTable({ inputs }: Chances): Html {
  const rows = inputs.map((input): Content[] => [
    input.name,
    inputText(input).join(" "),
    `${input.basis.kind}: ${input.basis.note}`,
  ]);
  return tableOf("What was taken as uncertain, and how much.", ["Input", "Middle and spread", "Basis"], rows);
}
