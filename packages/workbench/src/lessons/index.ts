export { alongLine, carriedAt } from "./along.ts";
export { aloud, fixedText, halfWithin, spokenTry, type Tried, triedIn } from "./aloud.ts";
export { cancelLesson, computeLesson, type LessonQuestion, type LessonServices } from "./computeLesson.ts";
export { allFacts, crossingOf, givenFacts, type LessonRun, storyOf } from "./facts.ts";
export { judgement } from "./judge.ts";
export { type Kept, keep, readKept, type Try } from "./kept.ts";
export { LESSONS, type Lesson, type LessonId, type LessonPlace, type Scale } from "./lessons.ts";
export { onScale, resultWords, saidWords } from "./quantity.ts";
export { prose, say, type WordKey } from "./words.ts";
