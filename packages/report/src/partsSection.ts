/** The load of every part against its strength, and the bases of the strength. */

import { listed } from "@secondline/words";
import { createTableWords } from "@secondline/words/tables";
import { type Content, type Html, listOf, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";
import { verdictMark } from "./verdictLine.ts";

export function partsTable({ words, rig, outcome }: ReportPage): readonly Html[] {
  const { say } = words;
  const title = (event: number | undefined): string =>
    event === undefined ? "" : `${event + 1}: ${words.eventTitle(rig, outcome.whatIfs[event]!.whatIf)}`;
  const rows = outcome.parts.map((part): Content[] => {
    const row = words.partRow(rig, part);
    const why = words.notLoaded(part);
    const verdict = verdictMark(part.verdict, row.verdict);
    return [row.name, row.demand, row.band, row.strength, row.margin, row.required, verdict, why ?? title(row.event)];
  });
  const person = createTableWords(words.language).personRow(outcome);
  if (person && outcome.person) {
    const { grade } = outcome.person;
    const shape = grade === "keeps" ? (outcome.search.complete ? "holds" : "open") : grade;
    rows.push([
      person.name,
      person.demand,
      person.band,
      person.strength,
      person.margin,
      person.required,
      verdictMark(shape, person.verdict),
      title(person.event),
    ]);
  }
  const heads = [
    say("table.part"),
    say("table.demand"),
    say("table.band.head"),
    say("table.strength"),
    say("table.margin"),
    say("table.required"),
    say("table.verdict"),
    say("table.worstIn"),
  ];
  return [
    tableOf(createTableWords(words.language).partsCaption().join(" "), heads, rows, [1, 2, 3]),
    middleTable({ words, rig, outcome }),
  ];
}

/** Middle values stand beside it, smaller. */
function middleTable({ words, rig, outcome }: ReportPage): Html {
  const { say } = words;
  const rows = outcome.parts.flatMap((part): Content[][] => {
    const row = createTableWords(words.language).middleRow(rig, part);
    return row ? [[row.name, row.run, row.strength, row.ratio]] : [];
  });
  const heads = [say("table.part"), say("table.run"), say("table.middle"), say("table.ratio")];
  return tableOf(`${say("head.middle")}. ${say("caption.middle")}`, heads, rows, [1, 2, 3], "middle");
}

/** Rated strength times factors, part by part, with the numbers of their bases, and each basis once. */
export function strengthSection({ words, rig, outcome }: ReportPage): readonly Html[] {
  const { say } = words;
  const bases = createTableWords(words.language).numberedBases(outcome.parts);
  const rows = outcome.parts.map((part): Content[] => [
    words.partRow(rig, part).name,
    words.why(part)[0]!.value,
    createTableWords(words.language).factors(part),
    listed(bases.of.get(part.id)!.map(String)),
  ]);
  const heads = [say("table.part"), say("table.rated"), say("table.factors"), say("table.bases")];
  return [
    tag("h2", say("head.sources")),
    tag("p", say("report.weakest")),
    listOf(outcome.weakestBases.map(words.basis), "bases"),
    tableOf(say("caption.strengths"), heads, rows, [1]),
    tag(
      "ol",
      bases.list.map((text) => tag("li", text)),
      { class: "bases" },
    ),
  ];
}
