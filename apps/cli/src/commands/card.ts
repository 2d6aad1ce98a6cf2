/** `card`: one page to hang at the line: who may walk, until when, for how many falls, and what makes it lapse. */
import { siteCardPage } from "@secondline/report";
import {
  type Accuracy,
  type CardTerms,
  cardTerms,
  type HeaviestFound,
  heaviestWalker,
  NothingSwept,
  type SearchOptions,
  type SearchResult,
  type SiteCard,
  type Swept,
  siteCard,
  sweepPoints,
  type WalkerAnswer,
  type WalkerStep,
} from "@secondline/scenarios";
import { overOn, cardWords as words } from "@secondline/words/card";
import { todayIso } from "@secondline/workbench";
import { type AssessmentOptions, type ReadAssessment, readAssessment } from "../assessment.ts";
import type { Computing } from "../computing.ts";
import { type ComputingOptions, readComputing } from "../computingOptions.ts";
import { EXIT } from "../failure.ts";
import { LARGEST_BYTES, readJsonFile } from "../input.ts";
import { failedRuns } from "../outcomeData.ts";
import { checkOutFile, writeOutFile } from "../outFile.ts";
import { takeDownQuestion } from "../outlook.ts";
import { runStudy } from "../study.ts";
import { runSweep } from "../sweepRuns.ts";
import { message } from "../terminal.ts";

export interface CardOptions extends AssessmentOptions, ComputingOptions {
  readonly out: string;
  readonly force?: boolean;
  readonly require?: boolean;
  readonly set: "quick" | "full";
  readonly accuracy: Accuracy;
}

export async function card(file: string, options: CardOptions): Promise<void> {
  const inputs = [file, options.wear, options.tests].filter((input) => input !== undefined);
  const out = checkOutFile(options.out, options.force === true, inputs);
  const computing = readComputing(options);
  const read = readAssessment(file, { ...options, on: options.on ?? todayIso() });
  const search: SearchOptions = { accuracy: options.accuracy, size: options.set };
  const found = await runStudy(read.assessed, search, computing);
  const made = await cardOf(file, { read, found, search, computing });
  const { assessed } = read;
  writeOutFile(out, siteCardPage(assessed, found.outcome, made, { date: todayIso() }));
  const text = words.card({ rig: assessed.rig, outcome: found.outcome, card: made, made: todayIso() });
  const over = overOn(text, todayIso());
  message(over ? `${over.word}: ${over.says}` : `${text.word}: ${text.says}`);
  for (const item of text.must.items) message(item);
  message(words.say("written", { file: options.out }));
  if (failedRuns(assessed.rig, found.outcome).length > 0) process.exitCode = EXIT.audit;
  else if (options.require && (over !== undefined || made.permission !== "given")) process.exitCode = EXIT.required;
}

interface Begun {
  readonly read: ReadAssessment;
  readonly found: SearchResult;
  readonly search: SearchOptions;
  readonly computing: Computing;
}

/** Heavier walkers are looked for only where the card permits anybody. */
async function cardOf(file: string, begun: Begun): Promise<SiteCard> {
  const { read, found } = begun;
  const { assessed } = read;
  const { outcome } = found;
  const question = { assessed, made: todayIso(), outcome, ...termsOf(read, found) };
  const first = siteCard(question);
  if (first.permission !== "given") return first;
  const { walker, searched } = await heaviest(file, begun);
  return siteCard({
    ...question,
    heavier: { walker, ...(searched ? { terms: termsOf(searched, searched.found) } : {}) },
  });
}

/** Undefined without a day. */
function termsOf(read: Pick<ReadAssessment, "assessment" | "assessed">, found: SearchResult): CardTerms {
  const question = takeDownQuestion(read, found);
  return question ? cardTerms(read.assessed, question) : {};
}

async function heaviest(file: string, { read, search, computing }: Begun): Promise<HeaviestFound> {
  const { document } = readJsonFile(file, LARGEST_BYTES.rig);
  const work = heaviestWalker({ document, assessment: read.assessment, options: search });
  let step = work.next();
  while (!step.done) step = work.next(await answerTo(step.value, computing));
  return step.value;
}

async function answerTo(step: WalkerStep, computing: Computing): Promise<WalkerAnswer> {
  if (step.kind === "search") {
    return { kind: "found", found: await runStudy(step.assessed, step.options, computing) };
  }
  return { kind: "swept", swept: await sweptBy(step, computing) };
}

/** Undefined if no heavier walker gives a valid rig, or if none of their runs gives numbers. */
async function sweptBy(
  { question, options }: Extract<WalkerStep, { kind: "sweep" }>,
  computing: Computing,
): Promise<Swept | undefined> {
  const found = sweepPoints(question);
  if (found.points.length < 2) return undefined;
  try {
    return await runSweep(found, question.knobs, options, computing);
  } catch (error) {
    if (error instanceof NothingSwept) return undefined;
    throw error;
  }
}
