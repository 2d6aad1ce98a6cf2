/** Faults of an assessment: a sentence for every fact. */
import type { AssessmentFacts } from "@secondline/scenarios";

export const ASSESSMENT_FACTS_ENGLISH = {
  "expected.day": "a date such as 2026-07-01",
  "expected.fromDay": "{date} or later",
  "expected.oneJudgement": "one judgement of a part",
  "expected.part": "a part of the rig",
  "expected.inRig": 'webbing or parts in "{name}"',
  "expected.plainNumberRange": "a plain number such as {example}",
  "got.partTwice": '"{part}" twice',
  "got.noRig": "a record of no rig",
  "got.otherRigs": "a record of {names}",
  "day.wanted": "A wear record gives a state only on a date: say which day is meant.",
  "day.form": 'The day: got "{day}"; expected {expected}.',
  "day.beforeRecord":
    "The day {day} lies before the wear record begins ({begins}): it says nothing of that day. Give a later day, or leave the record out.",
  "judgement.twice": 'The part "{part}" is judged twice; which one is meant? Put both reasons into one.',
  "judgement.noPart": 'The rig has no part "{part}". Its parts: {parts}.',
  "record.otherRig":
    'The wear record "{record}" has nothing that hangs in "{rig}" on that day. Give this rig\'s record, or write the rig\'s name or id into its entries.',
  "record.otherRigs":
    'The wear record "{record}" has nothing that hangs in "{rig}" on that day; it speaks of {names}. Give this rig\'s record, or write the rig\'s name or id into its entries.',
} as const satisfies Record<keyof AssessmentFacts, string>;
