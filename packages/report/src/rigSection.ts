/** The rig as it was put in. */
import { rigCaption, rigRows, staticsText } from "@secondline/words/rig";
import { elevation } from "./elevation.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

export function figure(page: ReportPage): Html {
  return tag("figure", [elevation(page), tag("figcaption", page.words.say("report.figure"))], { class: "sketch" });
}

export function rigSection({ words, rig, outcome }: ReportPage): readonly Html[] {
  const { say } = words;
  const rows = rigRows(words.language, rig).map(({ name, value }): Content[] => [name, value]);
  return [
    tag("h2", say("head.rig")),
    tag("p", staticsText(words.language, outcome)),
    tableOf(rigCaption(words.language), [], rows),
  ];
}
