/** Says the lessons. */
import { saying } from "../saying.ts";
import { LESSONS_ENGLISH } from "./lessonsEnglish.ts";

export const sayLessons = saying(LESSONS_ENGLISH);
