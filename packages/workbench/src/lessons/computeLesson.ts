/** Computes one rig of a lesson: the fall for the eye, and what its parts hold. Knows no React. */
import type { OrdersService, RunnerService, RunRequest } from "@secondline/runner";
import {
  allSweptRigs,
  assessRig,
  drawn,
  type RunOrder,
  readKnob,
  Sampler,
  SEED,
  type WhatIf,
  withValue,
} from "@secondline/scenarios";
import { englishWords as words } from "@secondline/words";
import { howFarWords } from "@secondline/words/howFar";
import type { WrittenRig } from "../documents/documents.ts";
import type { ReadRig } from "../inHand/state.ts";
import type { TaskAnswer } from "../job/job.ts";
import { crossingOf, type LessonRun, type ShownFall } from "./facts.ts";
import type { LessonSweep } from "./lessons.ts";

export interface LessonServices {
  readonly runner: Pick<RunnerService, "run" | "study" | "sweep" | "cancel"> & Pick<OrdersService, "orders">;
  readonly read: ReadRig;
}

export function cancelLesson(id: string, runner: LessonServices["runner"]): void {
  for (const part of ["fall", "parts", "many", "shown"]) void runner.cancel(`${id}.${part}`);
}

/** What is computed of a lesson. */
export interface LessonQuestion {
  readonly document: WrittenRig;
  readonly whatIf: WhatIf;
  /** The same fall so many times, each drawn by chance; absent: once. */
  readonly times?: number;
  readonly sweep?: LessonSweep;
}

/** The fall with its recording, then what its parts hold, then the same fall again and again. */
export async function computeLesson(
  id: string,
  question: LessonQuestion,
  services: LessonServices,
  onProgress: (done: number) => void = () => undefined,
): Promise<TaskAnswer<LessonRun>> {
  const { document, whatIf, times = 0, sweep: range } = question;
  const { runner, read } = services;
  const reading = read(document);
  if (!reading.ok) return failed(reading.issues.map(({ message }) => message).join(" "));
  const assessed = assessRig(reading.rig);
  let trouble = "";
  const share = times > 0 || range ? ONCE_SHARE : 1;
  for (const accuracy of ACCURACIES) {
    const fall = await runner.run({ id: `${id}.fall`, assessed, whatIf, accuracy }, ({ done }) =>
      onProgress((share * done) / 2),
    );
    if (!fall.ok) return fall;
    const { outcome, recording } = fall.value;
    if (!outcome.ok || !recording) {
      trouble = words.trouble(assessed.rig, outcome.trouble);
      continue;
    }
    const parts = await runner.study({ id: `${id}.parts`, assessed, whatIfs: [whatIf], accuracy }, ({ done }) =>
      onProgress(share * (0.5 + done / 2)),
    );
    if (!parts.ok) return parts;
    const once = { assessed, outcome, recording, study: parts.value.outcome };
    const rest = (done: number) => onProgress(share + (1 - share) * done);
    if (range) return sweptRun(once, { id, document, whatIf, sweep: range }, services, rest);
    return times > 0 ? manyTimes(once, { id, whatIf, times }, runner, rest) : { ok: true, value: once };
  }
  return failed(trouble);
}

/** The same fall again and again, each drawn by chance. */
async function manyTimes(
  once: LessonRun,
  { id, whatIf, times }: { readonly id: string; readonly whatIf: WhatIf; readonly times: number },
  runner: LessonServices["runner"],
  onProgress: (done: number) => void,
): Promise<TaskAnswer<LessonRun>> {
  const { assessed } = once;
  const orders = new Sampler(assessed.rig, { seed: SEED })
    .draws(whatIf, 0, times)
    .map(({ draw }) => ({ assessed, order: { event: whatIf, draw, accuracy: once.study.accuracy } }));
  const many = await runner.orders({ id: `${id}.many`, orders }, ({ done }) => onProgress(done));
  if (!many.ok) return many;
  const pulls = many.value.map((run) => (run.ok ? run.peaks.leash : Number.NaN));
  const all = pulls.filter((pull) => !Number.isNaN(pull));
  const hardest = orders[pulls.indexOf(Math.max(...all))];
  const shown = hardest && (await shownDraw(once, { id, ...hardest.order }, runner));
  return { ok: true, value: { ...once, many: all, ...(shown ? { shown } : {}) } };
}

/** A drawn fall for the eye; undefined if its run gives no picture. */
function shownDraw(
  { assessed }: LessonRun,
  { id, event, draw, accuracy }: { readonly id: string } & Pick<RunOrder, "event" | "draw" | "accuracy">,
  runner: LessonServices["runner"],
): Promise<ShownFall | undefined> {
  const { rig, event: whatIf } = drawn(assessed.rig, event, draw);
  // Assessed anew: a run is kept by the hash of its rig.
  return shownFall({ id, assessed: assessRig(rig), whatIf, accuracy }, runner);
}

async function shownFall(request: RunRequest, runner: LessonServices["runner"]): Promise<ShownFall | undefined> {
  const fall = await runner.run({ ...request, id: `${request.id}.shown` });
  if (!fall.ok || !fall.value.outcome.ok || !fall.value.recording) return undefined;
  const { outcome, recording } = fall.value;
  return { assessed: request.assessed, outcome, recording };
}

interface SweptQuestion {
  readonly id: string;
  readonly document: WrittenRig;
  readonly whatIf: WhatIf;
  readonly sweep: LessonSweep;
}

/** One number of the rig from end to end of a range: how the drop goes with it, and where it meets the limit. */
async function sweptRun(
  once: LessonRun,
  { id, document, whatIf, sweep: { over, points, limit } }: SweptQuestion,
  { runner, read }: LessonServices,
  onProgress: (done: number) => void,
): Promise<TaskAnswer<LessonRun>> {
  const knob = readKnob(over, { rig: once.assessed.rig, document, dated: false });
  if (!knob.ok) return failed(knob.fault.text);
  const knobs = [knob.knob];
  const rigs = allSweptRigs({ document, known: {}, knobs, counts: [points] });
  const options = { what: { kind: "drop" }, accuracy: once.study.accuracy, whatIfs: [whatIf], limit } as const;
  const answer = await runner.sweep({ id: `${id}.many`, knobs, ...rigs, options }, ({ done }) => onProgress(done));
  if (!answer.ok) return answer;
  if (answer.value.kind !== "swept") return failed(howFarWords.say("fault.nothing.other"));
  const { swept } = answer.value;
  // As it is told: rounded to the side that keeps the limit; where it is met at no single place, the end of the range.
  const at = Math.floor((crossingOf(swept)?.at ?? knob.knob.to) * 10) / 10;
  const reading = read(withValue(document, knob.knob, at));
  const shown = reading.ok
    ? await shownFall({ id, assessed: assessRig(reading.rig), whatIf, accuracy: once.study.accuracy }, runner)
    : undefined;
  return { ok: true, value: { ...once, swept, ...(shown ? { shown: { ...shown, at } } : {}) } };
}

/** About the share of the time that the one fall takes of one and thirty [-]. */
const ONCE_SHARE = 0.1;

/** A run whose numbers cannot be trusted is made again on a finer mesh before it is given up. */
const ACCURACIES = ["quick", "standard"] as const;

const failed = (message: string) => ({ ok: false, reason: "failed", message }) as const;
