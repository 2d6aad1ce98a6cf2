/** What is said by what stands behind the verdict, and of the page after its first sight. Not part of the first load. */
export const VERDICT_ENGLISH = {
  "welcome.what": "What this is for",
  "welcome.beginYourOwn": "Begin with your own rig",
  "welcome.whoeverKeepsHighline":
    "For whoever keeps a highline up: if something goes wrong, what catches the walker, how hard, how far down, and which part goes first?",
  "welcome.iReadWhat": "I have read what this is for",

  "placeFields.anchor": "{label}, from anchor A",
  "placeFields.anchor2": "From anchor A",
  "placeFields.lineRuns0": "The line runs from 0 to {length}.",

  "firstSight.yourLastChange": "Your last change ({label}): {said}",
  "firstSight.fallGoesDown": "this fall goes {now} down instead of {before}",
  "firstSight.harnessPulledInstead": "the harness is pulled with {now} instead of {before}",
  "firstSight.one": "{first}.",
  "firstSight.two": "{first}, and {second}.",
  "firstSight.fallSameDrop": "this fall is the same in drop and pull.",
  "firstSight.verdictStays": "the verdict stays “{now}”",
  "firstSight.verdictInstead": "the verdict is “{now}” instead of “{before}”",
  "firstSight.deepestDropInstead": "the deepest drop is {now} instead of {before}",
  "firstSight.nearestAsBefore": "{name}, nearest to what is required: × {margin}, as before",
  "firstSight.nearestInstead": "{name}, nearest to what is required: × {margin} instead of × {was}",
  "firstSight.seeWorst": "See the worst",

  "keyNumbers.mesh": "{load}, {accuracy} mesh",
  "keyNumbers.harness": "Harness",
  "keyNumbers.mainA": "Main at A",
  "keyNumbers.mainB": "Main at B",
  "keyNumbers.backupA": "Backup at A",
  "keyNumbers.backupB": "Backup at B",
  "keyNumbers.drop": "Drop",
  "keyNumbers.largestValuesFall": "Largest values of this fall",
  "keyNumbers.fall": "This fall",
  "keyNumbers.was": "was {before}",

  "reasons.strengthFactorFactor": "Strength of {partName}, factor by factor",
  "reasons.leftMiddle": "Left, in the middle",
  "reasons.r1920": "R: 19 of 20 reach",
  "reasons.fromA": " ({reason}, {along} from A)",
  "reasons.requiredOf": "× {margin}, required {required}: R {strength} against E {demand} ({band}, {runs} runs)",
  "reasons.middleValues": "{eventTitle}. Middle values: × {margin}.",
  "reasons.largestPullSeen": "{eventTitle}. The largest pull seen: {load}.",

  "verdictMore.howFarCan": "How far can I go?",
  "verdictMore.allReasons": "All {count} reasons",
  "verdictMore.onePartGone": "One part gone: {singles} of {parts} have no second",
  "verdictMore.whatIfs": "The {count} what-ifs",
  "verdictMore.whatVerdictRests": "What the verdict rests on",

  "watch.watch": "Watch it",

  "whatIfList.worst": "Worst of: {partName}, × {margin}",
  "whatIfList.worstAndMore": "Worst of: {partName}, × {margin} and {count} more",
  "whatIfList.down": "{drop} down",
  "whatIfList.harness": "harness {pull}",
  "whatIfList.underFeet": "{height} under the feet",
} as const;
