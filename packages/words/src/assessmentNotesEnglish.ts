/** Notes of an assessment besides its faults: a sentence for every fact. */
import type { AssessmentNotes } from "@secondline/scenarios";

export const ASSESSMENT_NOTES_ENGLISH = {
  "judgement.displaced":
    'The judgement of "{part}" given here ({now}) takes the place of that in the rig\'s file: {was} ({reason}).',
  "judgement.doubt": "a doubt",
  "judgement.times": "× {factor}",
  "tests.later":
    "{count|1 break test is|{count} break tests are} dated after {day} and left out: on that day nobody knew what {count|it|they} would show.",
} as const satisfies Record<keyof AssessmentNotes, string>;
