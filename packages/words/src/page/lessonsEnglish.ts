/** What is said by the lessons. Not part of the first load. */
export const LESSONS_ENGLISH = {
  "kept.recordLessons": "a record of lessons",
} as const;
