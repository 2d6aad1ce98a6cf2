/** Says the sentences of files, links and pictures: opened, saved, printed. */
import { saying } from "../saying.ts";
import { FILES_ENGLISH } from "./filesEnglish.ts";

export const sayFiles = saying(FILES_ENGLISH);
