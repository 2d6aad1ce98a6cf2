/** The way through one lesson: what is given is computed at once, what is asked about when a prediction was made. */
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Job } from "../job/job.ts";
import { JobSlot } from "../job/jobSlot.ts";
import { cancelLesson, computeLesson, type LessonQuestion, type LessonServices } from "./computeLesson.ts";
import type { LessonRun } from "./facts.ts";
import { judgement } from "./judge.ts";
import type { Try } from "./kept.ts";
import type { Lesson } from "./lessons.ts";
import { lessonResultWords, onScale, saidWords } from "./quantity.ts";
import { say } from "./words.ts";

export interface Guess {
  /** In the lesson's unit. */
  readonly predicted: number;
  readonly reason: 1 | 2 | 3 | undefined;
  readonly ownReason: string;
}

/** A run of a lesson, done so far [-]. */
export type LessonJob = Job<LessonRun, { readonly done: number }>;

export interface LessonState {
  readonly before: LessonJob;
  readonly after: LessonJob;
  /** What was predicted; undefined while it is asked. */
  readonly guess: Guess | undefined;
}

export interface LessonDesk {
  readonly store: StoreApi<LessonState>;
  /** Computes what is given, at first and once more. */
  readonly begin: () => void;
  /** Takes a prediction and makes the run that answers it. */
  readonly run: (guess: Guess) => Promise<void>;
  readonly stop: (which: "before" | "after") => void;
  /** Asks for another prediction. */
  readonly again: () => void;
  /** Ends what computes. */
  readonly leave: () => void;
}

export interface LessonDeskServices extends LessonServices {
  readonly newId: () => string;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  readonly onTry: (one: Try) => void;
  /** Speaks a text to people who listen to the page. */
  readonly announce: (text: string) => void;
}

export function createLessonDesk(lesson: Lesson, services: LessonDeskServices): LessonDesk {
  const store = createStore<LessonState>(() => ({ before: IDLE, after: IDLE, guess: undefined }));
  const slots = {
    before: new JobSlot<LessonRun, { done: number }>((before) => store.setState({ before })),
    after: new JobSlot<LessonRun, { done: number }>((after) => store.setState({ after })),
  };
  const { whatIf, times, sweep } = lesson;
  const asked = { document: lesson.after, whatIf, ...(times ? { times } : {}), ...(sweep ? { sweep } : {}) };

  function compute(which: "before" | "after", question: LessonQuestion): Promise<LessonRun | undefined> {
    const id = services.newId();
    return slots[which].run({
      begun: { done: 0 },
      run: (tell) => computeLesson(id, question, services, (done) => tell({ done })),
      cancel: () => cancelLesson(id, services.runner),
    });
  }
  return {
    store,
    begin: () => void compute("before", { document: lesson.before, whatIf }),
    async run(guess) {
      // It is busy before it is shown: what came of an earlier prediction does not answer this one.
      const made = compute("after", asked);
      store.setState({ guess });
      const done = await made;
      if (!done) return;
      const value = lesson.read(done);
      const result = value === undefined ? undefined : onScale(value, lesson.scale);
      services.onTry(tryOf(guess, result, services.now()));
      if (result !== undefined) services.announce(spoken(lesson, guess.predicted, result));
    },
    stop: (which) => slots[which].stop(),
    again: () => store.setState({ guess: undefined }),
    leave() {
      slots.before.rest("idle");
      slots.after.rest("idle");
    },
  };
}

const IDLE = { kind: "idle" } as const;

/** What is given, and what the run came to once something was predicted. */
export const lessonRuns = ({ before, after, guess }: LessonState) => ({
  given: before.kind === "done" ? before.value : undefined,
  result: guess && after.kind === "done" ? after.value : undefined,
});

function tryOf({ predicted, reason, ownReason }: Guess, result: number | undefined, when: number): Try {
  return {
    predicted,
    ...(reason === undefined ? {} : { reason }),
    ...(ownReason === "" ? {} : { ownReason }),
    ...(result === undefined ? {} : { result }),
    when,
  };
}

function spoken({ scale }: Lesson, predicted: number, result: number): string {
  const words = lessonResultWords(result, scale);
  const judged = judgement(predicted, result, words);
  return say("announce.result", { predicted: saidWords(predicted, scale), result: words, judgement: judged });
}

/** The reason as it was chosen, or as it was written. */
export function reasonWords({ id }: Lesson, { reason, ownReason }: Guess): string {
  const chosen = reason === undefined ? [] : [say(`${id}.reason${reason}`)];
  return [...chosen, ...(ownReason === "" ? [] : [`“${ownReason}”`])].join(" ");
}

/** A prediction is a number and a reason; what is missing, in words, else the prediction. */
export function readGuess(
  predicted: number | undefined,
  reason: Guess["reason"],
  ownReason: string,
): { readonly ok: true; readonly guess: Guess } | { readonly ok: false; readonly missing: string } {
  const own = ownReason.trim();
  if (predicted === undefined) return { ok: false, missing: say("lesson.needNumber") };
  if (reason === undefined && own === "") return { ok: false, missing: say("lesson.needReason") };
  return { ok: true, guess: { predicted, reason, ownReason: own } };
}
