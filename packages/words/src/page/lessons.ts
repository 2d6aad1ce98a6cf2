/** Says the sentences of the lessons. */
import { saying } from "../saying.ts";
import { LESSONS_ENGLISH } from "./lessonsEnglish.ts";

export type LessonsKey = keyof typeof LESSONS_ENGLISH;

export const sayLessons = saying(LESSONS_ENGLISH);

/** Whether a text needs no numbers of a run. */
export const isFixed = (key: LessonsKey): boolean => !LESSONS_ENGLISH[key].includes("{");

/** All keys. */
export const isLessonsKey = (key: string): key is LessonsKey => Object.hasOwn(LESSONS_ENGLISH, key);
