import { sayChances } from "@secondline/words/page/chances";

export const SPREAD_FAULT = sayChances("spreadText.expected");
