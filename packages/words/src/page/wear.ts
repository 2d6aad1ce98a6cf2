/** Says the sentences of the wear view. */
import { saying } from "../saying.ts";
import { WEAR_ENGLISH } from "./wearEnglish.ts";

export const sayWear = saying(WEAR_ENGLISH);
