/** Faults of a break log or a test, in sentences. */
import { LOG_FACTS_ENGLISH } from "./logFactsEnglish.ts";
import { RIG_FACTS_ENGLISH } from "./rigFactsEnglish.ts";
import { telling } from "./telling.ts";

export const tellLogFault = telling({ ...RIG_FACTS_ENGLISH, ...LOG_FACTS_ENGLISH });
