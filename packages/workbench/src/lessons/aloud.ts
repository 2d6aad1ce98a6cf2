/** Predictions and results, as plain text to read aloud and to hand out. The numbers are those of the runs that were made. */
import { isFixed } from "@secondline/words/page/lessons";
import { judgement } from "./judge.ts";
import type { KeptTries, Try } from "./kept.ts";
import { reasonWords } from "./lessonDesk.ts";
import { LESSONS, type Lesson, type LessonId, type SliderScale } from "./lessons.ts";
import { lessonResultWords, saidWords } from "./quantity.ts";
import { say, type WordKey } from "./words.ts";

/** A lesson with the learner's last try. */
export interface Tried {
  readonly lesson: Lesson;
  readonly number: number;
  readonly last: (Try & { readonly result: number }) | undefined;
}

export const triedIn = (kept: KeptTries): readonly Tried[] =>
  LESSONS.map((lesson, i) => {
    const last = kept[lesson.id]?.findLast((one) => one.result !== undefined);
    return { lesson, number: i + 1, last: last as Tried["last"] };
  });

/** How far off half of the predictions were at most, as a share of the run's number; undefined without one [-]. */
export function halfWithin(tried: readonly Tried[]): number | undefined {
  const off = tried
    .flatMap(({ last }) => (last && last.result > 0 ? [Math.abs(last.predicted / last.result - 1)] : []))
    .sort((a, b) => a - b);
  return off[Math.ceil(off.length / 2) - 1];
}

/** A text of a lesson that needs no number of a run; undefined where it does. */
export function fixedText(key: WordKey): string | undefined {
  return isFixed(key) ? say(key) : undefined;
}

export function spokenTry({ lesson, last }: Tried): string {
  if (!last) return say("text.notTried");
  const { scale } = lesson;
  const result = lessonResultWords(last.result, scale);
  const values = {
    predicted: saidWords(last.predicted, scale),
    result,
    judgement: judgement(last.predicted, last.result, result),
  };
  return say("text.said", values);
}

/** Why the learner said it; undefined where no reason was kept. */
export function spokenReason({ lesson, last }: Tried): string | undefined {
  if (!last || (last.reason === undefined && last.ownReason === undefined)) return undefined;
  const { predicted, reason, ownReason = "" } = last;
  return say("text.because", { reason: reasonWords(lesson, { predicted, reason, ownReason }) });
}

/** All lessons, a paragraph each. */
export function aloud(kept: KeptTries): string {
  const parts = triedIn(kept).map((one) => {
    const { id } = one.lesson;
    const summary = fixedText(`${id}.summary` as WordKey);
    const notTold = fixedText(`${id}.notTold` as WordKey);
    return [
      say("text.lesson", { number: one.number, title: say(`${id}.title`) }),
      say("text.asked", { ask: say(`${id}.ask`) }),
      spokenTry(one),
      ...[spokenReason(one) ?? []].flat(),
      // Before somebody has tried it, a lesson gives nothing away.
      ...(one.last && summary !== undefined ? [say("text.short", { summary })] : []),
      ...(one.last && notTold !== undefined ? [say("text.notTold", { notTold })] : []),
    ].join("\n");
  });
  return `${[say("text.title"), ...parts, say("list.invented")].join("\n\n")}\n`;
}

/** The prediction and the result of the last try of a lesson; a lesson without a finished try is told as not tried. */
export function lastTryWords(kept: KeptTries, id: LessonId, scale: SliderScale): string {
  const last = kept[id]?.at(-1);
  if (last?.result === undefined) return say("list.none");
  return say("list.kept", {
    predicted: saidWords(last.predicted, scale),
    result: lessonResultWords(last.result, scale),
  });
}
