/** What is said by what stands behind the verdict, and of the page after its first sight. Not part of the first load. */
export const VERDICT_ENGLISH = {
  "welcome.what": "What this is for",
  "welcome.beginYourOwn": "Begin with your own rig",
  "welcome.text":
    "For whoever keeps a highline up: if something goes wrong, what catches the walker, how hard, how far down, and which part goes first?",
  "welcome.read": "I have read what this is for",

  "placeFields.labelFromA": "{label}, from anchor A",
  "placeFields.fromA": "From anchor A",
  "placeFields.outside": "The line runs from 0 to {length}.",

  "firstSight.lastChange": "Your last change ({label}): {said}",
  "firstSight.drop": "this fall goes {now} down instead of {before}",
  "firstSight.pull": "the harness is pulled with {now} instead of {before}",
  "firstSight.one": "{first}.",
  "firstSight.two": "{first}, and {second}.",
  "firstSight.same": "this fall is the same in drop and pull.",
  "firstSight.verdictStays": "the verdict stays “{now}”",
  "firstSight.verdictChanged": "the verdict is “{now}” instead of “{before}”",
  "firstSight.deepestDrop": "the deepest drop is {now} instead of {before}",
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

  "reasons.factorsTitle": "Strength of {partName}, factor by factor",
  "reasons.middle": "Left, in the middle",
  "reasons.strength5": "R: 19 of 20 reach",
  "reasons.weakPlace": " ({reason}, {along} from A)",
  "reasons.marginOf": "× {margin}, required {required}: R {strength} against E {demand} ({band}, {runs} runs)",
  "reasons.middleValues": "{eventTitle}. Middle values: × {margin}.",
  "reasons.largestPull": "{eventTitle}. The largest pull seen: {load}.",

  "verdictMore.howFar": "How far can I go?",
  "verdictMore.allReasons": "All {count} reasons",
  "verdictMore.singles": "One part gone: {singles} of {parts} have no second",
  "verdictMore.whatIfs": "The {count} what-ifs",
  "verdictMore.grounds": "What the verdict rests on",

  "watch.watch": "Watch it",

  "whatIfList.worst": "Worst of: {partName}, × {margin}",
  "whatIfList.worstAndMore": "Worst of: {partName}, × {margin} and {count} more",
  "whatIfList.down": "{drop} down",
  "whatIfList.harness": "harness {pull}",
  "whatIfList.underFeet": "{height} under the feet",
} as const;
