/** Says the sentences on break tests. */
import { saying } from "../saying.ts";
import { STRENGTH_ENGLISH } from "./strengthEnglish.ts";

export const sayStrength = saying(STRENGTH_ENGLISH);
