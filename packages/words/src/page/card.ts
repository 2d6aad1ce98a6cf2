/** Says the sentences of the view of the site card. */
import { saying } from "../saying.ts";
import { CARD_ENGLISH } from "./cardEnglish.ts";

export const sayCard = saying(CARD_ENGLISH);
