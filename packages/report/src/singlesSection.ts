/** The events after a part gives way, and the part that carries the walker without any one part. */
import { createTableWords } from "@secondline/words/tables";
import { type Content, type Html, listOf, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

export function followSection({ words, rig, outcome }: ReportPage): readonly Html[] {
  const items = createTableWords(words.language).follows(rig, outcome);
  return items.length === 0 ? [] : [tag("h2", words.say("head.follows")), listOf(items)];
}

export function singlesSection({ words, rig, outcome }: ReportPage): readonly Html[] {
  const { say } = words;
  const rows = outcome.singles.map((one): Content[] => {
    const row = createTableWords(words.language).singleRow(rig, one);
    return [one.single ? tag("strong", row.name) : row.name, row.ways, row.leaves, row.shown];
  });
  const heads = [say("table.single"), say("table.ways"), say("table.leaves"), say("table.shown")];
  return [
    tag("h2", say("head.singles")),
    tag("p", words.singles(rig, outcome)),
    tableOf(say("caption.singles"), heads, rows),
  ];
}
