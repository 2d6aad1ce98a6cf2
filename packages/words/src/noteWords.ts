/**
 * Bases of strengths, and reasons for an inspection before a rig may be said to hold, in sentences. Other notes:
 * `laterNoteWords.ts`.
 */
import type { FactValue } from "@secondline/rig";
import { broughtIn } from "./broughtEnglish.ts";
import { NOTE_FACTS_ENGLISH } from "./noteFactsEnglish.ts";
import { telling } from "./telling.ts";

const tellFact = telling(NOTE_FACTS_ENGLISH);

/** A note in words is looked up by its English; a note that a user wrote stays as it is. */
export const tellBasis = (note: FactValue): string => (typeof note === "string" ? broughtIn(note) : tellFact(note));
