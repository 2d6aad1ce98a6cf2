/** Says the sentences of the rig sheet and the drawings that change it. */
import { saying } from "../saying.ts";
import { RIG_SHEET_ENGLISH } from "./rigSheetEnglish.ts";

export const sayRigSheet = saying(RIG_SHEET_ENGLISH);
