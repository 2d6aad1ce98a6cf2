/** `measured`: a load cell's recording of a fall beside the model's draws of the same fall. */

import {
  type Accuracy,
  type Assessed,
  compareMeasured,
  type MeasuredComparison,
  type MeasuredFall,
  type ModelSignals,
  type ModelSignalsOptions,
  modelSignals,
  parseWhatIf,
  type Spreads,
  type WhatIf,
} from "@secondline/scenarios";
import { listed } from "@secondline/words";
import { measuredWords as words } from "@secondline/words/measured";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { readRecordingFile } from "../recordingFile.ts";
import { say } from "../say.ts";
import { readSpreadOptions } from "../spreadOption.ts";
import { table } from "../table.ts";
import { bold, print, progressLine, width } from "../terminal.ts";
import { checkWhatIfs } from "../whatIfOption.ts";
import { readWhole } from "../wholeNumber.ts";
import { bullets, wrap } from "../wrap.ts";

export interface MeasuredOptions extends AssessmentOptions {
  readonly json?: boolean;
  readonly runs?: string;
  readonly spread: readonly string[];
  readonly accuracy: Accuracy;
}

/** Draws when none are asked for; fewer say little of a spread. */
const USUAL_DRAWS = 16;
const FEWEST_DRAWS = 8;
const MOST_DRAWS = 200;

export function measured(recordingFile: string, rigFile: string, options: MeasuredOptions): void {
  const draws = readWhole("--runs", options.runs, FEWEST_DRAWS, MOST_DRAWS) ?? USUAL_DRAWS;
  const asked = readSpreadOptions(options.spread);
  const fall = readRecordingFile(recordingFile);
  const event = parseWhatIf(fall.event);
  if (!event) throw failure(recordingFile, words.say("badEvent", { event: fall.event }));
  const { assessed } = readAssessment(rigFile, options);
  checkWhatIfs(assessed.rig, [event]);
  const known = withMass(assessed, fall, asked);
  const { accuracy } = options;
  const model = drawn(known.assessed, { event, channel: fall.channel, draws, accuracy, spreads: known.spreads });
  const result = compareMeasured(fall, model);
  if (!result.ok) {
    const list = listed(model.failed.slice(0, 3), "semicolon");
    const text = words.say(`why.${result.why}`, { list });
    throw failure(recordingFile, text, result.why === "noDraws" ? EXIT.audit : EXIT.input);
  }
  const { comparison } = result;
  print(
    options.json ? jsonText({ event: fall.event, ...comparison }) : text(known.assessed, event, comparison, accuracy),
  );
}

const failure = (file: string, text: string, exit: number = EXIT.input) =>
  new CommandFailure(exit, [`${file}: ${text}.`]);

/** The mass that was weighed takes the place of the rig's, and scatters no more unless somebody says by how much. */
function withMass(
  assessed: Assessed,
  { mass }: MeasuredFall,
  spreads: Spreads,
): { assessed: Assessed; spreads: Spreads } {
  if (mass === undefined) return { assessed, spreads };
  const { rig } = assessed;
  return {
    assessed: { ...assessed, rig: { ...rig, walker: { ...rig.walker, mass } } },
    spreads: { mass: 0, ...spreads },
  };
}

function drawn(assessed: Assessed, options: ModelSignalsOptions): ModelSignals {
  const line = progressLine();
  try {
    const work = modelSignals(assessed, options);
    let step = work.next();
    for (; !step.done; step = work.next()) line.show(step.value, "");
    return step.value;
  } finally {
    line.end();
  }
}

function text({ rig }: Assessed, event: WhatIf, comparison: MeasuredComparison, accuracy: Accuracy): string {
  const rows = words.rows(comparison);
  const [title = "", ...head] = words.head(rig, event, comparison, accuracy);
  const columns = [
    { head: "" },
    { head: words.say("table.measured"), align: "right" },
    { head: words.say("table.median"), align: "right" },
    { head: words.say("table.draws"), align: "right" },
  ] as const;
  return [
    bold(title),
    ...head.map((one) => wrap(one, width)),
    "",
    table(
      columns,
      rows.map(({ name, measured: value, median, band }) => [name, value, median, band]),
      width,
    ),
    "",
    ...rows.map(({ name, place }) => wrap(`${name}: ${place}.`, width)),
    "",
    ...bullets(words.notes(comparison), width),
    "",
    `${say("head.cautions")}:`,
    ...bullets(words.cautions(), width),
  ].join("\n");
}
