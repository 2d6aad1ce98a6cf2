export { alongLine, carriedAt } from "./along.ts";
export { aloud, fixedText, halfWithin, lastTryWords, spokenReason, spokenTry, type Tried, triedIn } from "./aloud.ts";
export { allFacts, crossingOf, givenFacts, type LessonRun, storyOf } from "./facts.ts";
export { judgement } from "./judge.ts";
export { type KeptTries, keepOrTell, readKept, type Try } from "./kept.ts";
export {
  createLessonDesk,
  type Guess,
  type LessonJob,
  type LessonState,
  lessonRuns,
  readGuess,
  reasonWords,
} from "./lessonDesk.ts";
export { LESSONS, type Lesson, type LessonId, type LessonPlace, type SliderScale } from "./lessons.ts";
export { isSameFall, type LessonPictureChoice, picturesOf } from "./pictures.ts";
export { lessonResultWords, onScale, saidWords } from "./quantity.ts";
export { prose, say, type WordKey } from "./words.ts";
