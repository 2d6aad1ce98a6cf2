/** Says the sentences of files that the terminal reads and writes, and on their faults. */
import { saying } from "../saying.ts";
import { FILES_ENGLISH } from "./filesEnglish.ts";

export const sayFiles = saying(FILES_ENGLISH);
