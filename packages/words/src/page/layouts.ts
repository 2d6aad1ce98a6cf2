/** Says the sentences of layouts side by side. */
import { saying } from "../saying.ts";
import { LAYOUTS_ENGLISH } from "./layoutsEnglish.ts";

export const sayLayouts = saying(LAYOUTS_ENGLISH);
