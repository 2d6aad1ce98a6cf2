/**
 * Faults of a rig, a field, a wear record, an assessment or a file of JSON, in sentences. The first load does not need them.
 */
import { ANSWERS_FACTS_ENGLISH } from "./answersFactsEnglish.ts";
import { ASSESSMENT_FACTS_ENGLISH } from "./assessmentFactsEnglish.ts";
import { RECORD_FACTS_ENGLISH } from "./recordFactsEnglish.ts";
import { RIG_FACTS_ENGLISH } from "./rigFactsEnglish.ts";
import { telling } from "./telling.ts";

export { type AnswersFacts, answersFact } from "./answersFacts.ts";

export const tellFault = telling({
  ...RIG_FACTS_ENGLISH,
  ...RECORD_FACTS_ENGLISH,
  ...ASSESSMENT_FACTS_ENGLISH,
  ...ANSWERS_FACTS_ENGLISH,
});
