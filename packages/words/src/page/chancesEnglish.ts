/** Sentences of chances on the page. Not part of the first load. */
export const CHANCES_ENGLISH = {
  "chanceBars.chanceEachPart": "Chance of each part to go first",

  "chancesSection.chances": "Chances",
  "chancesSection.notToEnd": "The chances were not worked out to the end.",
  "chancesSection.notWorkedOut": "The chances were not worked out: {message}",
  "chancesSection.drawsMade": "{runs} draws",
  "chancesSection.whatIf": "What if",
  "chancesSection.stopWorkingOut": "Stop working out the chances",
  "chancesSection.workOutChances": "Work out the chances",
  "chancesSection.draws": "Draws",
  "chancesSection.faultBelow": "A spread below needs putting right first.",
  "chancesSection.whatADrawIs":
    "Each draw runs the what-if with other values of all that is uncertain. You can stop them.",
  "chancesSection.stale": "before your last change",
  "chancesSection.whoGoesFirst": "Who goes first",
  "chancesSection.howOftenEach": "How often each part fails",
  "chancesSection.grounds": "What the chances rest on",
  "chancesSection.howOftenNote": "Carries more than it holds, before anything else has failed. {title}.",
  "chancesSection.part": "Part",
  "chancesSection.chanceFail": "Chance to fail",

  "spreadFields.title": "What is uncertain, and how much",
  "spreadFields.hint": "as you say; 0 takes it for exactly known",
  "spreadFields.placeHint": "about {middle} of the line, to either side",

  "spreadText.expected": "Expected a percentage from 0 to 100, such as 10 %.",

  "useChances.workingOutChances": "Working out the chances.",
  "useChances.chancesWorkedOut": "Chances worked out. {eventTitle}. {chances}",
  "useChances.stopped": "Working out the chances was stopped.",
} as const;
