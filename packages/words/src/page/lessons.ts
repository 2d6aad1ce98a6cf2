/** Says what the lessons say. */
import { saying } from "../saying.ts";
import { LESSONS_ENGLISH } from "./lessonsEnglish.ts";

export type LessonsKey = keyof typeof LESSONS_ENGLISH;

export const sayLessons = saying(LESSONS_ENGLISH);

/** Whether a text needs nothing of a run. */
export const isFixed = (key: LessonsKey): boolean => !LESSONS_ENGLISH[key].includes("{");

/** The keys that there are. */
export const isLessonsKey = (key: string): key is LessonsKey => Object.hasOwn(LESSONS_ENGLISH, key);
