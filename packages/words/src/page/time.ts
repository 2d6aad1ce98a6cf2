/** Says the sentences of forces and energy over time. */
import { saying } from "../saying.ts";
import { TIME_ENGLISH } from "./timeEnglish.ts";

export const sayTime = saying(TIME_ENGLISH);
