/** Says the sentences on a checked file. */
import { saying } from "../saying.ts";
import { VALIDATE_ENGLISH } from "./validateEnglish.ts";

export const sayValidate = saying(VALIDATE_ENGLISH);
