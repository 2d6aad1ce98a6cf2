/** Says the sentences of chances on the page. */
import { saying } from "../saying.ts";
import { CHANCES_ENGLISH } from "./chancesEnglish.ts";

export const sayChances = saying(CHANCES_ENGLISH);
