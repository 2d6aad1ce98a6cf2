/** `chances`: how likely each part of a rig is to fail, and to be the first, in one what-if. */

import {
  type Accuracy,
  type Assessed,
  type Chances,
  FEWEST_RUNS,
  MOST_RUNS,
  noChances,
  rigStrengths,
  type WhatIf,
  whatIfSet,
  worstWhatIf,
} from "@secondline/scenarios";
import { listed, englishWords as words } from "@secondline/words";
import { englishChanceWords as chanceWords } from "@secondline/words/chances";
import { tellNote } from "@secondline/words/notes";
import { type AssessmentOptions, readAssessment } from "../assessment.ts";
import { chancesData, chancesText } from "../chancesText.ts";
import type { Computing } from "../computing.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { jsonText } from "../jsonText.ts";
import { readSpreadOptions } from "../spreadOption.ts";
import { runChances, runStudy } from "../study.ts";
import { print } from "../terminal.ts";
import { readWhatIf } from "../whatIfOption.ts";
import { readWhole } from "../wholeNumber.ts";

export interface ChancesCommandOptions extends AssessmentOptions, ComputingOptions {
  readonly json?: boolean;
  readonly whatIf: readonly string[];
  readonly runs?: string;
  readonly seed?: string;
  readonly spread: readonly string[];
  readonly accuracy: Accuracy;
}

export async function chances(file: string, options: ChancesCommandOptions): Promise<void> {
  const asked = options.whatIf.map(readWhatIf);
  const spreads = readSpreadOptions(options.spread);
  const runs = readWhole("--runs", options.runs, FEWEST_RUNS, MOST_RUNS);
  const seed = readWhole("--seed", options.seed, 0, 2 ** 31 - 1);
  const computing = readComputing(options);
  const { assessed } = readAssessment(file, options);
  const { rig } = assessed;
  for (const whatIf of asked) {
    const why = noChances(assessed, whatIf);
    if (why) throw new CommandFailure(EXIT.input, [`${file}: ${chanceWords.noChances(rig, why)}`]);
  }
  const chosen = asked.length > 0 ? { whatIfs: asked, notes: [] } : await worst(assessed, computing);
  const notes = [...assessed.notes.map(tellNote), ...chosen.notes];
  const found: Chances[] = [];
  for (const whatIf of chosen.whatIfs) {
    found.push(
      await runChances(
        assessed,
        {
          whatIf,
          accuracy: options.accuracy,
          spreads,
          ...(runs === undefined ? {} : { runs }),
          ...(seed === undefined ? {} : { seed }),
        },
        computing,
      ),
    );
  }
  print(options.json ? jsonText(chancesData(rig, found, notes)) : chancesText(rig, found, notes));
}

interface Worst {
  readonly whatIfs: readonly WhatIf[];
  /** What-ifs that could not be computed. One of them may be worse. */
  readonly notes: readonly string[];
}

/** The what-if that the verdict turns on, of the few that usually govern. */
async function worst(assessed: Assessed, computing: Computing): Promise<Worst> {
  const { rig, tests } = assessed;
  const { weakPlaces } = rigStrengths(rig, tests);
  const few = whatIfSet({ rig, weakPlaces, size: "quick" }).filter((one) => !noChances(assessed, one));
  if (few.length === 0) {
    throw new CommandFailure(EXIT.input, [chanceWords.noChances(rig, { kind: "noBackup" })]);
  }
  const { outcome } = await runStudy(assessed, { accuracy: "quick", whatIfs: few }, computing);
  const missing = outcome.whatIfs.filter(({ ok }) => !ok).map((one) => words.eventTitle(rig, one.whatIf));
  const values = { of: few.length, count: missing.length, list: listed(missing, "semicolon") };
  return {
    whatIfs: [(worstWhatIf(outcome) ?? outcome.whatIfs.find(({ ok }) => ok)!).whatIf],
    notes: missing.length === 0 ? [] : [chanceWords.say("chance.maybeOther", values)],
  };
}
