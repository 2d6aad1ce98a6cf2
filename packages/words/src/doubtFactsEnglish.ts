/** Reasons to doubt the numbers of a group of break tests: a sentence for every fact. */
import type { DoubtFacts } from "@secondline/strength";

export const DOUBT_FACTS_ENGLISH = {
  "doubt.fewTests":
    "{count|One test says|Two tests say} next to nothing about the scatter: the characteristic value is very cautious.",
  "doubt.severalTests": "{count} tests give a wide answer: the exact factors are large for so few.",
  "doubt.censored":
    "{count} of {of} results {count|is a bound, not a breaking load, and counts|are bounds, not breaking loads, and count} as such: they say little about the scatter.",
  "doubt.copies":
    "{count} of {of} rows repeat another one to the letter. Each counts: if they are copies and not pieces of their own, the values are too high, so take them out.",
  "doubt.outlier": "{load} does not belong with the others (maximum normed residual). It is kept: find out why.",
  "doubt.batches":
    "The batches differ (k-sample Anderson–Darling, 5 %). The values allow for scatter between batches, and are lower for it.",
  "doubt.batchesUnchecked":
    "There are several batches, but too few tests in one of them to compare them; scatter between batches is allowed for.",
  "doubt.oneBatch":
    "All tests are of one batch: other batches, or weak parts mixed in among good ones, are not covered by these values.",
  "doubt.noBatches":
    "No batches are named: other batches, or weak parts mixed in among good ones, are not covered by these values.",
  "doubt.modes":
    "They failed in different ways ({list}). The values are for whichever comes first; one place alone holds no less.",
  "doubt.distribution":
    "No distribution fits these tests (Anderson–Darling, 5 %): parts of several kinds may be mixed, which no value here covers.",
  "doubt.noFit": "No distribution was fitted: {reason}.",
  "doubt.spread": "The results scatter by {percent} %: more than one kind of part, state or failure may be mixed here.",
} as const satisfies Record<keyof DoubtFacts, string>;
