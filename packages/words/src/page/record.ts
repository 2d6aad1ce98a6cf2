/** Says the sentences of the entries of a wear record. */
import { saying } from "../saying.ts";
import { RECORD_ENGLISH } from "./recordEnglish.ts";

export const sayRecord = saying(RECORD_ENGLISH);
