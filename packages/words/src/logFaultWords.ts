/** What is wrong with a break log or a test, and what stands in the way of believing its numbers, in sentences. */
import { DOUBT_FACTS_ENGLISH } from "./doubtFactsEnglish.ts";
import { LOG_FACTS_ENGLISH } from "./logFactsEnglish.ts";
import { RIG_FACTS_ENGLISH } from "./rigFactsEnglish.ts";
import { telling } from "./telling.ts";

export const tellLogFault = telling({ ...RIG_FACTS_ENGLISH, ...LOG_FACTS_ENGLISH });
export const tellDoubt = telling(DOUBT_FACTS_ENGLISH);
