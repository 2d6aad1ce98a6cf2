/** Says files that the terminal reads and writes: what is wrong with them, and with their places. */
import { saying } from "../saying.ts";
import { FILES_ENGLISH } from "./filesEnglish.ts";

export const sayFiles = saying(FILES_ENGLISH);
