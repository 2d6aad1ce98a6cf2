/** The requested sweeps: the value at which a number of the rig meets a limit, with the curve or the map. */
import { PALETTES, plotSvg, textWidth } from "@secondline/figures";
import { sweepPlot } from "@secondline/figures/sweep";
import type { Rig } from "@secondline/rig";
import type { Swept } from "@secondline/scenarios";
import { howFarWords } from "@secondline/words/howFar";
import { type Content, type Html, raw, tableOf, tag } from "./html.ts";
import type { ReportPage } from "./page.ts";

/** A sweep, with a rig in which every part that it speaks of has a name. */
export interface ReportedSweep {
  readonly swept: Swept;
  readonly named: Rig;
}

/** [px]; the drawing is as wide as the paper. */
const WIDTH = 680;

export function sweepSection({ words }: ReportPage, sweeps: readonly ReportedSweep[]): readonly Html[] {
  if (sweeps.length === 0) return [];
  return [
    tag("h2", words.say("head.sweeps")),
    tag("p", howFarWords.sweep.say("caution.sweep")),
    ...sweeps.flatMap((one, i) => ofOne(one, i)),
  ];
}

function ofOne({ swept, named }: ReportedSweep, index: number): readonly Html[] {
  const names = swept.knobs.map((knob) => howFarWords.number(named, knob));
  const plot = sweepPlot(named, swept, names);
  const drawing = plotSvg(plot, WIDTH, PALETTES.light, textWidth, `sweep${index}`).replace(/^<\?xml[^>]*\?>\s*/, "");
  return [
    tag("h3", plot.title),
    ...howFarWords.sweep.sentences(named, swept).map((text) => tag("p", tag("strong", text))),
    tag("p", howFarWords.region(swept)),
    tag("figure", [raw(drawing), tag("figcaption", plot.notes.join(" "))], { class: "sweep" }),
    ...howFarWords.sweep.notes(named, swept).map((text) => tag("p", text, { class: "soft" })),
    pointsTable(swept, named, names),
  ];
}

function pointsTable({ points, knobs, what, region }: Swept, named: Rig, names: readonly string[]): Html {
  const { sweep } = howFarWords;
  const rows = points.map(({ change, curve }, i): Content[] => {
    const state = region?.states[i];
    return [
      ...knobs.map(({ name }) => change[name]!),
      curve ? sweep.value(what, curve.value) : "–",
      curve ? sweep.band(what, curve) : "",
      ...(region ? [state ? howFarWords.say(`state.${state}`) : ""] : []),
      curve ? sweep.eventTitle(named, curve.event) : "",
    ];
  });
  const heads = [
    ...names,
    sweep.say("table.value"),
    sweep.say("table.band"),
    ...(region ? [sweep.limit(what, region.limit)] : []),
    sweep.say("table.event"),
  ];
  const numbers = Array.from({ length: knobs.length + 2 }, (_, i) => i);
  return tableOf(howFarWords.say("table.title"), heads, rows, numbers);
}
