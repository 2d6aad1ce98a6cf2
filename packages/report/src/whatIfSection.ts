/** The simulated what-ifs and their results. */
import { forcePlot } from "./forcePlot.ts";
import { type Content, type Html, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

export function whatIfTable({ words, rig, outcome }: ReportPage): Html {
  const { say } = words;
  const rows = outcome.whatIfs.map((one, index): Content[] => {
    const row = words.whatIfRow(rig, one);
    return [String(index + 1), row.title, row.walker, row.main, row.backup, row.drop, row.feet, row.fate];
  });
  const heads = [
    "",
    say("table.whatIf"),
    say("table.walker"),
    say("table.main"),
    say("table.backup"),
    say("table.drop"),
    say("table.feet"),
    say("table.fate"),
  ];
  return tableOf(say("caption.whatIfs"), heads, rows, [0, 2, 3, 4, 5, 6]);
}

const MOST_PLOTS = 4;

/** Forces over time in the what-ifs that load the parts nearest to failing most. Empty without traces. */
export function plots({ words, rig, outcome }: ReportPage): Html {
  const nearest = outcome.parts
    .flatMap(({ byClass }) => Object.values(byClass))
    .sort((a, b) => a.margin / a.required - b.margin / b.required);
  const governing = [...new Set(nearest.map(({ whatIf }) => whatIf))];
  const figures = governing
    .flatMap((index) => {
      const { trace, band, whatIf } = outcome.whatIfs[index]!;
      const title = `${index + 1}: ${words.eventTitle(rig, whatIf)}`;
      return trace ? [tag("figure", [forcePlot(trace, band, words, title), tag("figcaption", title)])] : [];
    })
    .slice(0, MOST_PLOTS);
  const how = figures.length === 0 ? [] : [tag("p", words.say("report.plotsHow"), { class: "soft" })];
  return tag("div", [...how, ...figures], { class: "plots" });
}
