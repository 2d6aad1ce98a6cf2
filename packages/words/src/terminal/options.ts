/** Says the sentences of options that cannot be taken as they were given. */
import { saying } from "../saying.ts";
import { OPTIONS_ENGLISH } from "./optionsEnglish.ts";

export const sayOptions = saying(OPTIONS_ENGLISH);
