/** `chances`: how likely each part of a rig is to fail, and to be the first, in one what-if. */
import type { Rig } from "@secondline/rig";
import {
  type Accuracy,
  type BreakTest,
  type Chances,
  FEWEST_RUNS,
  governingWhatIf,
  INPUT_IDS,
  type InputId,
  MOST_RUNS,
  MOST_SPREAD,
  noChances,
  rigStrengths,
  type Spreads,
  type WhatIf,
  whatIfSet,
} from "@secondline/scenarios";
import { chancesText } from "../chancesText.ts";
import { CommandFailure, EXIT } from "../failure.ts";
import { type RigOptions, readKnownRig } from "../rigFile.ts";
import { runChances, runStudy } from "../study.ts";
import { print } from "../terminal.ts";
import { readWhatIf } from "../whatIfOption.ts";

export interface ChancesCommandOptions extends RigOptions {
  readonly json?: boolean;
  readonly whatIf: readonly string[];
  readonly runs?: string;
  readonly seed?: string;
  readonly spread: readonly string[];
  readonly accuracy: Accuracy;
}

export async function chances(file: string, options: ChancesCommandOptions): Promise<void> {
  const asked = options.whatIf.map(readWhatIf);
  const spreads = readSpreads(options.spread);
  const runs = readWhole("--runs", options.runs, FEWEST_RUNS, MOST_RUNS);
  const seed = readWhole("--seed", options.seed, 0, 2 ** 31 - 1);
  const { rig, notes, breakTests } = await readKnownRig(file, options);
  for (const whatIf of asked) {
    const nothing = noChances(rig, whatIf);
    if (nothing !== undefined) throw new CommandFailure(EXIT.input, [`${file}: ${nothing}`]);
  }
  const chosen = asked.length > 0 ? { whatIfs: asked, notes: [] } : await governing(rig, breakTests);
  const said = [...notes, ...chosen.notes];
  const found: Chances[] = [];
  for (const whatIf of chosen.whatIfs) {
    found.push(
      await runChances(rig, {
        whatIf,
        accuracy: options.accuracy,
        spreads,
        ...(runs === undefined ? {} : { runs }),
        ...(seed === undefined ? {} : { seed }),
        ...(breakTests.length > 0 ? { breakTests } : {}),
      }),
    );
  }
  print(
    options.json
      ? JSON.stringify({ rig: rig.name, ...(said.length > 0 ? { notes: said } : {}), chances: found }, null, 2)
      : chancesText(found, said),
  );
}

interface Governing {
  readonly whatIfs: readonly WhatIf[];
  /** What could not be computed, among which another one may govern. */
  readonly notes: readonly string[];
}

/** The what-if in which the part with the least margin has it, of the few that usually govern. */
async function governing(rig: Rig, breakTests: readonly BreakTest[]): Promise<Governing> {
  const { weakPlaces } = rigStrengths(rig, breakTests);
  const few = whatIfSet(rig, { size: "quick", weakPlaces }).filter((one) => noChances(rig, one) === undefined);
  const outcome = await runStudy(rig, { accuracy: "quick", whatIfs: few, breakTests }, "Which what-if: ");
  const missing = outcome.incomplete.map((i) => outcome.whatIfs[i]!.title);
  return { whatIfs: [governingWhatIf(outcome)], notes: missing.length === 0 ? [] : [maybeOther(missing, few.length)] };
}

const maybeOther = (missing: readonly string[], of: number) =>
  `The what-if with the least margin was looked for among ${of}, of which ${missing.length} could not be computed reliably: ${missing.join("; ")}. One of those may be worse than the one below.`;

function readWhole(option: string, text: string | undefined, least: number, most: number): number | undefined {
  if (text === undefined) return undefined;
  const value = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new CommandFailure(EXIT.input, [`${option}: got "${text}"; expected a whole number from ${least} to ${most}.`]);
}

/** "mass=5 %" or "mass=0.05". */
function readSpreads(texts: readonly string[]): Spreads {
  return Object.fromEntries(texts.map(readSpread));
}

function readSpread(text: string): [InputId, number] {
  const parts = /^(\w+)=(\d*\.?\d+)\s*(%?)$/.exec(text);
  const id = INPUT_IDS.find((one) => one === parts?.[1]);
  const value = parts ? Number(parts[2]) / (parts[3] === "%" ? 100 : 1) : Number.NaN;
  if (id && value <= MOST_SPREAD) return [id, value];
  throw new CommandFailure(EXIT.input, [
    `--spread: got "${text}"; expected INPUT=SPREAD, such as mass=5% or mass=0.05, at most 100 %; 0 takes it for exactly known.`,
    `Inputs: ${INPUT_IDS.join(", ")}.`,
  ]);
}
