/** Further notes and flags of strengths and wear records. The first load does not need them. */
import type { NoteFacts } from "@secondline/strength";
import type { NOTE_FACTS_ENGLISH } from "./noteFactsEnglish.ts";

export const LATER_NOTE_FACTS_ENGLISH = {
  "flag.clampMark":
    "{name}: an old clamp mark of {months} lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "flag.fallZone":
    "{name}: a fall zone of an earlier rigging ({falls} falls) lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "flag.stitching":
    "{name}: stitching lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "flag.heat":
    "{name}: a glazed place lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "flag.cut": "{name}: a cut lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "flag.abrasion":
    "{name}: an abraded place lies inside the loaded span, {middle} from the marked end, {fromA} from the end at A.",
  "factor.told": "{name}: {note}",
  "factor.times": "{name} × {value}: {note}",
  "factor.raises": "{name} × {value}, RAISES the strength by {raise}: {note}",
  "condition.onMetal":
    "Time outside, sun, age and wet, which are written for it, change nothing: no factor knows what they do to metal. If you doubt the part, give it an own factor.",
  "rig.latitude":
    'The rig\'s file does not say at which latitude it hangs: its months outside count with the sun of below 30 degrees. Write "latitude" into it: "low", "middle" (30 to 50 degrees) or "high".',
  "record.otherLatitude":
    'The rig\'s file has the latitude "{rig}", the record "{record}": the sun of the sunnier one is counted for both. Put the wrong one right.',
  "record.latitude":
    'The record does not say at which latitude it hangs: the sun of below 30 degrees is counted. Write "latitude" into it: "low", "middle" (30 to 50 degrees) or "high".',
  "record.hemisphere":
    'The record does not say on which hemisphere it hangs: the one that brings more sun is counted. Write "hemisphere" into it: "north" or "south".',
  "record.matchedByName":
    'The record means the rig "{name}" by its name, which another rig may have too. Give the rig an id and write that into the record.',
  "record.matchedByNameOfId":
    'The record means the rig "{name}" by its name, which another rig may have too. Write the rig\'s id, "{id}", into the record.',
  "record.otherNames":
    'The record has entries of {names}, which this rig is not: they do not count here. If "{own}" is meant, put the name right.',
  "record.moreOtherNames":
    'The record has entries of {names} and {more} more, which this rig is not: they do not count here. If "{own}" is meant, put the name right.',
  "record.silentOn.main":
    'The record has no webbing in the main line of a rig named "{rig}" on {on}. What is said of it is from the rig\'s own file, not a state of that day.',
  "record.silentOn.backup":
    'The record has no webbing in the backup of a rig named "{rig}" on {on}. What is said of it is from the rig\'s own file, not a state of that day.',
  "record.silentOn.both":
    'The record has no webbing in the main line or the backup of a rig named "{rig}" on {on}. What is said of them is from the rig\'s own file, not a state of that day.',
  "record.hangsElsewhere": "On that day it has webbing in: {rigs}.",
  "record.noMain": 'The record hangs "{name}" in the main, which this rig does not have.',
  "record.noBackup": 'The record hangs "{name}" in the backup, which this rig does not have.',
  "record.damageKept":
    'The rig\'s file has damage in the {line} that the record does not speak of ({kinds}): it is counted too. Write it into the record of "{name}".',
  "record.damageWorse":
    'The rig\'s file has worse damage in the {line} than the record of "{name}" ({kinds}): the worse counts.',
  "record.lengthOff":
    'The record has {loaded} of "{name}" loaded, the rig {length}: positions may be off by the difference.',
  "record.clampsElsewhere":
    'The record does not say which ends of "{name}" sat in a weblock in "{rig}" (clampedAt): both are counted.',
  "record.clampsUnsaid":
    'The record does not say which ends of "{name}" sit in a weblock in the {line}; the rig has one at {ends}, and its marks are counted. Write "clampedAt": {written} into the record.',
  "record.clampsDenied":
    'The record says that the end at {missing} does not of "{name}" sit in a weblock in the {line}; the rig has one at {ends}, and its marks are counted. Write "clampedAt": {written} into the record.',
  "record.noEntry": "{name}: the record has no entry by that day. The rig's file counts for it.",
  "record.late":
    '{name}: the record begins on {begun} and does not say what was before. What the rig\'s file says of it counts as the state of that day, and the record is added to it; what the file leaves blank stays unknown. If it lay unused until then, write "firstUse": "{typed}" into the record.',
  "record.replacedUnmade":
    '{name}: replaced on {on}. The record does not say when the new one was made, so its age is unknown and counts as the oldest. Write "made" into that entry.',
  "damage.falls": "falls",
  "damage.abrasion": "abrasion",
  "damage.heat": "heat",
  "damage.cut": "cut",
  "damage.stitching": "stitching",
  "damage.clampMark": "clamp mark",
  "reading.agrees":
    "A reading of {what} comes to {comes} ({low} to {high}) with nobody on the line, as the rig's {stated}.",
  "reading.agreesOn":
    "A reading on {on} of {what} comes to {comes} ({low} to {high}) with nobody on the line, as the rig's {stated}.",
  "drift.more": "The tension that was read went from {first} on {firstOn} to {last} on {lastOn}: {change} more.",
  "drift.less": "The tension that was read went from {first} on {firstOn} to {last} on {lastOn}: {change} less.",
  "tests.use": "Own break tests: {used} of {all} count towards this rig, for {list}.",
  "tests.none": "Own break tests: none of {all} count towards this rig; its strengths are those without a log.",
  "tests.noneButWet": "Own break tests: none of {all} count towards this rig.",
  "tests.ofStock": "{stock} ({causes})",
  "tests.new": "{count} new",
  "tests.with": "{count} with {cause}",
  "tests.leftOut": "Break tests that do not count: {list}.",
  "tests.wet": "{count} pulled wet",
  "tests.noDose": "{count} without sun_months or falls",
  "tests.noMonths": "{count} with a clamp mark or stitching, without the months it had been there",
  "tests.otherWear": "{count} weakened by something that no factor here describes, by the words for part and state",
  "tests.beyond": "{count} with more sun, falls or months than the built-in factor covers",
  "tests.foreign": "{count} of a material that this rig does not have: {materials}",
  "tests.copies":
    "{count} rows of the break log repeat another one to the letter. Each counts: if they are copies and not pieces of their own, take them out, for they make strengths surer than they are.",
  "tests.wetHeldLess":
    "Pieces pulled wet held less than is built in for wet ones, of {stocks}: no such piece is credited more, wet or dry. Pull some dry.",
} as const satisfies Record<Exclude<keyof NoteFacts, keyof typeof NOTE_FACTS_ENGLISH>, string>;
