/** Says the sentences of "How do we know?" on the page. */
import { saying } from "../saying.ts";
import { EVIDENCE_ENGLISH } from "./evidenceEnglish.ts";

export const sayEvidence = saying(EVIDENCE_ENGLISH);
