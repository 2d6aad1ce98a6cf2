/** Says what kind of file was looked through. */
import { saying } from "../saying.ts";
import { VALIDATE_ENGLISH } from "./validateEnglish.ts";

export const sayValidate = saying(VALIDATE_ENGLISH);
