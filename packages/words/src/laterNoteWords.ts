/**
 * Every note, flag and basis of strengths, wear records, break tests and assessments in sentences. They have a file of their
 * own because the first load does not need them.
 */
import type { FactValue } from "@secondline/rig";
import { ASSESSMENT_NOTES_ENGLISH } from "./assessmentNotesEnglish.ts";
import { broughtIn } from "./broughtEnglish.ts";
import { DOUBT_FACTS_ENGLISH } from "./doubtFactsEnglish.ts";
import { LATER_NOTE_FACTS_ENGLISH } from "./laterNoteFactsEnglish.ts";
import { NOTE_FACTS_ENGLISH } from "./noteFactsEnglish.ts";
import { telling } from "./telling.ts";

const tellFact = telling({
  ...NOTE_FACTS_ENGLISH,
  ...LATER_NOTE_FACTS_ENGLISH,
  ...ASSESSMENT_NOTES_ENGLISH,
  ...DOUBT_FACTS_ENGLISH,
});

export const tellNote = (note: FactValue): string => (typeof note === "string" ? broughtIn(note) : tellFact(note));
